import { WEEKDAYS } from "../day.ts";
import type { Person } from "../model/index.ts";

/**
 * The days of a week on which a person can train, 0 = Monday; every day where no person, or only a rota, is given.
 *
 * @source ours
 * @example
 * trainingDaysOf(nurseFreeMondayToWednesday) //=> [0, 1, 2]
 */
export function trainingDaysOf(person: Person | undefined): readonly number[] {
  const all = WEEKDAYS.map((_, index) => index);
  if (person === undefined || person.windows.length === 0) return all;
  return all.filter((index) => person.windows.some(({ day }) => day === WEEKDAYS[index]));
}

/** @returns how many sessions a week this person can do, at most one a day */
export function sessionsAWeek(person: Person | undefined): number {
  if (person?.cycle !== undefined) return Math.floor((person.cycle.days.length * 7) / person.cycle.length);
  const days = trainingDaysOf(person).length;
  return Math.min(days, person?.perWeek ?? days);
}
