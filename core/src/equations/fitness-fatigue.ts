import type { SourceId } from "../sources.ts";
import { refuseOutside } from "./refuse.ts";

/** A model of performance as a slow gain less a quick loss, each fading from every dose of training. */
export interface FitnessFatigue {
  readonly source: SourceId;
  readonly who: string;
  readonly start: number;
  readonly gain: number;
  readonly gainDays: number;
  readonly loss: number;
  readonly lossDays: number;
}

/**
 * Constants fitted to single people, in their own units; none of them trained for strength, and none holds for another
 * person. They show the shape. The last set is from memory.
 *
 * @source busso1994, clarkeSkiba2013, morton1990
 */
export const FITNESS_FATIGUE = {
  "hammer thrower": {
    source: "busso1994",
    who: "one hammer thrower",
    start: 496,
    gain: 0.07,
    gainDays: 60,
    loss: 0.27,
    lossDays: 13,
  },
  cyclist: {
    source: "clarkeSkiba2013",
    who: "one cyclist, watts over 5 minutes",
    start: 262,
    gain: 0.18,
    gainDays: 36,
    loss: 0.23,
    lossDays: 21,
  },
  usual: {
    source: "morton1990",
    who: "usual constants, no unit",
    start: 0,
    gain: 1,
    gainDays: 45,
    loss: 2,
    lossDays: 15,
  },
} as const satisfies Record<string, FitnessFatigue>;

/**
 * Performance on a day from the doses of the days before it.
 *
 *   start + gain × sum of dose × e^(−days ago / gainDays) − loss × sum of dose × e^(−days ago / lossDays)
 *
 * A dose counts from the next day on; some texts count it on its own day, which shifts everything by one.
 *
 * @param doses dose of day 1, 2, …, in the unit of the model
 * @param day 1 and later, at most 2000
 * @throws RangeError for another day
 * @source busso1994, clarkeSkiba2013
 * @example performanceOn(FITNESS_FATIGUE.cyclist, Array(28).fill(100), 29).toFixed(1) //=> "260.2"
 */
export function performanceOn(model: FitnessFatigue, doses: readonly number[], day: number): number {
  refuseOutside("performance", "day", day, 1, 2000);
  const { start, gain, gainDays, loss, lossDays } = model;
  return doses.slice(0, Math.ceil(day) - 1).reduce((sum, dose, i) => {
    const ago = day - (i + 1);
    return sum + dose * (gain * Math.exp(-ago / gainDays) - loss * Math.exp(-ago / lossDays));
  }, start);
}

/**
 * Days after one dose when its net effect turns good, and when it is best.
 *
 *   good: ln(loss / gain) / (1 / lossDays − 1 / gainDays)
 *   best: ln(loss × gainDays / (gain × lossDays)) / (1 / lossDays − 1 / gainDays)
 *
 * @throws RangeError unless loss is over gain and fades sooner
 * @source busso1994
 * @example daysToGood(FITNESS_FATIGUE.cyclist).good.toFixed(2) //=> "12.35"
 */
export function daysToGood({ gain, gainDays, loss, lossDays }: FitnessFatigue): {
  readonly good: number;
  readonly best: number;
} {
  if (!(loss > gain && gain > 0 && gainDays > lossDays && lossDays > 0)) {
    throw new RangeError("Cannot tell when a dose turns good as its loss must be larger than its gain and fade sooner");
  }
  const rate = 1 / lossDays - 1 / gainDays;
  return { good: Math.log(loss / gain) / rate, best: Math.log((loss * gainDays) / (gain * lossDays)) / rate };
}
