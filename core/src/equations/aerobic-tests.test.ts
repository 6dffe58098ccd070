import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, lb } from "../units.ts";
import {
  collegeRun,
  type MileWalk,
  mileAndHalfRun,
  mileWalk,
  mileWalkFormula,
  stepTest,
  twelveMinuteRun,
} from "./aerobic-tests.ts";

const walk = (sex: "man" | "woman", pounds: number, ageY: number, minutes: number, bpm: number): MileWalk => {
  return { sex, mass: lb(pounds), ageY, minutes, bpm };
};
const MAN = walk("man", 170, 40, 14.5, 130);

published("cooper1968", "mL/kg/min from metres in 12 minutes, restated", [
  ["worked", "2400 m", () => twelveMinuteRun(2400), 42.37, 0.005],
  ["worked", "2800 m", () => twelveMinuteRun(2800), 51.31, 0.005],
  ["worked", "2000 m", () => twelveMinuteRun(2000), 33.42, 0.005],
  ["worked", "1600 m", () => twelveMinuteRun(1600), 24.48, 0.005],
]);
published("acsmGetp10", "mL/kg/min from the time of 1.5 miles, restated", [
  ["worked", "12:00", () => mileAndHalfRun(12), 43.75, 0.005],
  ["worked", "10:30", () => mileAndHalfRun(10.5), 49.5, 0.005],
  ["worked", "15:00", () => mileAndHalfRun(15), 35.7, 0.005],
]);
published("george1993", "mL/kg/min of an 80 kg man, 1.5 miles in 12:00, from memory", [
  ["worked", "formula", () => collegeRun("man", 80, 12, 20), 45.37, 0.005],
]);
published("kline1987", "mL/kg/min of a mile's walk, restated", [
  ["worked", "man 170 lb, 40 y, 14.5 min, 130", () => mileWalk(MAN).mlKgMin, 42.9, 0.005],
  [
    "worked",
    "woman 150 lb, 50 y, 15.5 min, 140",
    () => mileWalk(walk("woman", 150, 50, 15.5, 140)).mlKgMin,
    29.42,
    0.005,
  ],
  [
    "worked",
    "woman 156 lb, 26 y, 12.25 min, 80: bare formula, outside its ages",
    () => mileWalkFormula(walk("woman", 156, 26, 12.25, 80)),
    58.26,
    0.005,
  ],
]);
published("kline1987", "L/min of the same man, terminology entry", [
  ["worked", "absolute form", () => mileWalk(MAN).lMin, 3.337, 0.0005],
  ["worked", "over his 77.11 kg, mL/kg/min", () => (1000 * mileWalk(MAN).lMin) / inKg(lb(170)), 43.28, 0.01],
]);
published("mcardle1972", "mL/kg/min from the heart rate after stepping, restated", [
  ["worked", "man, 140", () => stepTest("man", 140), 52.53, 0.005],
  ["worked", "man, 160", () => stepTest("man", 160), 44.13, 0.005],
  ["worked", "woman, 140", () => stepTest("woman", 140), 39.95, 0.005],
  ["worked", "woman, 160", () => stepTest("woman", 160), 36.26, 0.005],
]);

test("a count of 10 seconds in place of the rate, and ages of others, are refused", () => {
  expect(() => mileWalk({ ...MAN, bpm: 22 })).toThrow(/beats\/min must be from 60 to 220/);
  for (const ageY of [29, 70, Number.NaN]) expect(() => mileWalk({ ...MAN, ageY })).toThrow(/age/);
});

test("takes the ends of its ranges and refuses what lies beyond", () => {
  const fine: readonly number[] = [
    twelveMinuteRun(1000),
    twelveMinuteRun(4500),
    mileAndHalfRun(6),
    mileAndHalfRun(25),
    collegeRun("woman", 40, 6, 18),
    collegeRun("man", 150, 25, 29),
    mileWalk({ ...MAN, ageY: 30, minutes: 8, bpm: 60, mass: lb(66) }).mlKgMin,
    mileWalk({ ...MAN, ageY: 69, minutes: 30, bpm: 220, mass: lb(660) }).lMin,
    stepTest("man", 80),
    stepTest("woman", 210),
  ];
  expect(fine.filter((value) => !Number.isFinite(value))).toEqual([]);
  const beyond: readonly (() => unknown)[] = [
    () => twelveMinuteRun(999),
    () => twelveMinuteRun(4501),
    () => mileAndHalfRun(5.9),
    () => mileAndHalfRun(25.1),
    () => collegeRun("man", 80, 12, 17),
    () => collegeRun("man", 80, 12, 30),
    () => collegeRun("man", 39, 12, 20),
    () => collegeRun("man", 151, 12, 20),
    () => collegeRun("man", 80, 5.9, 20),
    () => collegeRun("man", 80, 25.1, 20),
    () => mileWalk({ ...MAN, minutes: 7.9 }),
    () => mileWalk({ ...MAN, minutes: 30.1 }),
    () => mileWalk({ ...MAN, bpm: 221 }),
    () => mileWalk({ ...MAN, mass: lb(65) }),
    () => mileWalk({ ...MAN, mass: lb(661) }),
    () => stepTest("man", 79),
    () => stepTest("man", 211),
    () => stepTest("woman", Number.NaN),
  ];
  for (const call of beyond) expect(call).toThrow(RangeError);
});

test("women have the constants of women", () => {
  expect(mileWalkFormula(MAN) - mileWalkFormula({ ...MAN, sex: "woman" })).toBeCloseTo(6.315, 9);
  expect(mileWalk(MAN).lMin - mileWalk({ ...MAN, sex: "woman" }).lMin).toBeCloseTo(0.5955, 9);
  expect(collegeRun("man", 80, 12, 20) - collegeRun("woman", 80, 12, 20)).toBeCloseTo(3.716, 9);
});
