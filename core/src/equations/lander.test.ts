import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { lander, landerTimes } from "./lander.ts";

const of100 = (reps: number) => () => inKg(lander(kg(100), reps));

published("lander1985", "1RM of 100 kg, restated formula", [
  ["worked", "formula, 3 reps", of100(3), 107.2, 0.005],
  ["worked", "formula, 5 reps", of100(5), 113.71, 0.005],
  ["worked", "formula, 8 reps", of100(8), 125.11, 0.005],
  ["worked", "formula, 10 reps", of100(10), 134.07, 0.005],
  ["worked", "bare formula, 1 rep, which must not be shown", () => 100 * landerTimes(1), 101.39, 0.005],
  ["worked", "bare formula, 12 reps, for the band only", () => 100 * landerTimes(12), 144.41, 0.005],
]);
published("lander1985", "1RM of 100 kg × 1, by definition", [["identity", "a single", of100(1), 100, 0]]);

test("one repetition more raises the estimate", () => {
  for (let reps = 1; reps < 10; reps++) expect(lander(kg(60), reps + 1)).toBeGreaterThan(lander(kg(60), reps));
});

test("refuses repetitions outside 1 to 10", () => {
  for (const reps of [0, 2.5, 11, Number.NaN]) expect(() => lander(kg(60), reps)).toThrow(RangeError);
});
