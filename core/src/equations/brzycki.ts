import type { Mass } from "../units.ts";
import { refuseOutsideReps } from "./reps-to-failure.ts";

/**
 * The one-repetition maximum (1RM) estimated from a set taken to failure, after Brzycki.
 *
 *   1RM = load × 36 / (37 − reps), the rounded twin of load / (1.0278 − 0.0278 × reps)
 *
 * The twin gives exactly the load at 1 repetition; up to 10 repetitions the two differ by less than 0.1 %.
 * Population: not stated in what we could read. Most accurate of six equations for sets of 10 or fewer bench presses
 * in 220 men (mayhew1995); errors as in ONE_REP_MAX_TRIALS.
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10
 * @returns the estimate, to the nearest whole unit of Mass; rounding to loads that exist comes later
 * @throws RangeError outside the range
 * @source brzycki1993
 * @example
 * inKg(brzycki(kg(100), 5)).toFixed(2) //=> "112.50"
 */
export function brzycki(load: Mass, reps: number): Mass {
  refuseOutsideReps(load, reps);
  return Math.round((load * 36) / (37 - reps)) as Mass;
}
