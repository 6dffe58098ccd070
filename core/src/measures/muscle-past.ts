import { addDays, type Day } from "../day.ts";
import type { Catalogue, Muscle, RecentWeek } from "../model/index.ts";
import type { Log } from "./slot-history.ts";

/** From so many days from one set of a muscle to the next on, what it did before says little of now. Ours, no source. */
export const MUSCLE_BREAK_DAYS = 14;
const WEEK_DAYS = 7;

/** What is known of when a muscle was trained before a day. */
export interface MusclePast {
  /** Days since its last set, or since anything is known where it had none. */
  readonly days: number;
  /** Whether it had any set at all in what is known. */
  readonly ever: boolean;
  /** Sessions that trained it since its last break; 0 while the break lasts. */
  readonly exposures: number;
  /** Days without it before the first of these; undefined where no break is known. */
  readonly daysBefore?: number;
}

/**
 * When a muscle was last trained, and how often since its last break of two weeks, whatever the movement: from the record
 * and, before it, from the weeks that the roster tells. A set trains the muscles that it is driven by and those that help.
 *
 * @param on first day that no longer counts
 * @returns undefined where nothing is known of any day before
 * @source ours
 */
export function musclePast(
  muscle: Muscle,
  log: Log,
  { exercises }: Pick<Catalogue, "exercises">,
  dayOf: (at: number) => Day,
  on: Day,
  written: readonly RecentWeek[] = [],
): MusclePast | undefined {
  const recorded = log.flatMap(({ at, session, sets }) => {
    const day = dayOf(at);
    if (!(day < on) || sets.length === 0) return [];
    return [{ day, session, hit: sets.some(({ exercise }) => (exercises.get(exercise)?.muscles[muscle] ?? 0) > 0) }];
  });
  const weeks = written
    .filter(({ week }) => addDays(week, WEEK_DAYS) <= on)
    .map(({ week, sets }) => ({
      first: week,
      day: addDays(week, WEEK_DAYS - 1),
      session: `${week}`,
      hit: (sets[muscle] ?? 0) > 0,
    }));
  if (recorded.length + weeks.length === 0) return undefined;
  const since = Math.min(...recorded.map(({ day }) => day), ...weeks.map(({ first }) => first));
  const uses = [...weeks, ...recorded].filter(({ hit }) => hit).sort((a, b) => a.day - b.day);
  const ever = uses.length > 0;
  const days = on - (uses.at(-1)?.day ?? since);
  const gap = (at: number) => uses[at]!.day - (uses[at - 1]?.day ?? since);
  if (days >= MUSCLE_BREAK_DAYS) return { days, ever, exposures: 0 };
  const start = uses.findLastIndex((_, at) => gap(at) >= MUSCLE_BREAK_DAYS);
  const exposures = new Set(uses.slice(Math.max(0, start)).map(({ session }) => session)).size;
  return { days, ever, exposures, ...(start === -1 ? {} : { daysBefore: gap(start) }) };
}
