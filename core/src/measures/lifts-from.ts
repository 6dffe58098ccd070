import type { Day } from "../day.ts";
import type { Catalogue, Exercise, Lift } from "../model/index.ts";
import { type DoneSet, type Log, leastOf } from "./slot-history.ts";

/**
 * What somebody did, as the base of starting loads: of each exercise in each session the set that says most, if its
 * repetitions were read. What nobody touched is no lift.
 *
 * @param before first day that no longer counts
 */
export function liftsFrom(
  log: Log,
  { dayOf, catalogue }: { readonly dayOf: (at: number) => Day; readonly catalogue: Catalogue },
  before: Day,
): readonly Lift[] {
  const best = new Map<string, { readonly lift: Lift; readonly worth: number }>();
  for (const { session, at, sets } of log) {
    const on = dayOf(at);
    if (!(on < before)) continue;
    for (const set of sets) {
      const lift = liftOf(set, on, catalogue.exercises.get(set.exercise));
      if (lift === undefined) continue;
      const key = `${session}\n${set.exercise}`;
      const worth = (set.lifted?.value ?? 0) * 1000 + (lift.reps ?? lift.holdS ?? 0) + (lift.reserve ?? 0);
      if (!((best.get(key)?.worth ?? -1) >= worth)) best.set(key, { lift, worth });
    }
  }
  return [...best.values()].map(({ lift }) => lift);
}

/** Without a load a set is a lift of the body alone only where the form takes none, or where it was said so. */
function liftOf(
  { exercise, reps, holdS, load, lifted, reserve }: DoneSet,
  on: Day,
  form: Exercise | undefined,
): Lift | undefined {
  const [count, seconds] = [leastOf(reps), leastOf(holdS)];
  if (count === undefined && seconds === undefined) return undefined;
  if (lifted === undefined && load !== "none" && form?.loadMeaning !== "body only") return undefined;
  return {
    exercise,
    ...(lifted === undefined ? {} : { load: lifted }),
    ...(count === undefined ? {} : { reps: count }),
    ...(seconds === undefined ? {} : { holdS: seconds }),
    ...(reserve === undefined ? {} : { reserve }),
    on,
  };
}
