import fc from "fast-check";
import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg, type Mass, massOf } from "../units.ts";
import { brzyckiTimes } from "./brzycki.ts";
import { epleyTimes } from "./epley.ts";
import { oconnerTimes } from "./oconner.ts";
import { ONE_REP_MAX_EQUATIONS, ONE_REP_MAX_TRIALS, oneRepMax } from "./one-rep-max.ts";

const end = (which: "low" | "high" | "typical", reps: number, load = 100) => {
  return () => inKg(oneRepMax(kg(load), reps)[which] ?? (Number.NaN as Mass));
};

// The seven formulas of the worked table, 100 kg: least, most and middle.
published("mayhew1992", "1RM of 100 kg by seven equations", [
  ["worked", "low, 3 reps: Brzycki", end("low", 3), 105.88, 0.005],
  ["worked", "high, 3 reps: Mayhew", end("high", 3), 113.99, 0.005],
  ["worked", "middle, 3 reps: Wathen", end("typical", 3), 108.98, 0.005],
  ["worked", "low, 5 reps: Brzycki and O'Conner", end("low", 5), 112.5, 0.005],
  ["worked", "high, 5 reps: Mayhew", end("high", 5), 119.01, 0.005],
  ["worked", "middle, 5 reps: Wathen", end("typical", 5), 116.58, 0.005],
  ["worked", "low, 8 reps: O'Conner", end("low", 8), 120, 0.005],
  ["worked", "high, 8 reps: Wathen", end("high", 8), 127.67, 0.005],
  ["worked", "middle, 8 reps: Lander", end("typical", 8), 125.11, 0.005],
  ["worked", "low, 10 reps: O'Conner", end("low", 10), 125, 0.005],
  ["worked", "high, 10 reps: Wathen", end("high", 10), 134.75, 0.005],
  ["worked", "middle, 10 reps: Epley and Brzycki", end("typical", 10), 133.33, 0.005],
  ["worked", "low, 12 reps: Lombardi", end("low", 12), 128.21, 0.005],
  ["worked", "high, 12 reps: Lander", end("high", 12), 144.41, 0.005],
]);
published("oconner1989", "the same as Brzycki at 5 reps: times the load", [
  ["identity", "1.125", () => oconnerTimes(5) - brzyckiTimes(5), 0, 1e-12],
]);
const loadFor = (name: string, reps: number) => () =>
  100 / (ONE_REP_MAX_EQUATIONS.find((each) => each.name === name)?.times(reps) ?? Number.NaN);
published("wathen1994", "load for reps at a 1RM of 100", [
  ["worked", "Epley, 5", loadFor("epley", 5), 85.71, 0.005],
  ["worked", "Brzycki, 5", loadFor("brzycki", 5), 88.89, 0.005],
  ["worked", "Mayhew, 5", loadFor("mayhew", 5), 84.03, 0.005],
  ["worked", "Wathen, 5", loadFor("wathen", 5), 85.78, 0.005],
  ["worked", "Epley, 10", loadFor("epley", 10), 75, 0.005],
  ["worked", "Brzycki, 10", loadFor("brzycki", 10), 75, 0.005],
  ["worked", "Mayhew, 10", loadFor("mayhew", 10), 76.37, 0.005],
  ["worked", "Wathen, 10", loadFor("wathen", 10), 74.21, 0.005],
]);
// A set of 5 that left 2 is a set of 7 to failure.
published("zourdos2016", "1RM of 100 kg × 5 with 2 in reserve", [
  ["worked", "Epley of 7", () => 100 * epleyTimes(7), 123.3, 0.05],
  ["worked", "Brzycki of 7", () => 100 * brzyckiTimes(7), 120, 0.05],
]);

test("above 10 repetitions there is a band and no single figure, and above 12 nothing", () => {
  for (const reps of [11, 12]) expect(Object.keys(oneRepMax(kg(100), reps)).sort()).toEqual(["high", "low"]);
  for (const reps of [13, 37]) expect(() => oneRepMax(kg(100), reps)).toThrow(/from 1 to 12/);
});

test("all seven name their source", () => {
  expect(ONE_REP_MAX_EQUATIONS.map(({ name, source }) => source.startsWith(name))).toEqual(Array(7).fill(true));
});

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
        expect(band.low <= band.typical! && band.typical! <= band.high).toBe(true);
        expect(more.low > band.low && more.typical! > band.typical! && more.high > band.high).toBe(true);
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

test("refuses repetitions outside 1 to 12", () => {
  for (const reps of [0, 13, 4.5, Number.NaN]) expect(() => oneRepMax(kg(60), reps)).toThrow(RangeError);
});

published("hutchinsGearhart2010", "men tried", [
  ["printed", "bench press", () => ONE_REP_MAX_TRIALS[1]!.people, 27, 0],
  ["printed", "curl", () => ONE_REP_MAX_TRIALS[2]!.people, 27, 0],
]);
published("mayhew1995", "men tried", [["printed", "bench press", () => ONE_REP_MAX_TRIALS[0]!.people, 220, 0]]);
