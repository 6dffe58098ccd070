import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { weeklyActivity } from "./weekly-activity.ts";

published("hl7PhysicalActivity", "minutes a week of 3 days × 40 min", [
  ["worked", "product of the two", () => weeklyActivity(3, 40).minutes, 120, 0],
]);

test("hl7PhysicalActivity, printed: minutes a week are LOINC 82290-8 in min/wk", () => {
  expect(weeklyActivity(3, 40)).toEqual({ minutes: 120, loinc: "82290-8", unit: "min/wk" });
});

test("takes no day and every minute of a week, refuses what no week has", () => {
  expect([weeklyActivity(0, 40).minutes, weeklyActivity(7, 1440).minutes]).toEqual([0, 10_080]);
  for (const [days, minutes] of [
    [-1, 40],
    [7.5, 40],
    [3, -1],
    [3, 1441],
    [Number.NaN, 40],
    [3, Number.NaN],
  ] as const) {
    expect(() => weeklyActivity(days, minutes)).toThrow(RangeError);
  }
});
