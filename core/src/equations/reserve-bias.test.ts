import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { RESERVE_BIAS, reserveLeft } from "./reserve-bias.ts";

published("halperin2022", "added to a stated reserve for a mean-corrected one", [
  ["printed", "mean", () => reserveLeft(2, 6).mean - 2, 0.95, 0.005],
  ["printed", "low end of 95 %", () => reserveLeft(2, 6).low - 2, 0.17, 0.005],
  ["printed", "high end of 95 %", () => reserveLeft(2, 6).high - 2, 1.73, 0.005],
  ["printed", "people", () => RESERVE_BIAS.people ?? 0, 414, 0],
]);

test("takes a whole set of 12 and refuses what is longer, negative or unknown", () => {
  expect(reserveLeft(0, 12).mean).toBe(0.95);
  expect(reserveLeft(12, 0).low).toBeCloseTo(12.17, 12);
  for (const [stated, done] of [
    [3, 10],
    [-1, 5],
    [2, -1],
    [Number.NaN, 5],
    [2, Number.NaN],
  ] as const) {
    expect(() => reserveLeft(stated, done)).toThrow(RangeError);
  }
});
