import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { ACTIVITY_FACTORS, dailyEnergy, energyAvailability, LIFESTYLE_BANDS, lossRate } from "./daily-energy.ts";

published("activityFactors", "kcal a day at 1780 at rest, restated factors", [
  ["worked", "sedentary", () => dailyEnergy(1780, ACTIVITY_FACTORS.sedentary), 2136, 0.5],
  ["worked", "lightly active", () => dailyEnergy(1780, ACTIVITY_FACTORS["lightly active"]), 2447.5, 0.05],
  ["worked", "moderately active", () => dailyEnergy(1780, ACTIVITY_FACTORS["moderately active"]), 2759, 0.5],
  ["worked", "very active", () => dailyEnergy(1780, ACTIVITY_FACTORS["very active"]), 3070.5, 0.05],
  ["worked", "extremely active", () => dailyEnergy(1780, ACTIVITY_FACTORS["extremely active"]), 3382, 0.5],
]);
published("faoWhoUnu2001", "worked examples of the report", [
  ["printed", "5.45 MJ at rest × 1.85 in MJ", () => (dailyEnergy(5450 / 4.184, 1.85) * 4.184) / 1000, 10.08, 0.005],
  ["printed", "that for each of 55 kg in kJ", () => (dailyEnergy(5450 / 4.184, 1.85) * 4.184) / 55, 183, 0.5],
  ["printed", "7.30 MJ at rest × 2.25 in MJ", () => (dailyEnergy(7300 / 4.184, 2.25) * 4.184) / 1000, 16.42, 0.0051],
  ["printed", "middle of the moderate band", () => (LIFESTYLE_BANDS[1]!.from + 2) / 2, 1.85, 0.0001],
]);
published("areta2021", "kcal for each kg of fat-free mass a day", [
  ["worked", "2600 eaten, 500 spent, 60 kg", () => energyAvailability(2600, 500, 60).kcalPerKg, 35, 0.05],
  ["worked", "1900 eaten, 500 spent, 50 kg", () => energyAvailability(1900, 500, 50).kcalPerKg, 28, 0.05],
  ["worked", "2300 eaten, 450 spent, 45 kg", () => energyAvailability(2300, 450, 45).kcalPerKg, 41.11, 0.005],
]);
published("acsm2001", "kg a week of somebody of 90 kg, restated pace", [
  ["worked", "1 %", () => lossRate(90, 88.2, 2).kgPerWeek, 0.9, 0.05],
  ["worked", "0.7 %", () => lossRate(90, 88.74, 2).percentPerWeek, 0.7, 0.0005],
]);

test("under 30 is low, 30 is not", () => {
  expect(energyAvailability(1900, 400, 50)).toEqual({ kcalPerKg: 30, low: false });
  expect(energyAvailability(1899, 400, 50).low).toBe(true);
  expect(energyAvailability(0, 100, 50).kcalPerKg).toBe(-2);
});

test("faster than 1 % or 1 kg a week is fast, and either alone is enough", () => {
  expect(lossRate(90, 88.2, 2).fast).toBe(false);
  expect(lossRate(90, 88.19, 2).fast).toBe(true);
  expect(lossRate(120, 118, 2).fast).toBe(false);
  expect(lossRate(120, 117.99, 2).fast).toBe(true);
  expect(lossRate(70, 72, 4)).toMatchObject({ kgPerWeek: -0.5, fast: false });
});

test("the bands of lifestyles meet and do not overlap", () => {
  expect(LIFESTYLE_BANDS.flatMap(({ from, to }) => [from, to])).toEqual([1.4, 1.69, 1.7, 1.99, 2, 2.4]);
  expect(LIFESTYLE_BANDS.filter(({ read }) => read === "primary").length).toBe(1);
});

test("takes the ends of its ranges and refuses what lies beyond", () => {
  expect([dailyEnergy(700, 1.2), dailyEnergy(4000, 2.4)]).toEqual([840, 9600]);
  expect(energyAvailability(10_000, 6000, 150).kcalPerKg).toBeCloseTo(26.67, 2);
  expect(lossRate(300, 30, 104).fast).toBe(true);
  const beyond: readonly (() => unknown)[] = [
    () => dailyEnergy(699, 1.5),
    () => dailyEnergy(4001, 1.5),
    () => dailyEnergy(1500, 1.19),
    () => dailyEnergy(1500, 2.41),
    () => energyAvailability(-1, 0, 50),
    () => energyAvailability(10_001, 0, 50),
    () => energyAvailability(2000, -1, 50),
    () => energyAvailability(2000, 6001, 50),
    () => energyAvailability(2000, 500, 24),
    () => energyAvailability(2000, 500, 151),
    () => lossRate(29, 60, 4),
    () => lossRate(301, 60, 4),
    () => lossRate(70, 29, 4),
    () => lossRate(70, 301, 4),
    () => lossRate(70, 69, 0),
    () => lossRate(70, 69, 105),
    () => dailyEnergy(Number.NaN, 1.5),
  ];
  for (const call of beyond) expect(call).toThrow(RangeError);
});

test("a day is the shortest time in which a loss has a pace", () => {
  expect(lossRate(70, 69.9, 1 / 7).kgPerWeek).toBeCloseTo(0.7, 9);
  expect(() => lossRate(70, 69.9, 0.14)).toThrow(/weeks/);
  expect(() => lossRate(30, 30, 1)).not.toThrow();
});
