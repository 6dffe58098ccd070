import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { heartRateMax } from "./heart-rate-max.ts";
import { oxygenTarget, pulseReserve, pulseTarget } from "./pulse-target.ts";

const byAge = (bpm: number) => ({ bpm, measured: false });
const target = (max: number, rest: number, share: number) => () => pulseTarget(byAge(max), rest, share, false).bpm;
const fox55 = heartRateMax("fox", 55);

published("karvonen1957", "heart rate at a share of the reserve, restated", [
  ["printed", "55 y by 220 − age, rest 62, 60 %: printed as 124", target(fox55, 62, 0.6), 124, 0.5],
  ["worked", "the same, not rounded", target(fox55, 62, 0.6), 123.8, 0.05],
  ["worked", "the same at 70 %", target(fox55, 62, 0.7), 134.1, 0.05],
  ["worked", "40 y, rest 60, highest 180, 30 %", target(180, 60, 0.3), 96, 0.5],
  ["worked", "40 %", target(180, 60, 0.4), 108, 0.5],
  ["worked", "60 %", target(180, 60, 0.6), 132, 0.5],
  ["worked", "90 %", target(180, 60, 0.9), 168, 0.5],
  ["worked", "turned round: 130 beats in per cent", () => 100 * pulseReserve(byAge(180), 60, 130), 58.3, 0.05],
]);
published("garber2011", "oxygen uptake at 60 % of the reserve, highest 42 mL/kg/min", [
  ["worked", "0.6 × 38.5 + 3.5", () => oxygenTarget(42, 0.6), 26.6, 0.05],
]);

test("an equation of age leaves a band, a measured highest rate none", () => {
  expect(pulseTarget(byAge(180), 60, 0.6, false)).toEqual({ bpm: 132, low: 126, high: 138 });
  expect(pulseTarget({ bpm: 180, measured: true }, 60, 0.6, false)).toEqual({ bpm: 132, low: 132, high: 132 });
});

test("off for a medicine that slows the heart, unless the highest rate was measured on it", () => {
  expect(() => pulseTarget(byAge(165), 60, 0.5, true)).toThrow(/no medicine may slow the heart/);
  expect(pulseTarget({ bpm: 120, measured: true }, 60, 0.5, true).bpm).toBe(90);
});

test("takes the ends of its ranges and refuses what lies beyond, and a rest at or over the highest", () => {
  expect(target(220, 30, 1)()).toBe(220);
  expect(target(101, 100, 0)()).toBe(100);
  for (const [max, rest, share] of [
    [221, 60, 0.5],
    [99, 60, 0.5],
    [180, 29, 0.5],
    [180, 101, 0.5],
    [100, 100, 0.5],
    [180, 60, 1.01],
    [180, 60, -0.01],
    [Number.NaN, 60, 0.5],
    [180, Number.NaN, 0.5],
    [180, 60, Number.NaN],
  ] as const) {
    expect(target(max, rest, share)).toThrow(RangeError);
  }
  for (const [max, rest, bpm] of [
    [221, 60, 100],
    [180, 101, 150],
    [180, 60, 59],
    [180, 60, 181],
    [180, 60, Number.NaN],
  ] as const) {
    expect(() => pulseReserve(byAge(max), rest, bpm)).toThrow(RangeError);
  }
  expect([pulseReserve(byAge(180), 60, 60), pulseReserve(byAge(180), 60, 180)]).toEqual([0, 1]);
  for (const [max, share] of [
    [9, 0.5],
    [91, 0.5],
    [42, 1.1],
    [Number.NaN, 0.5],
  ] as const) {
    expect(() => oxygenTarget(max, share)).toThrow(RangeError);
  }
  expect([oxygenTarget(10, 0), oxygenTarget(90, 1)]).toEqual([3.5, 90]);
});

test("takes the ends of a share turned round", () => {
  expect(pulseReserve(byAge(100), 99, 99)).toBe(0);
  expect(pulseReserve(byAge(220), 30, 220)).toBe(1);
  expect(() => pulseReserve(byAge(99), 30, 60)).toThrow(/highest/);
  expect(() => pulseReserve(byAge(100), 100, 100)).toThrow(/resting/);
  expect(() => pulseReserve(byAge(180), 29, 60)).toThrow(/resting/);
});
