import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { PROTEIN_PLATEAU, PROTEIN_RANGES, proteinGrams } from "./protein-ranges.ts";

published("morton2018", "grams a day for 80 kg at the plateau", [
  ["worked", "1.62 g/kg", () => proteinGrams(80, PROTEIN_PLATEAU), 129.6, 0.05],
]);
const range = (row: number, end: "from" | "to") => () => proteinGrams(80, PROTEIN_RANGES[row]![end]);
published("acsm2016", "grams a day for 80 kg, restated", [
  ["worked", "1.2 g/kg", range(0, "from"), 96, 0.5],
  ["worked", "2.0 g/kg", range(0, "to"), 160, 0.5],
]);
published("jager2017", "grams a day for 80 kg", [
  ["worked", "1.4 g/kg", range(1, "from"), 112, 0.5],
  ["worked", "1.6 g/kg", () => proteinGrams(80, 1.6), 128, 0.5],
]);
published("morton2018", "grams a day for 80 kg at the upper end of the interval", [
  ["worked", "2.2 g/kg", range(3, "to"), 176, 0.5],
]);

test("the copy is complete: 5 rows, ends sum to 7.13 and 11", () => {
  expect(PROTEIN_RANGES.reduce((sum, { from }) => sum + from, 0)).toBeCloseTo(7.13, 9);
  expect(PROTEIN_RANGES.reduce((sum, { to }) => sum + to, 0)).toBeCloseTo(11, 9);
  for (const { from, to } of PROTEIN_RANGES) expect(from).toBeLessThan(to);
});

test("takes the ends and refuses beyond", () => {
  expect([proteinGrams(30, 0), proteinGrams(300, 3.1)]).toEqual([0, 930]);
  for (const [kg, per] of [
    [29, 1],
    [301, 1],
    [80, -0.1],
    [80, 3.2],
    [Number.NaN, 1],
    [80, Number.NaN],
  ] as const) {
    expect(() => proteinGrams(kg, per)).toThrow(RangeError);
  }
});
