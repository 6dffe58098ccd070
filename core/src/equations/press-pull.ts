import { inKg, type Mass } from "../units.ts";

/** Bench press over pull-up, body and load together, in men of one team sport: mean and deviation of single ratios. */
export const PRESS_PULL = {
  source: "bakerNewton2004",
  who: "rugby league men",
  people: 42,
  percent: 97.7,
  sdPercent: 9,
} as const;

/**
 * The 1RM of the bench press over that of the pull-up, body mass and load together.
 *
 * About 100 % was expected and 97.7 ± 9.0 % found. No trial says that another ratio harms; shown as a number.
 *
 * @param benchPress over 0
 * @param pullUp body and load together, over 0
 * @returns per cent
 * @throws RangeError for a mass of 0 or less
 * @source bakerNewton2004
 * @example pressToPull(kg(100), kg(100)) //=> 100
 */
export function pressToPull(benchPress: Mass, pullUp: Mass): number {
  if (!(benchPress > 0 && pullUp > 0)) {
    throw new RangeError(
      `Cannot compare press and pull as both must be over 0 kg: current values are ${inKg(benchPress)} and ${inKg(pullUp)}`,
    );
  }
  return (100 * benchPress) / pullUp;
}
