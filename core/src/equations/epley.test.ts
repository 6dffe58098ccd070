import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { brzycki } from "./brzycki.ts";
import { epley, epleyTimes } from "./epley.ts";

const of100 = (reps: number) => () => inKg(epley(kg(100), reps));

published("epley1985", "1RM of 100 kg × 3", [["worked", "formula", of100(3), 110, 0.005]]);
published("epley1985", "1RM of 100 kg × 5", [["worked", "formula", of100(5), 116.67, 0.005]]);
published("epley1985", "1RM of 100 kg × 8", [["worked", "formula", of100(8), 126.67, 0.005]]);
published("epley1985", "1RM of 100 kg × 10", [["worked", "formula", of100(10), 133.33, 0.005]]);
published("epley1985", "1RM of 100 kg × 1", [["identity", "by definition", of100(1), 100, 0]]);
published("epley1985", "the same as Brzycki at 10 reps: the difference", [
  ["identity", "algebra", () => Math.abs(epley(kg(100), 10) - brzycki(kg(100), 10)), 0, 1],
]);
published("epley1985", "load for 5 reps at a 1RM of 100 kg", [
  ["worked", "formula turned round", () => (100 * 100) / inKg(epley(kg(100), 5)), 85.71, 0.005],
]);

published("epley1985", "bare formula of 100 kg", [
  ["worked", "1 rep, which must not be shown", () => 100 * epleyTimes(1), 103.33, 0.005],
  ["worked", "12 reps, for the band only", () => 100 * epleyTimes(12), 140, 0.005],
]);

test("one repetition more raises the estimate", () => {
  for (let reps = 1; reps < 10; reps++) expect(epley(kg(60), reps + 1)).toBeGreaterThan(epley(kg(60), reps));
});

test("refuses repetitions outside 1 to 10", () => {
  for (const reps of [0, 2.5, 11, Number.NaN]) expect(() => epley(kg(60), reps)).toThrow(RangeError);
});
