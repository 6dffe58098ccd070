import { expect, test } from "vitest";
import { REPS_AT_PERCENT_CHART } from "./reps-at-percent-chart.ts";

const { source, rows } = REPS_AT_PERCENT_CHART;
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

test("the copy is complete: 11 rows, shares sum to 935, repetitions to 67", () => {
  expect(source).toBe("nscaChart");
  expect(rows).toHaveLength(11);
  expect(sum(rows.map((row) => row.percent))).toBe(935);
  expect(sum(rows.map((row) => row.reps))).toBe(67);
  expect(rows.at(-1)).toEqual({ reps: 12, percent: 70 });
});

test("repetitions rise and shares fall from row to row", () => {
  rows.slice(1).forEach((row, i) => {
    expect(row.reps).toBeGreaterThan(rows[i]!.reps);
    expect(row.percent).toBeLessThan(rows[i]!.percent);
  });
});
