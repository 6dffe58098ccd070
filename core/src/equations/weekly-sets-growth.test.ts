import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { growthOfMoreSets, mostSetsNext, volumeClass } from "./weekly-sets-growth.ts";

published("schoenfeld2017volume", "6 weekly sets more", [
  ["worked", "effect size", () => growthOfMoreSets(6).effect, 0.138, 0.0005],
  ["worked", "per cent", () => growthOfMoreSets(6).percent, 2.22, 0.005],
]);
published("iusca2021", "most weekly sets after a cycle, restated", [
  ["worked", "10, up 20 %", () => mostSetsNext(10), 12, 0],
  ["worked", "12, up 20 %, whole", () => mostSetsNext(12), 14, 0],
]);

test("bazValle2022, printed: under 12 low, 12 to 20 moderate, over 20 high", () => {
  expect([11, 12, 15, 20, 20.5, 22].map(volumeClass)).toEqual([
    "low",
    "moderate",
    "moderate",
    "moderate",
    "high",
    "high",
  ]);
});

test("refuses what is negative, unknown or beyond the line", () => {
  for (const sets of [-1, Number.NaN]) {
    expect(() => volumeClass(sets)).toThrow(RangeError);
    expect(() => mostSetsNext(sets)).toThrow(RangeError);
    expect(() => growthOfMoreSets(sets)).toThrow(RangeError);
  }
  expect(() => growthOfMoreSets(20.5)).toThrow(/from 0 to 20/);
  expect(growthOfMoreSets(0)).toEqual({ effect: 0, percent: 0 });
});

test("twenty sets more are the last that the line is drawn to", () => {
  expect(growthOfMoreSets(20).percent).toBeCloseTo(7.4, 9);
});
