import type { Exercise, Reason } from "../model/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";
import { heldPerHand, heldTotal } from "./held.ts";
import { easiestFirst, type LoadSet } from "./load-set.ts";
import { plain, reason } from "./reasons.ts";

/** The most that limits let a person hold, in all and in one hand, and use, as whole per cent of today's 1RM. */
export interface LoadCap {
  readonly total?: Mass;
  readonly hand?: Mass;
  readonly percent?: number;
}

/**
 * The loads that limits leave. What is held on a stack, on a band, with help, or by hands that also carry the body is not
 * known, and is never under a limit in kilograms or pounds; nor are loads that the place does not list.
 *
 * @param most the hardest load that a share of the 1RM allows, in the meaning of the exercise; for help the least
 * @returns the same set when nothing is limited; the easier loads; or why none is left
 * @source ours
 * @example
 * underCap(gobletSquat, bells, { total: lb(25) }) // without 12 kg, since 25 lb are 11.34 kg
 */
export function underCap(
  exercise: Exercise,
  set: LoadSet,
  { total, hand }: LoadCap,
  most?: Mass,
): { readonly set: LoadSet } | { readonly because: Reason } {
  const all = easiestFirst(set);
  const unknown =
    (total !== undefined && heldTotal(exercise, all[0]) === undefined) ||
    (hand !== undefined && heldPerHand(exercise, all[0]) === undefined);
  if (unknown) return { because: reason("loads/unknown-under-limit") };
  const helps = set.kind === "stack" && set.help;
  const within = (load: Load) =>
    isUnder(heldTotal(exercise, load), total) &&
    isUnder(heldPerHand(exercise, load), hand) &&
    (most === undefined || (helps ? massOf(load) >= most : massOf(load) <= most));
  if (all.length > 0 && !all.some(within)) {
    return { because: reason("loads/lightest-over-limit", { lightest: plain(all[0]) }) };
  }
  return { set: only(within, set) };
}

/** Without a cap nothing need be known; with one, what is not known is not under it. */
function isUnder(held: Mass | undefined, cap: Mass | undefined): boolean {
  return cap === undefined || (held !== undefined && held <= cap);
}

function only(within: (load: Load) => boolean, set: LoadSet): LoadSet {
  if (set.kind === "masses") return { kind: "masses", loads: set.loads.filter(within) };
  if (set.kind !== "stack") return set;
  const { unit, pins } = set.stack;
  return { ...set, stack: { unit, pins: pins.filter((value) => within({ value, unit })) } };
}
