import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import {
  type BodyFacts,
  RESTING_ENERGY,
  type RestingEnergyName,
  restingEnergy,
  restingEnergyOfLean,
} from "./resting-energy.ts";

const MAN: BodyFacts = { sex: "man", massKg: 80, heightCm: 180, ageY: 30 };
const WOMAN: BodyFacts = { sex: "woman", massKg: 65, heightCm: 165, ageY: 40 };

published("mifflin1990", "kcal a day at rest", [
  ["worked", "man 80 kg, 180 cm, 30 y", () => restingEnergy("mifflin", MAN), 1780, 0.5],
  ["worked", "woman 65 kg, 165 cm, 40 y", () => restingEnergy("mifflin", WOMAN), 1320.25, 0.005],
  [
    "printed",
    "woman 75 kg, 165.1 cm, 45 y, an example prints 1,396",
    () => restingEnergy("mifflin", { sex: "woman", massKg: 75, heightCm: 165.1, ageY: 45 }),
    1396,
    0.5,
  ],
  [
    "worked",
    "the same, not rounded",
    () => restingEnergy("mifflin", { sex: "woman", massKg: 75, heightCm: 165.1, ageY: 45 }),
    1395.875,
    0.0005,
  ],
]);
published("mifflinEvidence", "unrounded form 9.99, 6.25, 4.92: man 80 kg, 180 cm, 30 y", [
  ["worked", "within 0.1 % of the rounded form", () => restingEnergy("mifflin", MAN), 1781.6, 1.7],
]);
published("rozaShizgal1984", "kcal a day at rest, restated", [
  ["worked", "man 80 kg, 180 cm, 30 y", () => restingEnergy("roza", MAN), 1853.63, 0.005],
  ["worked", "woman 65 kg, 165 cm, 40 y", () => restingEnergy("roza", WOMAN), 1386.62, 0.005],
]);
published("harrisBenedict1919", "kcal a day at rest, restated", [
  ["worked", "man 80 kg, 180 cm, 30 y", () => restingEnergy("harris-benedict", MAN), 1864.54, 0.005],
  ["worked", "woman 65 kg, 165 cm, 40 y", () => restingEnergy("harris-benedict", WOMAN), 1394.88, 0.005],
]);
published("cunningham1980", "kcal a day at rest from fat-free mass, restated", [
  ["printed", "70 kg, page example", () => restingEnergyOfLean("1980", 70), 2040, 0],
  ["worked", "55 kg", () => restingEnergyOfLean("1980", 55), 1710, 0],
]);
published("cunningham1991", "kcal a day at rest from fat-free mass, from memory", [
  ["worked", "70 kg", () => restingEnergyOfLean("1991", 70), 1882, 0.5],
  ["worked", "55 kg", () => restingEnergyOfLean("1991", 55), 1558, 0.5],
]);

describe.each(Object.keys(RESTING_ENERGY) as RestingEnergyName[])("%s", (name) => {
  test("takes the ends of its ranges and refuses what lies beyond", () => {
    for (const ageY of [19, 78]) expect(restingEnergy(name, { ...MAN, ageY })).toBeGreaterThan(1000);
    for (const ageY of [18, 79, Number.NaN]) expect(() => restingEnergy(name, { ...WOMAN, ageY })).toThrow(/age/);
    for (const massKg of [29, 301, Number.NaN])
      expect(() => restingEnergy(name, { ...MAN, massKg })).toThrow(/body mass/);
    for (const heightCm of [1.8, 119, 231]) expect(() => restingEnergy(name, { ...MAN, heightCm })).toThrow(/height/);
  });

  test("more mass and height take more, more years less", () => {
    for (const facts of [MAN, WOMAN]) {
      const base = restingEnergy(name, facts);
      expect(restingEnergy(name, { ...facts, massKg: facts.massKg + 1 })).toBeGreaterThan(base);
      expect(restingEnergy(name, { ...facts, heightCm: facts.heightCm + 1 })).toBeGreaterThan(base);
      expect(restingEnergy(name, { ...facts, ageY: facts.ageY + 1 })).toBeLessThan(base);
    }
  });
});

test("a fat-free mass beyond 25 to 150 kg is refused", () => {
  expect(restingEnergyOfLean("1980", 25)).toBe(1050);
  expect(restingEnergyOfLean("1991", 150)).toBe(3610);
  for (const kg of [24.9, 150.1, Number.NaN]) expect(() => restingEnergyOfLean("1980", kg)).toThrow(RangeError);
});

published("mifflin1990", "people of the study", [
  ["printed", "247 women and 251 men", () => RESTING_ENERGY.mifflin.people, 498, 0],
]);
published("mifflinEvidence", "per cent that the equation lay off in people with obesity", [
  ["printed", "under", () => RESTING_ENERGY.mifflin.miss.from, -21, 0],
  ["printed", "over", () => RESTING_ENERGY.mifflin.miss.to, 9, 0],
]);
published("rozaShizgal1984", "half-width of 95 %, kcal a day, restated", [
  ["printed", "women", () => RESTING_ENERGY.roza.miss.from, 201, 0],
  ["printed", "men", () => RESTING_ENERGY.roza.miss.to, 213, 0],
]);
