import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import {
  KGM_PER_WATT,
  kcalPerMin,
  MPH_M_PER_MIN,
  metsOf,
  pedallingOxygen,
  runningOxygen,
  runningSpeed,
  steppingOxygen,
  walkingOxygen,
} from "./oxygen-cost.ts";

const mph = (speed: number) => speed * MPH_M_PER_MIN;

published("bushman2020", "mL/kg/min", [
  ["printed", "walk 3.5 mph, 10 %, slides", () => walkingOxygen(mph(3.5), 0.1), 29.76, 0.005],
  ["worked", "walk 3.0 mph, level", () => walkingOxygen(mph(3)), 11.54, 0.005],
  ["worked", "walk 3.0 mph, 5 %", () => walkingOxygen(mph(3), 0.05), 18.776, 0.0005],
  ["worked", "run 6.0 mph, level", () => runningOxygen(mph(6)), 35.66, 0.005],
  ["worked", "run 7.0 mph, 2 %", () => runningOxygen(mph(7), 0.02), 44.397, 0.0005],
  ["printed", "legs, 62 kg, 450 kg·m/min, slides print 20", () => pedallingOxygen("legs", 450, 62), 20, 0.5],
  ["worked", "the same, not rounded", () => pedallingOxygen("legs", 450, 62), 20.065, 0.0005],
  ["worked", "legs, 100 W, 70 kg", () => pedallingOxygen("legs", 100 * KGM_PER_WATT, 70), 22.429, 0.0005],
  ["worked", "legs, 612 kg·m/min, 70 kg", () => pedallingOxygen("legs", 612, 70), 22.737, 0.0005],
  ["worked", "arms, 300 kg·m/min, 70 kg", () => pedallingOxygen("arms", 300, 70), 16.357, 0.0005],
  ["printed", "step 12 in, 30 a minute, trade page", () => steppingOxygen(30, 0.3048), 31.4, 0.05],
  ["worked", "the same, not rounded", () => steppingOxygen(30, 0.3048), 31.391, 0.0005],
  ["printed", "step 15 in, 24 a minute, trade page", () => steppingOxygen(24, 0.381), 30.2, 0.05],
  ["worked", "the same, not rounded", () => steppingOxygen(24, 0.381), 30.191, 0.0005],
]);
published("bushman2020", "METs", [
  ["worked", "walk 3.5 mph, 10 %", () => metsOf(walkingOxygen(mph(3.5), 0.1)), 8.5, 0.05],
  ["worked", "run 6.0 mph", () => metsOf(runningOxygen(mph(6))), 10.19, 0.005],
]);
published("bushman2020", "running speed of 8 METs, course hand-out", [
  ["printed", "m/min", () => runningSpeed(8 * 3.5), 122.5, 0.05],
  ["printed", "mph", () => runningSpeed(8 * 3.5) / MPH_M_PER_MIN, 4.57, 0.005],
]);
published("latin2001", "stepping by the later constant 2.4, step 12 in, 30 a minute", [
  ["worked", "3.5 + 6 + 2.4 × 0.3048 × 30", () => steppingOxygen(30, 0.3048), 31.446, 0.1],
]);
published("acsmGetp10", "energy", [
  ["worked", "8 METs, 70 kg, kcal/min", () => kcalPerMin(8, 70), 9.8, 0.005],
  ["worked", "3.5 METs, 80 kg, 30 min, kcal", () => 30 * kcalPerMin(3.5, 80), 147, 0.5],
  ["worked", "6 METs, 75 kg, 45 min, kcal", () => 45 * kcalPerMin(6, 75), 354.4, 0.05],
]);
published("bushman2020", "60 kg at 7 METs, course hand-out: 420 kcal/h by 1 kcal/kg/h a MET", [
  // The hand-out rounds 1.05 kcal/kg/h to 1, so it stands 5 % under the formula.
  ["printed", "kcal/min", () => kcalPerMin(7, 60) / 1.05, 7, 0.005],
]);

test("takes the ends of its ranges", () => {
  expect([walkingOxygen(50), walkingOxygen(100, 0.25)]).toEqual([8.5, 58.5]);
  expect([runningOxygen(80), runningOxygen(400, 0.25)]).toEqual([19.5, 173.5]);
  expect([runningSpeed(19.5), runningSpeed(83.5)]).toEqual([80, 400]);
  expect([pedallingOxygen("legs", 300, 30), pedallingOxygen("arms", 750, 300)]).toEqual([25, 11]);
  expect(pedallingOxygen("legs", 1200, 100)).toBeCloseTo(28.6, 9);
  expect(pedallingOxygen("arms", 150, 100)).toBe(8);
  expect([steppingOxygen(12, 0.04), steppingOxygen(30, 0.4)].map((value) => value.toFixed(2))).toEqual([
    "7.05",
    "38.23",
  ]);
  expect([metsOf(0), kcalPerMin(0, 30), kcalPerMin(30, 300)]).toEqual([0, 0, 157.5]);
});

test("refuses what lies beyond them", () => {
  const beyond: readonly (() => number)[] = [
    () => walkingOxygen(49.9),
    () => walkingOxygen(100.1),
    () => walkingOxygen(80, -0.01),
    () => walkingOxygen(80, 0.26),
    () => runningOxygen(79.9),
    () => runningOxygen(400.1),
    () => runningOxygen(160, 0.26),
    () => runningSpeed(19.4),
    () => runningSpeed(83.6),
    () => pedallingOxygen("legs", 299, 70),
    () => pedallingOxygen("legs", 1201, 70),
    () => pedallingOxygen("arms", 149, 70),
    () => pedallingOxygen("arms", 751, 70),
    () => pedallingOxygen("legs", 600, 29),
    () => steppingOxygen(11.9, 0.2),
    () => steppingOxygen(30.1, 0.2),
    () => steppingOxygen(24, 0.39 + 0.02),
    () => steppingOxygen(24, 0.039),
    () => metsOf(-0.1),
    () => metsOf(100.1),
    () => kcalPerMin(30.1, 70),
    () => kcalPerMin(-0.1, 70),
    () => kcalPerMin(5, 301),
  ];
  for (const call of beyond) expect(call).toThrow(RangeError);
  for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => walkingOxygen(value)).toThrow(/m\/min/);
    expect(() => kcalPerMin(value, 70)).toThrow(/METs/);
  }
});
