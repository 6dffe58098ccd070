import type { Mass } from "../units.ts";
import { refuseOutsideReps } from "./reps-to-failure.ts";

/** The bare formula: how many times the load the 1RM is, also at 1 repetition and above 10. @source wathen1994 */
export function wathenTimes(reps: number): number {
  return 100 / (48.8 + 53.8 * Math.exp(-0.075 * reps));
}

/**
 * The one-repetition maximum (1RM) estimated from a set taken to failure, after Wathen.
 *
 *   1RM = load × 100 / (48.8 + 53.8 × e^(−0.075 × reps)), and the load itself when reps is 1
 *
 * Population: not stated in what we could read. It is sometimes printed as a bench-press equation of Mayhew, which has other constants. Errors as in ONE_REP_MAX_TRIALS.
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10
 * @returns the estimate, to the nearest whole unit of Mass; rounding to loads that exist comes later
 * @throws RangeError outside the range
 * @source wathen1994
 * @example
 * inKg(wathen(kg(100), 5)).toFixed(2) //=> "116.58"
 */
export function wathen(load: Mass, reps: number): Mass {
  refuseOutsideReps(load, reps);
  return reps === 1 ? load : (Math.round(load * wathenTimes(reps)) as Mass);
}
