import type { Mass } from "../units.ts";
import { refuseOutsideReps } from "./reps-to-failure.ts";

/** The bare formula: how many times the load the 1RM is, also at 1 repetition and above 10. @source epley1985 */
export function epleyTimes(reps: number): number {
  return 1 + reps / 30;
}

/**
 * The one-repetition maximum (1RM) estimated from a set taken to failure, after Epley.
 *
 *   1RM = load × (1 + reps / 30), and the load itself when reps is 1 (the bare formula would add 3 %)
 *
 * Population: not stated in what we could read of the chart; a coach's chart for trained lifters. Tried on others with
 * errors as in ONE_REP_MAX_TRIALS.
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10
 * @returns the estimate, to the nearest whole unit of Mass; rounding to loads that exist comes later
 * @throws RangeError outside the range
 * @source epley1985
 * @example
 * inKg(epley(kg(100), 5)).toFixed(2) //=> "116.67"
 */
export function epley(load: Mass, reps: number): Mass {
  refuseOutsideReps(load, reps);
  return reps === 1 ? load : (Math.round(load * epleyTimes(reps)) as Mass);
}
