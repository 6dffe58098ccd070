import { addDays, type Day } from "../day.ts";
import type { Catalogue, Muscle, RecentWeek } from "../model/index.ts";
import { quartersDone } from "./quarters-done.ts";
import type { Log } from "./slot-history.ts";

const WEEK_DAYS = 7;
/** Weeks that are looked back on: four that were trained in make a usual one, with as many spent otherwise. Ours. */
const LOOK_BACK = 8;

/**
 * What somebody did in the weeks before a day, from the record: stretches of seven days that end with the last day that
 * was recorded, so that the days since are told exactly. Weeks that were written down count where the record does not
 * reach.
 *
 * @param on first day that no longer counts
 * @param written weeks of the roster
 * @returns latest first; weeks with nothing in them are left out
 * @source pelland2024
 */
export function recentWeeks(
  log: Log,
  catalogue: Catalogue,
  dayOf: (at: number) => Day,
  on: Day,
  written: readonly RecentWeek[] = [],
): readonly RecentWeek[] {
  const days = log.filter(({ sets }) => sets.length > 0).map(({ at }) => dayOf(at));
  const before = days.filter((day) => day < on);
  if (before.length === 0) return written;
  const end = addDays(Math.max(...before) as Day, 1);
  const recorded = Array.from({ length: LOOK_BACK }, (_, back): RecentWeek => {
    const week = addDays(end, -WEEK_DAYS * (back + 1));
    return { week, sets: inSets(quartersDone(log, catalogue, dayOf, week, addDays(week, WEEK_DAYS))) };
  }).filter(({ sets }) => Object.keys(sets).length > 0);
  const oldest = recorded.at(-1)?.week ?? end;
  return [...recorded, ...written.filter(({ week }) => addDays(week, WEEK_DAYS) <= oldest)];
}

function inSets(quarters: ReturnType<typeof quartersDone>): Partial<Record<Muscle, number>> {
  return Object.fromEntries(Object.entries(quarters).map(([muscle, count]) => [muscle, count / 4]));
}
