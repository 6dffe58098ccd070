import type { About } from "./about.ts";
import { refuseOutside } from "./refuse.ts";

/** Which folds are summed, in mm. The three of men are chest, abdomen, thigh; of women triceps, hip bone, thigh. */
export type FoldMethod = "three folds" | "seven folds";

/** On whom the equations from folds to density were made; errors in per cent of fat follow from those of density. */
export const SKINFOLDS = {
  man: { source: "jacksonPollock1978", who: "men", people: 403, ageY: { from: 18, to: 61 } },
  woman: { source: "jacksonPollockWard1980", who: "women", people: 331, ageY: { from: 18, to: 55 } },
} as const satisfies Record<"man" | "woman", About>;

/** Standard error of density, where printed. Source: jacksonPollock1978, jacksonPollockWard1980. */
const DENSITY_ERROR = {
  man: { "three folds": 0.0077, "seven folds": 0.0078 },
  woman: { "three folds": undefined, "seven folds": 0.0083 },
} as const;

const CURVES = {
  man: {
    "three folds": [1.10938, 0.0008267, 0.0000016, 0.0002574],
    "seven folds": [1.112, 0.00043499, 0.00000055, 0.00028826],
  },
  woman: {
    "three folds": [1.0994921, 0.0009929, 0.0000023, 0.0001392],
    "seven folds": [1.097, 0.00046971, 0.00000056, 0.00012828],
  },
} as const;

/** Sums beyond which the curves turn round or nobody was measured, mm. Ours. */
const MOST_MM = { "three folds": 200, "seven folds": 350 } as const;

/**
 * Density of the body from skinfolds.
 *
 *   men, three folds: 1.10938 − 0.0008267 S + 0.0000016 S² − 0.0002574 × years
 *   men, seven folds: 1.112 − 0.00043499 S + 0.00000055 S² − 0.00028826 × years
 *   women, three folds: 1.0994921 − 0.0009929 S + 0.0000023 S² − 0.0001392 × years
 *   women, seven folds: 1.0970 − 0.00046971 S + 0.00000056 S² − 0.00012828 × years
 *
 * @param sumMm sum of the folds, 10 to 200 mm for three, 10 to 350 for seven
 * @param ageY men 18 to 61, women 18 to 55
 * @returns kg/L, not rounded
 * @throws RangeError outside the ranges
 * @source jacksonPollock1978, jacksonPollockWard1980
 * @example densityFromFolds("man", "three folds", 45, 30).toFixed(6) //=> "1.067697"
 */
export function densityFromFolds(sex: "man" | "woman", method: FoldMethod, sumMm: number, ageY: number): number {
  const { from, to } = SKINFOLDS[sex].ageY;
  refuseOutside("body density", "age in years", ageY, from, to);
  refuseOutside("body density", "the sum of the folds in mm", sumMm, 10, MOST_MM[method]);
  const [start, perMm, perMm2, perYear] = CURVES[sex][method];
  return start - perMm * sumMm + perMm2 * sumMm ** 2 - perYear * ageY;
}

/**
 * Density from four folds (biceps, triceps, under the shoulder blade, over the hip bone).
 *
 *   density = c − m × log10(sum), c and m by sex and age
 *
 * @param sumMm 10 to 250 mm
 * @param ageY 18 to 72 for men, 18 to 68 for women; the table begins at 17 and 16, and under 18 fat is not estimated
 * @returns kg/L, not rounded
 * @throws RangeError outside the ranges
 * @source durninWomersley1974
 * @example densityFromFourFolds("woman", 50, 25).toFixed(6) //=> "1.038084"
 */
export function densityFromFourFolds(sex: "man" | "woman", sumMm: number, ageY: number): number {
  const rows = FOUR_FOLDS[sex];
  refuseOutside("body density", "age in years", ageY, 18, rows.at(-1)!.to);
  refuseOutside("body density", "the sum of the folds in mm", sumMm, 10, 250);
  const { c, m } = rows.find(({ to }) => Math.floor(ageY) <= to)!;
  return c - m * Math.log10(sumMm);
}

/** Coefficients by the last year of each age group. @source durninWomersley1974 */
export const FOUR_FOLDS: Readonly<
  Record<"man" | "woman", readonly { readonly to: number; readonly c: number; readonly m: number }[]>
> = {
  man: [
    { to: 19, c: 1.162, m: 0.063 },
    { to: 29, c: 1.1631, m: 0.0632 },
    { to: 39, c: 1.1422, m: 0.0544 },
    { to: 49, c: 1.162, m: 0.07 },
    { to: 72, c: 1.1715, m: 0.0779 },
  ],
  woman: [
    { to: 19, c: 1.1549, m: 0.0678 },
    { to: 29, c: 1.1599, m: 0.0717 },
    { to: 39, c: 1.1423, m: 0.0632 },
    { to: 49, c: 1.1333, m: 0.0612 },
    { to: 68, c: 1.1339, m: 0.0645 },
  ],
};

/**
 * Per cent of fat from the density of the body.
 *
 *   Siri: 495 / density − 450; Brozek: 457 / density − 414.2
 *
 * @param density 0.95 to 1.09 kg/L
 * @returns per cent of body mass, not rounded
 * @throws RangeError outside the range
 * @source siri1961, brozek1963
 * @example fatFromDensity("siri", 1.05).toFixed(2) //=> "21.43"
 */
export function fatFromDensity(by: "siri" | "brozek", density: number): number {
  refuseOutside("per cent of fat", "density in kg/L", density, 0.95, 1.09);
  return by === "siri" ? 495 / density - 450 : 457 / density - 414.2;
}

/**
 * What the printed error of density means in per cent of fat, by Siri: 495 / density² × error.
 *
 * @returns per cent of fat, undefined where no error of density was printed
 * @throws RangeError as fatFromDensity
 * @source jacksonPollock1978, siri1961
 * @example fatError("man", "three folds", 1.0677)?.toFixed(2) //=> "3.34"
 */
export function fatError(sex: "man" | "woman", method: FoldMethod, density: number): number | undefined {
  refuseOutside("per cent of fat", "density in kg/L", density, 0.95, 1.09);
  const error = DENSITY_ERROR[sex][method];
  return error === undefined ? undefined : (495 / density ** 2) * error;
}

/**
 * Mean per cent of fat by the best reference and by folds in the same 681 adults: besides their scatter, folds read low.
 *
 * @source peterson2003
 */
export const FOLD_BIAS = {
  source: "peterson2003",
  people: 681,
  man: { reference: 22.8, "four folds": 20 },
  woman: { reference: 32.8, "four folds": 31, "seven folds": 26.2 },
} as const;
