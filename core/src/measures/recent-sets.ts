import { addDays, type Day } from "../day.ts";
import { MUSCLES, type Muscle, type RecentWeek } from "../model/index.ts";

/** Weeks with training that a usual week is made from. Ours, no source. */
const USUAL_WEEKS = 4;
const WEEK_DAYS = 7;

/** What somebody was used to before a day, and how long they have been off. */
export interface RecentSets {
  /** Mean weekly sets of each muscle over the last trained weeks, 0 where there were none. */
  readonly usual: Readonly<Record<Muscle, number>>;
  /** How many weeks that mean is of. */
  readonly weeks: number;
  /** Whole days between the last trained week and the day, 0 or more. */
  readonly daysOff: number;
}

/**
 * What somebody was used to: the mean of the last four weeks in which anything was trained, and the days since.
 *
 * @param recent weeks in any order; those that are not over on the day are left out
 * @returns undefined where no week before the day was trained in
 * @source ours
 * @example
 * recentSets([{ week: day("2026-11-30"), sets: { chest: 8 } }], day("2026-12-21"))?.daysOff //=> 14
 */
export function recentSets(recent: readonly RecentWeek[], on: Day): RecentSets | undefined {
  const trained = recent
    .filter(({ week, sets }) => addDays(week, WEEK_DAYS) <= on && Object.values(sets).some((count) => count > 0))
    .toSorted((a, b) => b.week - a.week)
    .slice(0, USUAL_WEEKS);
  const [last] = trained;
  if (last === undefined) return undefined;
  const mean = (muscle: Muscle) => trained.reduce((sum, { sets }) => sum + (sets[muscle] ?? 0), 0) / trained.length;
  return {
    usual: Object.fromEntries(MUSCLES.map((muscle) => [muscle, mean(muscle)])) as Record<Muscle, number>,
    weeks: trained.length,
    daysOff: on - addDays(last.week, WEEK_DAYS),
  };
}
