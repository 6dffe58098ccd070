import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import {
  densityFromFolds,
  densityFromFourFolds,
  FOLD_BIAS,
  FOUR_FOLDS,
  type FoldMethod,
  fatError,
  fatFromDensity,
  SKINFOLDS,
} from "./skinfolds.ts";

const folds = (sex: "man" | "woman", method: FoldMethod, sum: number) => () => densityFromFolds(sex, method, sum, 30);
const siri = (density: () => number) => () => fatFromDensity("siri", density());
const brozek = (density: () => number) => () => fatFromDensity("brozek", density());
const [men3, women3, men7, women7] = [
  folds("man", "three folds", 45),
  folds("woman", "three folds", 60),
  folds("man", "seven folds", 100),
  folds("woman", "seven folds", 120),
];

published("jacksonPollock1978", "men of 30 years, restated equations", [
  ["worked", "three folds, 45 mm: density", men3, 1.067697, 5e-7],
  ["worked", "three folds: Siri", siri(men3), 13.61, 0.005],
  ["worked", "three folds: Brozek", brozek(men3), 13.82, 0.005],
  ["worked", "seven folds, 100 mm: density", men7, 1.065353, 5e-7],
  ["worked", "seven folds: Siri", siri(men7), 14.63, 0.005],
  ["worked", "seven folds: Brozek", brozek(men7), 14.77, 0.005],
  ["worked", "error in % fat, three folds at 1.0677", () => fatError("man", "three folds", 1.0677) ?? 0, 3.34, 0.005],
  ["worked", "error in % fat, seven folds at 1.065", () => fatError("man", "seven folds", 1.065) ?? 0, 3.4, 0.005],
]);
published("jacksonPollockWard1980", "women of 30 years, restated equations", [
  ["worked", "three folds, 60 mm: density", women3, 1.044022, 5e-7],
  ["worked", "three folds: Siri", siri(women3), 24.13, 0.005],
  ["worked", "three folds: Brozek", brozek(women3), 23.53, 0.005],
  ["worked", "seven folds, 120 mm: density", women7, 1.04485, 5e-7],
  ["worked", "seven folds: Siri", siri(women7), 23.75, 0.005],
  ["worked", "seven folds: Brozek", brozek(women7), 23.18, 0.005],
  ["worked", "error in % fat, seven folds at 1.044", () => fatError("woman", "seven folds", 1.044) ?? 0, 3.77, 0.005],
]);
published("siri1961", "% fat by density", [
  ["worked", "1.05", () => fatFromDensity("siri", 1.05), 21.43, 0.005],
  ["worked", "1.07", () => fatFromDensity("siri", 1.07), 12.62, 0.005],
]);
published("brozek1963", "% fat by density, restated", [
  ["worked", "1.05", () => fatFromDensity("brozek", 1.05), 21.04, 0.005],
  ["worked", "1.07", () => fatFromDensity("brozek", 1.07), 12.9, 0.005],
]);

/** Table 6 of the paper: men, % fat by the sum of four folds, and what the restated coefficients give. */
const TABLE: readonly (readonly [sum: number, ...(readonly [age: number, printed: number, worked: number])[]])[] = [
  [20, [35, 12.2, 12], [45, 12.2, 12.22], [60, 12.6, 12.55]],
  [30, [35, 16.2, 16.17], [45, 17.7, 17.6], [60, 18.6, 18.56]],
  [40, [35, 19.2, 19.17], [45, 21.4, 21.49], [60, 22.9, 22.92]],
  [50, [35, 21.5, 21.53], [45, 24.6, 24.56], [60, 26.5, 26.35]],
];
const four = (sex: "man" | "woman", sum: number, age: number) => () =>
  fatFromDensity("siri", densityFromFourFolds(sex, sum, age));
for (const [sum, ...cells] of TABLE) {
  published(
    "durninWomersley1974",
    `% fat of men, sum of four folds ${sum} mm, restated`,
    cells.flatMap(([age, printed, worked]) => [
      // The printed table and the printed coefficients differ by up to 0.2.
      ["printed", `table 6, ${age} years`, four("man", sum, age), printed, 0.2] as const,
      ["worked", `coefficients, ${age} years`, four("man", sum, age), worked, 0.005] as const,
    ]),
  );
}
published("durninWomersley1974", "% fat of men of 17 to 29, printed as one column, restated", [
  ["worked", "20 mm, 19 years", four("man", 20, 19), 8.32, 0.005],
  ["worked", "20 mm, 20 years", four("man", 20, 20), 7.96, 0.005],
  ["printed", "20 mm, mean of both", () => (four("man", 20, 19)() + four("man", 20, 20)()) / 2, 8.1, 0.3],
  ["worked", "30 mm, 19 years", four("man", 30, 19), 13.07, 0.005],
  ["worked", "30 mm, 20 years", four("man", 30, 20), 12.73, 0.005],
  ["worked", "40 mm, 19 years", four("man", 40, 19), 16.51, 0.005],
  ["worked", "40 mm, 20 years", four("man", 40, 20), 16.17, 0.005],
  ["worked", "50 mm, 19 years", four("man", 50, 19), 19.21, 0.005],
  ["worked", "50 mm, 20 years", four("man", 50, 20), 18.87, 0.005],
  ["worked", "women, 50 mm, 25 years: density", () => densityFromFourFolds("woman", 50, 25), 1.038084, 5e-7],
  ["worked", "women, 50 mm, 25 years: Siri", four("woman", 50, 25), 26.84, 0.005],
]);
published("peterson2003", "% fat that folds read low in women, against the reference", [
  [
    "printed",
    "seven folds: 26.2 for 32.8",
    () => FOLD_BIAS.woman.reference - FOLD_BIAS.woman["seven folds"],
    6.6,
    0.05,
  ],
]);

