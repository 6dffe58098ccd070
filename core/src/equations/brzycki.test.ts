import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { brzycki, brzyckiPercent, brzyckiTimes } from "./brzycki.ts";

const of100 = (reps: number) => () => inKg(brzycki(kg(100), reps));

published("brzycki1993", "1RM of 100 kg × 3", [["worked", "36/(37 − reps)", of100(3), 105.88, 0.005]]);
published("brzycki1993", "1RM of 100 kg × 5", [["worked", "36/(37 − reps)", of100(5), 112.5, 0.005]]);
published("brzycki1993", "1RM of 100 kg × 8", [["worked", "36/(37 − reps)", of100(8), 124.14, 0.005]]);
published("brzycki1993", "1RM of 100 kg × 10", [["worked", "36/(37 − reps)", of100(10), 133.33, 0.005]]);
published("brzycki1993", "1RM of 100 kg × 1", [["identity", "algebra", of100(1), 100, 0]]);
published("brzycki1993", "per cent of the 1RM at 9 reps", [
  ["worked", "decimal form, 102.78 − 2.78 × 9", () => brzyckiPercent(9), 77.76, 0.005],
]);
published("brzycki1993", "1RM of 100 kg from the decimal form, restated", [
  ["worked", "5 reps", () => 10_000 / brzyckiPercent(5), 112.51, 0.005],
  ["worked", "10 reps", () => 10_000 / brzyckiPercent(10), 133.37, 0.005],
]);
published("brzycki1993", "bare formula of 100 kg × 12, for the band only", [
  ["worked", "36/(37 − reps)", () => 100 * brzyckiTimes(12), 144, 0.005],
]);

test("refuses a share for repetitions outside 1 to 10", () => {
  for (const reps of [0, 2.5, 11, Number.NaN]) expect(() => brzyckiPercent(reps)).toThrow(RangeError);
});

test("stays within 0.1 % of the decimal form from 1 to 10 repetitions", () => {
  for (let reps = 1; reps <= 10; reps++) {
    const decimal = 100 / (1.0278 - 0.0278 * reps);
    expect(Math.abs(of100(reps)() / decimal - 1)).toBeLessThan(0.001);
  }
});

test("one repetition more raises the estimate", () => {
  for (let reps = 1; reps < 10; reps++) expect(brzycki(kg(60), reps + 1)).toBeGreaterThan(brzycki(kg(60), reps));
});

test("refuses repetitions outside 1 to 10", () => {
  for (const reps of [0, 2.5, 11, 37, Number.NaN]) expect(() => brzycki(kg(60), reps)).toThrow(RangeError);
});
