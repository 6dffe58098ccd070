import type { Mass } from "../units.ts";
import { refuseOutsideReps } from "./reps-to-failure.ts";

/** The bare formula: how many times the load the 1RM is, also at 1 repetition and above 10. @source lander1985 */
export function landerTimes(reps: number): number {
  return 100 / (101.3 - 2.67123 * reps);
}

/**
 * The one-repetition maximum (1RM) estimated from a set taken to failure, after Lander.
 *
 *   1RM = load × 100 / (101.3 − 2.67123 × reps), and the load itself when reps is 1
 *
 * Population: not stated in what we could read. It runs off to infinity near 38 repetitions, far beyond what it is asked here. Errors as in ONE_REP_MAX_TRIALS.
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10
 * @returns the estimate, to the nearest whole unit of Mass; rounding to loads that exist comes later
 * @throws RangeError outside the range
 * @source lander1985
 * @example
 * inKg(lander(kg(100), 5)).toFixed(2) //=> "113.71"
 */
export function lander(load: Mass, reps: number): Mass {
  refuseOutsideReps(load, reps);
  return reps === 1 ? load : (Math.round(load * landerTimes(reps)) as Mass);
}
