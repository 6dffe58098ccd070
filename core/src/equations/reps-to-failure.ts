import type { Mass } from "../units.ts";

/** Repetitions above which equations from repetitions to the 1RM are not trusted. Source: reynolds2006, mayhew1995. */
export const MAX_REPS = 10;

/** Repetitions up to which a band, and no single figure, is given: the last that our sources print. Ours. */
export const MAX_BAND_REPS = 12;

/**
 * Refuses what no equation from repetitions to the 1RM was made for.
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10
 * @param most another last number of repetitions
 * @throws RangeError that says what must hold
 * @source reynolds2006
 * @example
 * refuseOutsideReps(kg(100), 11) // throws RangeError
 */
export function refuseOutsideReps(load: Mass, reps: number, most: number = MAX_REPS): void {
  if (!(load > 0)) {
    throw new RangeError(`Cannot estimate the 1RM as the load must be over 0: current value is ${load}`);
  }
  if (!(Number.isInteger(reps) && reps >= 1 && reps <= most)) {
    throw new RangeError(
      `Cannot estimate the 1RM as repetitions to failure must be a whole number from 1 to ${most}: current value is ${reps}. Formulas part company above 10; a set of 5 to 8 tells more`,
    );
  }
}
