import { addDays } from "../day.ts";
import { quartersDone } from "../measures/index.ts";
import { MUSCLES, type Muscle } from "../model/index.ts";
import type { WatchInput } from "./watch-input.ts";

/** Most that weekly sets go up by in about four weeks. Source: iusca2021. */
const MOST_TIMES = 1.2;
/** Fewer quarter-sets more than this are never too much, however few there were. Ours, no source. */
const LEAST_MORE = 12;
/** Weeks that are looked back on, and the fewest with a record in them that tell anything. Ours, no source. */
const LOOK_BACK = 4;
const FEWEST = 2;

export interface MuchMore {
  readonly muscle: Muscle;
  /** Sets of the last week, and the mean of the weeks before in which anything was recorded. */
  readonly sets: number;
  readonly mean: number;
  readonly weeks: number;
}

/**
 * Muscles that did more in the last seven days than they were used to: over 20 % more than the mean of the four weeks
 * before, and three sets more at least. Weeks without any record are left out of the mean, since a mean with them would
 * call every return too much by itself.
 *
 * @source iusca2021, ours
 */
export function muchMore({ log, catalogue, dayOf, today }: WatchInput): readonly MuchMore[] {
  const week = (back: number) =>
    quartersDone(log, catalogue, dayOf, addDays(today, -7 * (back + 1)), addDays(today, -7 * back));
  const before = Array.from({ length: LOOK_BACK }, (_, at) => week(at + 1)).filter(
    (each) => Object.keys(each).length > 0,
  );
  if (before.length < FEWEST) return [];
  const now = week(0);
  return MUSCLES.flatMap((muscle): MuchMore[] => {
    const quarters = now[muscle] ?? 0;
    const mean = before.reduce((sum, each) => sum + (each[muscle] ?? 0), 0) / before.length;
    if (!(quarters > MOST_TIMES * mean && quarters - mean >= LEAST_MORE)) return [];
    return [{ muscle, sets: quarters / 4, mean: Math.round((mean / 4) * 10) / 10, weeks: before.length }];
  });
}
