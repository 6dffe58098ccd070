import { expect, test } from "vitest";
import { kg, type Mass } from "../units.ts";
import { MAX_REPS, refuseOutsideReps } from "./reps-to-failure.ts";

test("takes whole repetitions from 1 to 10", () => {
  expect(MAX_REPS).toBe(10);
  for (let reps = 1; reps <= 10; reps++) expect(() => refuseOutsideReps(kg(60), reps)).not.toThrow();
});

test("refuses no, part, too many and unknown repetitions", () => {
  for (const reps of [0, -1, 2.5, 11, 30, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => refuseOutsideReps(kg(60), reps)).toThrow(/whole number from 1 to 10/);
  }
});

test("refuses a load that is nothing or no number", () => {
  expect(() => refuseOutsideReps(kg(0), 5)).toThrow(RangeError);
  expect(() => refuseOutsideReps(Number.NaN as Mass, 5)).toThrow(RangeError);
});
