import type { Mass } from "../units.ts";
import { refuseOutsideReps } from "./reps-to-failure.ts";

/** The bare formula: how many times the load the 1RM is, also at 1 repetition and above 10. @source oconner1989 */
export function oconnerTimes(reps: number): number {
  return 1 + 0.025 * reps;
}

/**
 * The one-repetition maximum (1RM) estimated from a set taken to failure, after O'Conner.
 *
 *   1RM = load × (1 + 0.025 × reps), and the load itself when reps is 1
 *
 * Population: not stated in what we could read. It is the lowest of the seven above 6 repetitions. Errors as in ONE_REP_MAX_TRIALS.
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10
 * @returns the estimate, to the nearest whole unit of Mass; rounding to loads that exist comes later
 * @throws RangeError outside the range
 * @source oconner1989
 * @example
 * inKg(oconner(kg(100), 5)).toFixed(2) //=> "112.50"
 */
export function oconner(load: Mass, reps: number): Mass {
  refuseOutsideReps(load, reps);
  return reps === 1 ? load : (Math.round(load * oconnerTimes(reps)) as Mass);
}
