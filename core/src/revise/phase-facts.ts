import { addDays, type Day } from "../day.ts";
import type { Person } from "../model/index.ts";
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
