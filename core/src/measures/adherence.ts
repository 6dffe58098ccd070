import type { Day } from "../day.ts";
import type { NotDone } from "../model/index.ts";
import type { RecordFold } from "./record.ts";
import { type Occurrence, slotsIn } from "./slot-history.ts";

/** What was asked over some days, and what of it was done. */
export interface Adherence {
  readonly asked: number;
  readonly done: number;
  /** Of those done. */
  readonly early: number;
  /** Sessions of which it was said that they did not happen, by why. */
  readonly missed: Readonly<Partial<Record<NotDone | "not said", number>>>;
  /** Sets of the sessions that were done. */
  readonly sets: { readonly asked: number; readonly done: number };
}

/**
 * How many of the sessions with a day from `from` up to the day before `to` were done, on whatever day. Nothing of the
 * rest is owed. A set beyond those asked counts no more than one that was asked.
 *
 * @param days planned days of a plan
 */
export function adherence(
  days: readonly { readonly occurrence: Occurrence; readonly day: Day }[],
  { sessions, missed }: Pick<RecordFold, "sessions" | "missed">,
  from: Day,
  to: Day,
): Adherence {
  const recorded = new Map(sessions.map((one) => [one.session, one]));
  const why = new Map(missed.map(({ session, data }) => [session, data.because ?? ("not said" as const)]));
  const inside = days.filter(({ day }) => from <= day && day < to);
  const reasons: Partial<Record<NotDone | "not said", number>> = {};
  let [done, early, setsAsked, setsDone] = [0, 0, 0, 0];
  for (const { occurrence } of inside) {
    const record = recorded.get(occurrence.id);
    const because = why.get(occurrence.id);
    if (record === undefined) {
      if (because !== undefined) reasons[because] = (reasons[because] ?? 0) + 1;
      continue;
    }
    done++;
    if (record.ended?.early === true) early++;
    const bySlot = new Map(record.slots.map((slot) => [slot.slot, slot.sets.length]));
    for (const { key, dose } of slotsIn(occurrence.session)) {
      setsAsked += dose.sets.length;
      setsDone += Math.min(dose.sets.length, bySlot.get(key) ?? 0);
    }
  }
  return { asked: inside.length, done, early, missed: reasons, sets: { asked: setsAsked, done: setsDone } };
}
