import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { oconner, oconnerTimes } from "./oconner.ts";

const of100 = (reps: number) => () => inKg(oconner(kg(100), reps));

published("oconner1989", "1RM of 100 kg, restated formula", [
  ["worked", "formula, 3 reps", of100(3), 107.5, 0.005],
  ["worked", "formula, 5 reps", of100(5), 112.5, 0.005],
  ["worked", "formula, 8 reps", of100(8), 120.0, 0.005],
  ["worked", "formula, 10 reps", of100(10), 125.0, 0.005],
  ["worked", "formula, 80 kg × 8", () => inKg(oconner(kg(80), 8)), 96, 0.005],
  ["worked", "bare formula, 1 rep, which must not be shown", () => 100 * oconnerTimes(1), 102.5, 0.005],
  ["worked", "bare formula, 12 reps, for the band only", () => 100 * oconnerTimes(12), 130.0, 0.005],
]);
published("oconner1989", "1RM of 100 kg × 1, by definition", [["identity", "a single", of100(1), 100, 0]]);

test("one repetition more raises the estimate", () => {
  for (let reps = 1; reps < 10; reps++) expect(oconner(kg(60), reps + 1)).toBeGreaterThan(oconner(kg(60), reps));
});

test("refuses repetitions outside 1 to 10", () => {
  for (const reps of [0, 2.5, 11, Number.NaN]) expect(() => oconner(kg(60), reps)).toThrow(RangeError);
});
