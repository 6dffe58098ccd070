import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { mayhew, mayhewTimes } from "./mayhew.ts";

const of100 = (reps: number) => () => inKg(mayhew(kg(100), reps));

published("mayhew1992", "1RM of 100 kg, restated formula", [
  ["worked", "formula, 3 reps", of100(3), 113.99, 0.005],
  ["worked", "formula, 5 reps", of100(5), 119.01, 0.005],
  ["worked", "formula, 8 reps", of100(8), 126.29, 0.005],
  ["worked", "formula, 10 reps", of100(10), 130.93, 0.005],
  ["worked", "bare formula, 1 rep, which must not be shown", () => 100 * mayhewTimes(1), 108.86, 0.005],
  ["worked", "bare formula, 12 reps, for the band only", () => 100 * mayhewTimes(12), 135.4, 0.005],
]);
published("mayhew1992", "1RM of 100 kg × 1, by definition", [["identity", "a single", of100(1), 100, 0]]);

test("one repetition more raises the estimate", () => {
  for (let reps = 1; reps < 10; reps++) expect(mayhew(kg(60), reps + 1)).toBeGreaterThan(mayhew(kg(60), reps));
});

test("refuses repetitions outside 1 to 10", () => {
  for (const reps of [0, 2.5, 11, Number.NaN]) expect(() => mayhew(kg(60), reps)).toThrow(RangeError);
});
