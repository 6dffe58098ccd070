import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { LEAN_ROW_SHARES, leanRowShare } from "./lean-row-shares.ts";

published("melroseDawes2015", "70 kg, kg on the straps", [
  ["worked", "45° from upright", () => 70 * (leanRowShare(45) ?? 0), 37.02, 0.005],
  ["worked", "60° from upright", () => 70 * (leanRowShare(60) ?? 0), 47.66, 0.005],
]);

test("the copy is complete: 4 rows, shares sum to 2.3778, deviations to 0.0613", () => {
  expect(LEAN_ROW_SHARES.rows.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(2.3778, 9);
  expect(LEAN_ROW_SHARES.rows.reduce((sum, { sd }) => sum + sd, 0)).toBeCloseTo(0.0613, 9);
});

test("up to 45° the share is about 0.75 of the sine of the lean", () => {
  const ratio = (degrees: number) => (leanRowShare(degrees) ?? 0) / Math.sin((degrees * Math.PI) / 180);
  expect([ratio(30), ratio(45), ratio(60), ratio(75)].map((value) => value.toFixed(3))).toEqual([
    "0.749",
    "0.748",
    "0.786",
    "0.822",
  ]);
});

test("a lean that nobody measured has no share", () => {
  for (const degrees of [0, 44, 90, Number.NaN]) expect(leanRowShare(degrees)).toBeUndefined();
});
