import { occurrencesOf, slotsIn } from "../measures/index.ts";
import type { PlanSlot, SlotKey } from "../model/index.ts";
import type { ProgressInput } from "./progress-input.ts";

/** A slot as it will be asked next. */
export interface SlotAhead {
  readonly phase: string;
  readonly slot: PlanSlot;
}

/**
 * Every slot that is still to come, as it is asked the next time that is not in a light week; those to come in light
 * weeks only are left out.
 *
 * @returns in the order in which they come
 */
export function slotsAhead({ plan, record }: Pick<ProgressInput, "plan" | "record">): readonly SlotAhead[] {
  const occurrences = occurrencesOf(plan);
  const recorded = new Set(record.sessions.map(({ session }) => session));
  const last = new Map<SlotKey, number>();
  for (const [at, { id, session }] of occurrences.entries())
    if (recorded.has(id)) for (const { key } of slotsIn(session)) last.set(key, at);
  const ahead = new Map<SlotKey, SlotAhead>();
  for (const [at, { phase, light, session }] of occurrences.entries()) {
    for (const slot of slotsIn(session)) {
      if (light || ahead.has(slot.key) || at <= (last.get(slot.key) ?? -1)) continue;
      ahead.set(slot.key, { phase, slot });
    }
  }
  return [...ahead.values()];
}
