import type { SourceId } from "../sources.ts";
import { refuseOutside } from "./refuse.ts";

/** Factors from resting to daily energy as many pages print them; no study behind the five was found. */
export const ACTIVITY_FACTORS = {
  sedentary: 1.2,
  "lightly active": 1.375,
  "moderately active": 1.55,
  "very active": 1.725,
  "extremely active": 1.9,
} as const;
export type ActivityLevel = keyof typeof ACTIVITY_FACTORS;

/**
 * Daily over resting energy of whole populations, as an expert report bands it. Its figures are for groups and not for
 * single people, it says. Only the middle band was read; the others are from memory.
 *
 * @source faoWhoUnu2001
 */
export const LIFESTYLE_BANDS: readonly {
  readonly lifestyle: "sedentary or light" | "active or moderately active" | "vigorous";
  readonly from: number;
  readonly to: number;
  readonly source: SourceId;
  readonly read: "primary" | "memory";
}[] = [
  { lifestyle: "sedentary or light", from: 1.4, to: 1.69, source: "faoWhoUnu2001", read: "memory" },
  { lifestyle: "active or moderately active", from: 1.7, to: 1.99, source: "faoWhoUnu2001", read: "primary" },
  { lifestyle: "vigorous", from: 2, to: 2.4, source: "faoWhoUnu2001", read: "memory" },
];

/**
 * Energy that a body takes in a day.
 *
 *   daily = resting × factor
 *
 * @param restingKcal 700 to 4000 kilocalories a day
 * @param factor 1.2 to 2.4
 * @returns kilocalories a day; the factor alone may miss by 8 %
 * @throws RangeError outside the ranges
 * @source activityFactors, faoWhoUnu2001
 * @example dailyEnergy(1780, ACTIVITY_FACTORS["moderately active"]) //=> 2759
 */
export function dailyEnergy(restingKcal: number, factor: number): number {
  refuseOutside("daily energy", "resting energy in kcal/d", restingKcal, 700, 4000);
  refuseOutside("daily energy", "the activity factor", factor, 1.2, 2.4);
  return restingKcal * factor;
}

/**
 * Energy that is left for the body after training, for each kilogram that is not fat. About 45 is healthy; 30 and less
 * is commonly called low, from short trials in young, lean, sedentary women; in men no cut is known. It diagnoses
 * nothing: under 30 a physician or a registered dietitian is asked.
 *
 *   (eaten − spent in exercise) / fat-free mass
 *
 * @param eatenKcal 0 to 10,000 kilocalories a day
 * @param spentKcal 0 to 6,000 kilocalories a day
 * @param fatFreeKg 25 to 150 kg
 * @returns kilocalories for each kilogram and day, and whether it is under 30
 * @throws RangeError outside the ranges
 * @source areta2021
 * @example energyAvailability(1900, 500, 50) //=> { kcalPerKg: 28, low: true }
 */
export function energyAvailability(
  eatenKcal: number,
  spentKcal: number,
  fatFreeKg: number,
): { readonly kcalPerKg: number; readonly low: boolean } {
  refuseOutside("energy availability", "energy eaten in kcal/d", eatenKcal, 0, 10_000);
  refuseOutside("energy availability", "energy spent in exercise in kcal/d", spentKcal, 0, 6000);
  refuseOutside("energy availability", "fat-free mass in kg", fatFreeKg, 25, 150);
  const kcalPerKg = (eatenKcal - spentKcal) / fatFreeKg;
  return { kcalPerKg, low: !(kcalPerKg >= 30) };
}

/** Pace of losing body mass at which a coach asks: 1 % of body mass or 1 kg a week. Ours, from public guides. */
export const LOSS = { percentPerWeek: 1, kgPerWeek: 1 } as const;

/**
 * How fast body mass was lost, and whether it is faster than 1 % or 1 kg a week.
 *
 * @param fromKg 30 to 300 kg
 * @param toKg 30 to 300 kg
 * @param weeks over 0, at most 104
 * @returns kilograms and per cent of the first mass a week; negative for a gain
 * @throws RangeError outside the ranges
 * @source acsm2001, ours
 * @example lossRate(90, 88.2, 2) //=> { kgPerWeek: 0.9, percentPerWeek: 1, fast: false }
 */
export function lossRate(
  fromKg: number,
  toKg: number,
  weeks: number,
): { readonly kgPerWeek: number; readonly percentPerWeek: number; readonly fast: boolean } {
  refuseOutside("the pace of loss", "body mass before in kg", fromKg, 30, 300);
  refuseOutside("the pace of loss", "body mass after in kg", toKg, 30, 300);
  refuseOutside("the pace of loss", "weeks", weeks, 1 / 7, 104);
  // Whole grams, so that 1 % of 90 kg is not a hair over itself.
  const grams = Math.round(1000 * (fromKg - toKg)) / weeks;
  const kgPerWeek = grams / 1000;
  const percentPerWeek = grams / (10 * fromKg);
  return { kgPerWeek, percentPerWeek, fast: kgPerWeek > LOSS.kgPerWeek || percentPerWeek > LOSS.percentPerWeek };
}
