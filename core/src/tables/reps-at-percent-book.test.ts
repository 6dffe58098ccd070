import { expect, test } from "vitest";
import { REPS_AT_PERCENT_BOOK } from "./reps-at-percent-book.ts";

const { source, rows } = REPS_AT_PERCENT_BOOK;
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

test("the copy is complete: 13 rows, shares sum to 1067, repetitions to 93", () => {
  expect(source).toBe("nscaEssentialsTable");
  expect(rows).toHaveLength(13);
  expect(sum(rows.map((row) => row.percent))).toBe(1067);
  expect(sum(rows.map((row) => row.reps))).toBe(93);
  expect(rows.at(-1)).toEqual({ reps: 15, percent: 65 });
});

test("repetitions rise and shares fall from row to row", () => {
  rows.slice(1).forEach((row, i) => {
    expect(row.reps).toBeGreaterThan(rows[i]!.reps);
    expect(row.percent).toBeLessThan(rows[i]!.percent);
  });
});
