import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { percentFor } from "./reps-at-percent.ts";
import { REPS_AT_PERCENT_CONTINUUM } from "./reps-at-percent-continuum.ts";

const { rows } = REPS_AT_PERCENT_CONTINUUM;
const percentOf = (reps: number) =>
  rows.find((row) => reps >= row.reps.from && reps <= row.reps.to)?.percent ?? Number.NaN;

published("acsmContinuum", "1RM of 9 × 50 lb, restated table; the page itself prints 90", [
  ["worked", "50 / 0.80", () => (100 * 50) / percentOf(9), 62.5, 0.005],
]);

test("the copy is complete: 8 rows, shares sum to 620, every repetition from 2 to 20 once", () => {
  expect(rows.length).toBe(8);
  expect(rows.reduce((sum, { percent }) => sum + percent, 0)).toBe(620);
  expect(rows.flatMap(({ reps }) => [reps.from, reps.to])).toEqual([
    2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 20,
  ]);
});

test("sources disagree: 12 repetitions are 70 % here and 67 % in the book", () => {
  expect([percentOf(12), percentFor(12)]).toEqual([70, 67]);
});
