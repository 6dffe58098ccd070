import type { Mass } from "../units.ts";
import { MAX_REPS, refuseOutsideReps } from "./reps-to-failure.ts";

/** The bare formula: how many times the load the 1RM is, also above 10 repetitions. @source brzycki1993 */
export function brzyckiTimes(reps: number): number {
  return 36 / (37 - reps);
}

/**
 * The share of the 1RM that allows so many repetitions, in the decimal form as printed.
 *
 *   per cent = 102.78 − 2.78 × reps
 *
 * @param reps whole repetitions to failure, 1 to 10
 * @returns per cent of the 1RM
 * @throws RangeError outside the range
 * @source brzycki1993
 * @example
 * brzyckiPercent(9).toFixed(2) //=> "77.76"
 */
export function brzyckiPercent(reps: number): number {
  if (!(Number.isInteger(reps) && reps >= 1 && reps <= MAX_REPS)) {
    throw new RangeError(
      `Cannot estimate a share of the 1RM as repetitions must be a whole number from 1 to ${MAX_REPS}: current value is ${reps}`,
    );
  }
  return 102.78 - 2.78 * reps;
}

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
  return Math.round(load * brzyckiTimes(reps)) as Mass;
}
