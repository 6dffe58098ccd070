import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { daysToGood, FITNESS_FATIGUE, type FitnessFatigue, performanceOn } from "./fitness-fatigue.ts";

const { "hammer thrower": thrower, cyclist, usual } = FITNESS_FATIGUE;
const after = (model: FitnessFatigue, dose: number, days: number, on: number) => () =>
  performanceOn(model, Array<number>(days).fill(dose), on);

published("clarkeSkiba2013", "watts with 100 on days 1 to 28, restated constants", [
  ["worked", "day 2", after(cyclist, 100, 28, 2), 257.6, 0.05],
  ["worked", "day 29", after(cyclist, 100, 28, 29), 260.2, 0.05],
  ["worked", "day 36", after(cyclist, 100, 28, 36), 297.6, 0.05],
  // The reference rounds 317.849 up to 317.9.
  ["worked", "day 43", after(cyclist, 100, 28, 43), 317.85, 0.005],
  ["worked", "day 50", after(cyclist, 100, 28, 50), 327, 0.05],
  ["worked", "one dose, next day", () => after(cyclist, 100, 1, 2)() - 262, -4.424, 0.0005],
  ["worked", "one dose, 12 days on", () => after(cyclist, 100, 1, 13)() - 262, -0.091, 0.0005],
  ["worked", "one dose, 13 days on", () => after(cyclist, 100, 1, 14)() - 262, 0.16, 0.0005],
  ["worked", "days until a dose turns good", () => daysToGood(cyclist).good, 12.35, 0.005],
  ["worked", "days until it is best", () => daysToGood(cyclist).best, 39.52, 0.005],
  ["worked", "half-life of the gain, days", () => cyclist.gainDays * Math.LN2, 24.95, 0.005],
  ["worked", "half-life of the loss, days", () => cyclist.lossDays * Math.LN2, 14.56, 0.005],
]);
published("busso1994", "performance with 30 on days 1 to 42, restated constants", [
  ["worked", "day 2", after(thrower, 30, 42, 2), 490.6, 0.05],
  ["worked", "day 43", after(thrower, 30, 42, 43), 461.6, 0.05],
  ["worked", "day 50", after(thrower, 30, 42, 50), 495.2, 0.05],
  ["worked", "day 57", after(thrower, 30, 42, 57), 512.7, 0.05],
  ["worked", "day 64", after(thrower, 30, 42, 64), 521, 0.05],
  ["worked", "days until a dose turns good", () => daysToGood(thrower).good, 22.4, 0.005],
  ["worked", "days until it is best", () => daysToGood(thrower).best, 47.78, 0.005],
  ["worked", "half-life of the gain, days", () => thrower.gainDays * Math.LN2, 41.59, 0.005],
  ["worked", "half-life of the loss, days", () => thrower.lossDays * Math.LN2, 9.011, 0.0005],
]);
published("morton1990", "usual constants, from memory, 1 on days 1 to 28", [
  ["worked", "day 29", after(usual, 1, 28, 29), -3.909, 0.0005],
  ["worked", "day 43", after(usual, 1, 28, 43), 5.459, 0.0005],
  ["worked", "days until a dose turns good", () => daysToGood(usual).good, 15.6, 0.005],
  ["worked", "days until it is best", () => daysToGood(usual).best, 40.31, 0.005],
]);

test("a dose counts from the next day on", () => {
  expect(performanceOn(cyclist, [100], 1)).toBe(262);
  expect(performanceOn(cyclist, [100, 100], 2)).toBe(performanceOn(cyclist, [100], 2));
});

test("a net effect is nothing at the day it turns good, and largest at its best", () => {
  const net = (model: FitnessFatigue, days: number) => performanceOn(model, [1], 1 + days) - model.start;
  for (const model of [thrower, cyclist, usual]) {
    const { good, best } = daysToGood(model);
    expect(net(model, good)).toBeCloseTo(0, 9);
    expect(net(model, best)).toBeGreaterThan(Math.max(net(model, best - 1), net(model, best + 1)));
  }
});

test("refuses days that are not there and a loss that never passes", () => {
  for (const day of [0, 2001, Number.NaN]) expect(() => performanceOn(usual, [1], day)).toThrow(RangeError);
  for (const wrong of [{ loss: 1 }, { gain: 0 }, { lossDays: 45 }, { lossDays: 0 }]) {
    expect(() => daysToGood({ ...usual, ...wrong })).toThrow(RangeError);
  }
});

test("half a day on, the doses of the day before count and those of the day itself do not", () => {
  expect(performanceOn(cyclist, [100, 100], 2.5)).not.toBe(performanceOn(cyclist, [100], 2.5));
  expect(performanceOn(cyclist, [100, 100], 1.5)).toBe(performanceOn(cyclist, [100], 1.5));
});
