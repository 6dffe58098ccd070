import type { About } from "./about.ts";
import { refuseOutside } from "./refuse.ts";

/** What the comparison was made with: it is arithmetic, and was found to say nothing of injury beyond chance. */
export const RECENT_LOAD: About = { source: "impellizzeri2020", who: "a way to describe, made on nobody" };

const RECENT_DAYS = 7;
const USUAL_DAYS = 28;

/** The load of the last 7 days beside what is usual, in the unit that came in; ratios have none. */
export interface RecentLoad {
  /** Mean of the last 7 days. */
  readonly recent: number;
  /** Mean of the last 28, the 7 among them. */
  readonly usual: number;
  /** Recent over usual: the 7 days stand in both. */
  readonly overUsual: number;
  /** Recent over the mean of the 21 days before; undefined when nothing was done in them. */
  readonly overEarlier?: number;
  /** The same with means in which older days fade. */
  readonly fading: number;
}

/**
 * A mean in which older days fade: today's load × 2 / (days + 1) and the rest of yesterday's mean.
 *
 * @param loads a day each, oldest first; the mean starts from the first of them
 * @returns the mean after each day
 * @throws RangeError for no load, or one outside 0 to 20,000
 * @source williams2017
 * @example fadingMeans([100, 300, 0], 7) //=> [100, 150, 112.5]
 */
export function fadingMeans(loads: readonly number[], days: number): readonly number[] {
  refuseOutside("a fading mean", "the number of days", loads.length, 1, 2000);
  for (const load of loads) refuseOutside("a fading mean", "the load of a day", load, 0, 20_000);
  const share = 2 / (days + 1);
  const means: number[] = [];
  for (const load of loads) means.push(share * load + (1 - share) * (means.at(-1) ?? load));
  return means;
}

/**
 * How the last week's training load stands beside the last four weeks'.
 *
 *   over usual = mean of 7 days / mean of 28; over earlier = mean of 7 / mean of the 21 before; fading: 7 and 28 days
 *
 * It describes one person's own weeks. No band of it is safe or dangerous: with chance in place of the usual load the
 * same ratio told as much of injuries, and the authors who showed it ask to drop that use.
 *
 * @param loads a day each, oldest first, rest days as 0; 28 days or more
 * @throws RangeError for fewer days, a load outside 0 to 20,000, or 28 days without any
 * @source williams2017, impellizzeri2020
 * @example recentLoad([...Array(21).fill(200), ...Array(7).fill(350)]).overEarlier //=> 1.75
 */
export function recentLoad(loads: readonly number[]): RecentLoad {
  refuseOutside("a recent load", "the number of days", loads.length, USUAL_DAYS, 2000);
  const fades = (days: number) => fadingMeans(loads, days).at(-1)!;
  const mean = (from: number, to?: number) => {
    const part = loads.slice(from, to);
    return part.reduce((sum, load) => sum + load, 0) / part.length;
  };
  const [recent, usual, earlier] = [mean(-RECENT_DAYS), mean(-USUAL_DAYS), mean(-USUAL_DAYS, -RECENT_DAYS)];
  const fading = fades(RECENT_DAYS) / fades(USUAL_DAYS);
  if (!(usual > 0)) {
    throw new RangeError(`Cannot compare a recent load as something must have been done in ${USUAL_DAYS} days`);
  }
  return {
    recent,
    usual,
    overUsual: recent / usual,
    ...(earlier > 0 ? { overEarlier: recent / earlier } : {}),
    fading,
  };
}
