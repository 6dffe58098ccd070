import type { Equipment, Stack } from "../model/index.ts";
import type { Load } from "../units.ts";

/**
 * Which loads exist for an exercise at a place.
 *
 * masses  rising, each in the meaning of the exercise: per hand, total, one implement, added to the body
 * stack   pins of one machine; labels that no other machine shares. With `help` a higher pin is easier
 * bands   the owner's own labels, weakest first; their force is not known
 * none    moved by the body alone, or the place does not say what is there
 */
export type LoadSet =
  | { readonly kind: "masses"; readonly loads: readonly Load[] }
  | { readonly kind: "stack"; readonly machine: Equipment; readonly stack: Stack; readonly help: boolean }
  | { readonly kind: "bands"; readonly labels: readonly string[] }
  | { readonly kind: "none" };

/**
 * The numbers that can be set, easiest first: rising loads and pins, falling pins on a machine that helps.
 *
 * @returns loads; empty for bands and none
 * @example
 * easiestFirst({ kind: "masses", loads: [{ value: 4, unit: "kg" }] }) //=> [{ value: 4, unit: "kg" }]
 */
export function easiestFirst(set: LoadSet): readonly Load[] {
  if (set.kind === "masses") return set.loads;
  if (set.kind !== "stack") return [];
  const pins = set.stack.pins.map((value): Load => ({ value, unit: set.stack.unit }));
  return set.help ? pins.toReversed() : pins;
}
