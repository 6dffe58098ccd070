import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { wathen, wathenTimes } from "./wathen.ts";

const of100 = (reps: number) => () => inKg(wathen(kg(100), reps));

published("wathen1994", "1RM of 100 kg, restated formula", [
  ["worked", "formula, 3 reps", of100(3), 108.98, 0.005],
  ["worked", "formula, 5 reps", of100(5), 116.58, 0.005],
  ["worked", "formula, 8 reps", of100(8), 127.67, 0.005],
  ["worked", "formula, 10 reps", of100(10), 134.75, 0.005],
  ["worked", "bare formula, 1 rep, which must not be shown", () => 100 * wathenTimes(1), 101.3, 0.005],
  ["worked", "bare formula, 12 reps, for the band only", () => 100 * wathenTimes(12), 141.5, 0.005],
]);
published("wathen1994", "1RM of 100 kg × 1, by definition", [["identity", "a single", of100(1), 100, 0]]);

test("one repetition more raises the estimate", () => {
  for (let reps = 1; reps < 10; reps++) expect(wathen(kg(60), reps + 1)).toBeGreaterThan(wathen(kg(60), reps));
});

test("refuses repetitions outside 1 to 10", () => {
  for (const reps of [0, 2.5, 11, Number.NaN]) expect(() => wathen(kg(60), reps)).toThrow(RangeError);
});
