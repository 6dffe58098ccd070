import { addDays, type Day } from "../day.ts";
import { type DoneSet, type Log, leastOf } from "../measures/index.ts";
import type { Exercise, Lift, Person } from "../model/index.ts";
import { clearanceOf } from "../offer/index.ts";
import { daysOfPhases } from "./plan-for.ts";
import type { Situation } from "./situation.ts";

/** @returns the phase of the programme in which a day falls, 0 = first; before the plan the first, after it the last */
export function phaseOn(situation: Pick<Situation, "programme" | "person" | "on">, today: Day): number {
  return Math.max(
    0,
    daysOfPhases(situation).findLastIndex(({ on }) => on <= today),
  );
}

/**
 * The first of the days for which a phase is to be safe: its own first, or, once it runs, the day on which what binds
 * this person last changed. So a limit that was lifted no longer binds, and the plan is not made anew each day.
 */
export function bindingDay(person: Person, start: Day, today: Day): Day {
  let on = start;
  for (;;) {
    const { until } = clearanceOf(person, on);
    if (until === undefined || !(until < today)) return on;
    on = addDays(until, 1);
  }
}

/**
 * What somebody did, as the base of starting loads: of each exercise in each session the set that says most, if its
 * repetitions were read. What nobody touched is no lift.
 *
 * @param before first day that no longer counts
 */
export function liftsFrom(
  log: Log,
  { dayOf, catalogue }: Pick<Situation, "dayOf" | "catalogue">,
  before: Day,
): readonly Lift[] {
  const best = new Map<string, { readonly lift: Lift; readonly worth: number }>();
  for (const { session, at, sets } of log) {
    const on = dayOf(at);
    if (!(on < before)) continue;
    for (const set of sets) {
      const lift = liftOf(set, on, catalogue.exercises.get(set.exercise));
      if (lift === undefined) continue;
      const key = JSON.stringify([session, set.exercise]);
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
