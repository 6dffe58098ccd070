import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { type ActiveWeek, metMinutes, moderateMinutes } from "./met-minutes.ts";

const week = (
  walk: readonly [number, number],
  moderate: readonly [number, number],
  vigorous: readonly [number, number],
): ActiveWeek => {
  const spell = ([days, minutes]: readonly [number, number]) => ({ days, minutes });
  return { walking: spell(walk), moderate: spell(moderate), vigorous: spell(vigorous) };
};
const NONE = [0, 0] as const;

published("ipaq2005", "MET-minutes of walking 5 × 30, moderate 2 × 30, vigorous 3 × 20", [
  ["worked", "495 + 240 + 480", () => metMinutes(week([5, 30], [2, 30], [3, 20]), 40).total, 1215, 0],
]);
published("who2020", "minutes counted as moderate", [
  ["worked", "90 moderate and 40 vigorous: meets 150", () => moderateMinutes(90, 40), 170, 0],
  ["worked", "60 moderate and 40 vigorous: does not", () => moderateMinutes(60, 40), 140, 0],
]);

test.each([
  ["vigorous on 3 days, under 1500", week([5, 30], [2, 30], [3, 20]), "moderate"],
  ["vigorous on 3 days and 1500", week(NONE, NONE, [3, 62.5]), "high"],
  ["vigorous on 2 days and 1500", week(NONE, NONE, [2, 100]), "low"],
  ["7 days of any mix and 2994", week([3, 60], [2, 100], [2, 100]), "moderate"],
  ["7 days of any mix and 3010", week([3, 60], [2, 100], [2, 101]), "high"],
  ["7 days of walking and moderate work, 2988", week([4, 120], [3, 117], NONE), "moderate"],
  ["7 days of walking and moderate work, 3000", week([4, 120], [3, 118], NONE), "high"],
  ["4 days with 3120, and 7 of walking for no minutes", week([7, 0], [2, 30], [2, 180]), "low"],
  ["vigorous on 3 days for 19 minutes, 456", week(NONE, NONE, [3, 19]), "low"],
  ["vigorous on 3 days for 20 minutes, 480", week(NONE, NONE, [3, 20]), "moderate"],
  ["walking on 5 days for 30 minutes, 495", week([5, 30], NONE, NONE), "moderate"],
  ["walking on 5 days for 29 minutes, 478.5", week([5, 29], NONE, NONE), "low"],
  ["walking and moderate on 5 days together", week([2, 30], [3, 30], NONE), "moderate"],
  ["5 days of short spells and 600", week([3, 29], [2, 29], [2, 15]), "moderate"],
  ["4 days and 600", week([2, 29], [2, 60], NONE), "low"],
  ["nothing", week(NONE, NONE, NONE), "low"],
  ["days without minutes are no days", week([7, 0], [7, 0], [3, 25]), "moderate"],
] as const)("ipaq2005: %s", (_, active, wanted) => {
  expect(metMinutes(active, 40).class).toBe(wanted);
});

test("three hours of one kind are the most that a day counts", () => {
  expect(metMinutes(week([1, 180], NONE, NONE), 40).total).toBe(594);
  expect(metMinutes(week([1, 600], NONE, NONE), 40).total).toBe(594);
});

test("refuses ages, days and minutes that cannot be", () => {
  const fine = week([5, 30], NONE, NONE);
  expect(metMinutes(fine, 15).total).toBe(metMinutes(fine, 69).total);
  for (const age of [14, 70, Number.NaN]) expect(() => metMinutes(fine, age)).toThrow(/age/);
  for (const bad of [
    week([8, 30], NONE, NONE),
    week(NONE, [1, 1441], NONE),
    week(NONE, NONE, [-1, 30]),
    week([1, Number.NaN], NONE, NONE),
  ]) {
    expect(() => metMinutes(bad, 40)).toThrow(RangeError);
  }
  for (const [a, b] of [
    [-1, 0],
    [0, -1],
    [10_081, 0],
    [0, 10_081],
    [Number.NaN, 0],
  ] as const) {
    expect(() => moderateMinutes(a, b)).toThrow(RangeError);
  }
});
