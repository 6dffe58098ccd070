import type { Mass } from "../units.ts";
import { refuseOutsideReps } from "./reps-to-failure.ts";

/** The bare formula: how many times the load the 1RM is, also at 1 repetition and above 10. @source mayhew1992 */
export function mayhewTimes(reps: number): number {
  return 100 / (52.2 + 41.9 * Math.exp(-0.055 * reps));
}

/**
 * The one-repetition maximum (1RM) estimated from a set taken to failure, after Mayhew.
 *
 *   1RM = load × 100 / (52.2 + 41.9 × e^(−0.055 × reps)), and the load itself when reps is 1
 *
 * Population: college men and women, bench press. The constants 48.8, 53.8 and 0.075 are another equation (wathen) and are sometimes printed under this name. Errors as in ONE_REP_MAX_TRIALS.
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10
 * @returns the estimate, to the nearest whole unit of Mass; rounding to loads that exist comes later
 * @throws RangeError outside the range
 * @source mayhew1992
 * @example
 * inKg(mayhew(kg(100), 5)).toFixed(2) //=> "119.01"
 */
export function mayhew(load: Mass, reps: number): Mass {
  refuseOutsideReps(load, reps);
  return reps === 1 ? load : (Math.round(load * mayhewTimes(reps)) as Mass);
}
