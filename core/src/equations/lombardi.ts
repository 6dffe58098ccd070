import type { Mass } from "../units.ts";
import { refuseOutsideReps } from "./reps-to-failure.ts";

/** The bare formula: how many times the load the 1RM is, also at 1 repetition and above 10. @source lombardi1989 */
export function lombardiTimes(reps: number): number {
  return reps ** 0.1;
}

/**
 * The one-repetition maximum (1RM) estimated from a set taken to failure, after Lombardi.
 *
 *   1RM = load × reps ^ 0.10, and the load itself when reps is 1
 *
 * Population: not stated in what we could read; a textbook for beginners. It gives exactly the load at 1 repetition by itself. Errors as in ONE_REP_MAX_TRIALS.
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10
 * @returns the estimate, to the nearest whole unit of Mass; rounding to loads that exist comes later
 * @throws RangeError outside the range
 * @source lombardi1989
 * @example
 * inKg(lombardi(kg(100), 5)).toFixed(2) //=> "117.46"
 */
export function lombardi(load: Mass, reps: number): Mass {
  refuseOutsideReps(load, reps);
  return reps === 1 ? load : (Math.round(load * lombardiTimes(reps)) as Mass);
}
