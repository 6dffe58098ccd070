import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { lombardi, lombardiTimes } from "./lombardi.ts";

const of100 = (reps: number) => () => inKg(lombardi(kg(100), reps));

published("lombardi1989", "1RM of 100 kg, restated formula", [
  ["worked", "formula, 3 reps", of100(3), 111.61, 0.005],
  ["worked", "formula, 5 reps", of100(5), 117.46, 0.005],
  ["worked", "formula, 8 reps", of100(8), 123.11, 0.005],
  ["worked", "formula, 10 reps", of100(10), 125.89, 0.005],
  ["worked", "bare formula, 1 rep, which must not be shown", () => 100 * lombardiTimes(1), 100.0, 0.005],
  ["worked", "bare formula, 12 reps, for the band only", () => 100 * lombardiTimes(12), 128.21, 0.005],
]);
published("lombardi1989", "1RM of 100 kg × 1, by definition", [["identity", "a single", of100(1), 100, 0]]);

test("one repetition more raises the estimate", () => {
  for (let reps = 1; reps < 10; reps++) expect(lombardi(kg(60), reps + 1)).toBeGreaterThan(lombardi(kg(60), reps));
});

test("refuses repetitions outside 1 to 10", () => {
  for (const reps of [0, 2.5, 11, Number.NaN]) expect(() => lombardi(kg(60), reps)).toThrow(RangeError);
});
