import type { SourceId } from "../sources.ts";

/** Protein a day for each kilogram of body mass, as one body or study gives it for healthy adults. */
export interface ProteinRange {
  readonly source: SourceId;
  readonly meant: "people who train" | "lean mass kept while eating less" | "no more gained above" | "an earlier stand";
  readonly from: number;
  readonly to: number;
}

/**
 * Grams for each kilogram a day. They disagree little; none is for kidney disease, pregnancy or youth, who are referred.
 *
 * @source acsm2016, jager2017, morton2018, acsm2009nutrition
 */
export const PROTEIN_RANGES: readonly ProteinRange[] = [
  { source: "acsm2016", meant: "people who train", from: 1.2, to: 2 },
  { source: "jager2017", meant: "people who train", from: 1.4, to: 2 },
  { source: "jager2017", meant: "lean mass kept while eating less", from: 2.3, to: 3.1 },
  // The point where no more was gained is 1.62; the range is its 95 % interval.
  { source: "morton2018", meant: "no more gained above", from: 1.03, to: 2.2 },
  { source: "acsm2009nutrition", meant: "an earlier stand", from: 1.2, to: 1.7 },
];

/** Grams for each kilogram a day above which 49 trials found no more fat-free mass gained. @source morton2018 */
export const PROTEIN_PLATEAU = 1.62;

/**
 * Grams of protein a day for a body mass.
 *
 * @param massKg 30 to 300 kg
 * @param perKg grams for each kilogram, 0 to 3.1
 * @returns grams a day, not rounded
 * @throws RangeError outside the ranges
 * @source morton2018, jager2017
 * @example proteinGrams(80, PROTEIN_PLATEAU).toFixed(1) //=> "129.6"
 */
export function proteinGrams(massKg: number, perKg: number): number {
  if (!(massKg >= 30 && massKg <= 300 && perKg >= 0 && perKg <= 3.1)) {
    throw new RangeError(
      `Cannot tell protein as body mass must be from 30 to 300 kg and protein from 0 to 3.1 g/kg: current values are ${massKg} and ${perKg}`,
    );
  }
  return massKg * perKg;
}
