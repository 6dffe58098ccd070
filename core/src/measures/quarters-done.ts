import type { Day } from "../day.ts";
import type { Catalogue, Muscle, SetDose } from "../model/index.ts";
import type { Quarters } from "../units.ts";
import { type MuscleQuarters, slotQuarters } from "./set-quarters.ts";
import { type DoneSet, type Log, leastOf } from "./slot-history.ts";

/** What a set counts as: what was asked of it, with the reserve that was said; one nobody asked for, by what was done. */
function doseOf({ asked, reps, holdS, reserve }: DoneSet): SetDose {
  const left = reserve === undefined ? {} : { reserve: { from: reserve, to: reserve } };
  if (asked !== undefined) return { ...asked, ...left };
  const [held, count] = [leastOf(holdS), leastOf(reps) ?? 0];
  const span = { from: held ?? count, to: held ?? count };
  return { amount: { kind: held === undefined ? "reps" : "hold", span }, eachSide: false, ...left };
}

/**
 * Fractional sets per muscle that were recorded from `from` up to the day before `to`, counted as those of a plan are.
 *
 * @returns quarter-sets, whole
 * @source pelland2024
 */
export function quartersDone(
  log: Log,
  { exercises }: Catalogue,
  dayOf: (at: number) => Day,
  from: Day,
  to: Day,
): MuscleQuarters {
  const sum: Partial<Record<Muscle, Quarters>> = {};
  for (const { at, sets } of log) {
    const day = dayOf(at);
    if (!(from <= day && day < to)) continue;
    for (const set of sets) {
      const exercise = exercises.get(set.exercise);
      if (exercise !== undefined) slotQuarters(exercise, { sets: [doseOf(set)] }, sum);
    }
  }
  return sum;
}
