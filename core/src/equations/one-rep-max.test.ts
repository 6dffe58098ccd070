import fc from "fast-check";
import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg, massOf } from "../units.ts";
import { ONE_REP_MAX_TRIALS, oneRepMax } from "./one-rep-max.ts";

const end = (which: "low" | "high" | "typical", load: number, reps: number) => () =>
  inKg(oneRepMax(kg(load), reps)[which]);

published("brzycki1993", "low end of 100 kg × 5", [["worked", "36/(37 − reps)", end("low", 100, 5), 112.5, 0.005]]);
published("epley1985", "high end of 100 kg × 5", [["worked", "formula", end("high", 100, 5), 116.67, 0.005]]);
published("ours", "typical of 100 kg × 5, the mean of both", [
  ["worked", "mean", end("typical", 100, 5), 114.58, 0.01],
]);

test("a single is the maximum itself", () => {
  expect(oneRepMax(kg(100), 1)).toEqual({ low: kg(100), high: kg(100), typical: kg(100) });
});

test("low, typical and high stand in this order and a heavier load raises all three", () => {
  const load = fc.integer({ min: 1, max: 400_000 });
  fc.assert(
    fc.property(
      load,
      fc.integer({ min: 1, max: 10 }),
      fc.constantFrom("kg" as const, "lb" as const),
      (grams, reps, unit) => {
        const band = oneRepMax(massOf({ value: grams / 1000, unit }), reps);
        const more = oneRepMax(massOf({ value: (grams + 500) / 1000, unit }), reps);
        expect(band.low <= band.typical && band.typical <= band.high).toBe(true);
        expect(more.low > band.low && more.typical > band.typical && more.high > band.high).toBe(true);
      },
    ),
  );
});

test("the errors of the trials are as printed: up to 6.9 kg, correlations 0.70 to 0.98", () => {
  expect(ONE_REP_MAX_TRIALS).toHaveLength(3);
  expect(Math.max(...ONE_REP_MAX_TRIALS.map((trial) => trial.errorKg?.to ?? 0))).toBe(6.9);
  expect(Math.min(...ONE_REP_MAX_TRIALS.map((trial) => trial.correlation.from))).toBe(0.7);
  expect(Math.max(...ONE_REP_MAX_TRIALS.map((trial) => trial.correlation.to))).toBe(0.98);
});

test("refuses repetitions outside 1 to 10", () => {
  for (const reps of [0, 11, 4.5, Number.NaN]) expect(() => oneRepMax(kg(60), reps)).toThrow(RangeError);
});