test("the copy of the four-fold coefficients is complete: sums of c 11.5251 and of m 0.6569, ages of men and women", () => {
  const rows = [...FOUR_FOLDS.man, ...FOUR_FOLDS.woman];
  expect(rows.reduce((sum, { c }) => sum + c, 0)).toBeCloseTo(11.5251, 9);
  expect(rows.reduce((sum, { m }) => sum + m, 0)).toBeCloseTo(0.6569, 9);
  expect(FOUR_FOLDS.man.map(({ to }) => to)).toEqual([19, 29, 39, 49, 72]);
  expect(FOUR_FOLDS.woman.map(({ to }) => to)).toEqual([19, 29, 39, 49, 68]);
});

test("a birthday changes the age group and nothing before it does", () => {
  expect(densityFromFourFolds("man", 40, 29.99)).toBe(densityFromFourFolds("man", 40, 29));
  expect(densityFromFourFolds("man", 40, 30)).not.toBe(densityFromFourFolds("man", 40, 29));
});

test("no error of density was printed for three folds of women", () => {
  expect(fatError("woman", "three folds", 1.04)).toBeUndefined();
});

test("takes the ends of its ranges and refuses under 18, over its ages and sums beyond", () => {
  for (const [sex, age] of [
    ["man", 18],
    ["man", 61],
    ["woman", 18],
    ["woman", 55],
  ] as const) {
    expect(densityFromFolds(sex, "three folds", 10, age)).toBeGreaterThan(1.05);
    expect(densityFromFolds(sex, "seven folds", 350, age)).toBeGreaterThan(0.99);
    expect(densityFromFolds(sex, "three folds", 200, age)).toBeLessThan(1.05);
  }
  const beyond: readonly (() => unknown)[] = [
    () => densityFromFolds("man", "three folds", 45, 17.9),
    () => densityFromFolds("man", "three folds", 45, 61.1),
    () => densityFromFolds("woman", "three folds", 45, 55.1),
    () => densityFromFolds("man", "three folds", 9, 30),
    () => densityFromFolds("man", "three folds", 201, 30),
    () => densityFromFolds("man", "seven folds", 351, 30),
    () => densityFromFourFolds("man", 40, 17.9),
    () => densityFromFourFolds("man", 40, 72.1),
    () => densityFromFourFolds("woman", 40, 68.1),
    () => densityFromFourFolds("man", 9, 30),
    () => densityFromFourFolds("man", 251, 30),
    () => fatFromDensity("siri", 0.94),
    () => fatFromDensity("siri", 1.091),
    () => fatError("man", "three folds", 1.2),
    () => fatError("man", "three folds", Number.NaN),
  ];
  for (const call of beyond) expect(call).toThrow(RangeError);
  expect(
    [densityFromFourFolds("man", 10, 72), densityFromFourFolds("woman", 250, 68)].every((value) => value > 0.97),
  ).toBe(true);
  expect([fatFromDensity("siri", 1.09), fatFromDensity("siri", 0.95)].map((value) => value.toFixed(1))).toEqual([
    "4.1",
    "71.1",
  ]);
});

published("jacksonPollock1978", "men measured", [["printed", "18 to 61 years", () => SKINFOLDS.man.people, 403, 0]]);
published("jacksonPollockWard1980", "women measured", [
  ["printed", "18 to 55 years", () => SKINFOLDS.woman.people, 331, 0],
]);
published("peterson2003", "mean % fat, folds and reference", [
  ["printed", "men, reference", () => FOLD_BIAS.man.reference, 22.8, 0],
  ["printed", "men, four folds", () => FOLD_BIAS.man["four folds"], 20, 0],
  ["printed", "women, reference", () => FOLD_BIAS.woman.reference, 32.8, 0],
  ["printed", "women, four folds", () => FOLD_BIAS.woman["four folds"], 31, 0],
]);
