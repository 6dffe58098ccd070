import fc from "fast-check";
import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { percentFor, percentToAllow, repsAt, repsBracket } from "./reps-at-percent.ts";
import { REPS_AT_PERCENT_BOOK } from "./reps-at-percent-book.ts";
import { REPS_AT_PERCENT_CHART } from "./reps-at-percent-chart.ts";

const percent = (reps: number) => () => percentFor(reps) ?? Number.NaN;
const oneRm = (load: number, reps: number) => () => (load * 100) / (percentFor(reps) ?? Number.NaN);

published("nscaEssentialsTable", "per cent for 6 reps", [["printed", "row", percent(6), 85, 0]]);
published("nscaEssentialsTable", "per cent for 9 reps", [["printed", "row", percent(9), 77, 0]]);
published("nscaEssentialsTable", "per cent for 11 reps", [["printed", "row", percent(11), 70, 0]]);
published("nscaEssentialsTable", "per cent for 12 reps", [["printed", "row", percent(12), 67, 0]]);
published("nscaEssentialsTable", "per cent for 15 reps", [["printed", "row", percent(15), 65, 0]]);
published("nscaEssentialsTable", "1RM of 80 kg × 8", [["worked", "row", oneRm(80, 8), 100, 0.05]]);
published("nscaEssentialsTable", "1RM of 75 kg × 10", [["worked", "row", oneRm(75, 10), 100, 0.05]]);
published("nscaEssentialsTable", "1RM of 100 kg × 5", [["worked", "row", oneRm(100, 5), 114.9, 0.05]]);
published("nscaEssentialsTable", "1RM of a 6RM of 285 lb", [["printed", "exam page", oneRm(285, 6), 335, 0.5]]);
published("nscaChart", "per cent for 12 reps", [
  ["printed", "row", () => percentFor(12, REPS_AT_PERCENT_CHART) ?? Number.NaN, 70, 0],
]);
published("zourdos2016", "5 reps with 2 in reserve read as 7 reps: per cent", [
  ["worked", "5 + 2", percent(5 + 2), 83, 0],
]);

test("sources disagree: 70 % is 11 reps in the book and 12 in the chart, and the book is used", () => {
  expect(repsAt(70)).toBe(11);
  expect(repsAt(70, REPS_AT_PERCENT_BOOK)).toBe(11);
  expect(repsAt(70, REPS_AT_PERCENT_CHART)).toBe(12);
});

test("no row, no answer", () => {
  for (const reps of [0, 2.5, 13, 14, 16, Number.NaN]) expect(percentFor(reps)).toBeUndefined();
  for (const share of [0, 99, 82.5, 66, 64, Number.NaN]) expect(repsAt(share)).toBeUndefined();
});

test("the bracket is the rows around: one row when hit, two between, open below the last", () => {
  expect(repsBracket(85)).toEqual({ least: 6, most: 6 });
  expect(repsBracket(82)).toEqual({ least: 7, most: 8 });
  expect(repsBracket(66)).toEqual({ least: 12, most: 15 });
  expect(repsBracket(99.5)).toEqual({ least: 1, most: 2 });
  expect(repsBracket(40)).toEqual({ least: 15 });
  expect(repsBracket(68, REPS_AT_PERCENT_CHART)).toEqual({ least: 12 });
});

test("a share outside 0 to 100 is refused", () => {
  for (const share of [0, -1, 100.1, Number.NaN]) expect(() => repsBracket(share)).toThrow(RangeError);
});

test("a heavier share never leaves more repetitions", () => {
  const share = fc.integer({ min: 1, max: 1000 }).map((tenth) => tenth / 10);
  fc.assert(
    fc.property(share, share, (a, b) => {
      const [light, heavy] = [repsBracket(Math.min(a, b)), repsBracket(Math.max(a, b))];
      expect(heavy.least).toBeLessThanOrEqual(light.least);
      expect(heavy.most ?? 99).toBeLessThanOrEqual(light.most ?? 99);
      expect(light.least).toBeLessThanOrEqual(light.most ?? 99);
    }),
  );
});

test("the share that allows 13 reps is the row of 15; beyond the last row there is none", () => {
  expect([1, 5, 12, 13, 15, 16].map((reps) => percentToAllow(reps))).toEqual([100, 87, 67, 65, 65, undefined]);
  expect(() => percentToAllow(0)).toThrow(RangeError);
  expect(() => percentToAllow(Number.NaN)).toThrow(RangeError);
});
