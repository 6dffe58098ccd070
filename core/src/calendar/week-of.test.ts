import fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { addDays, day, printDay, WEEKDAYS, weekdayOf } from "../day.ts";
import { isoWeek, sessionsByWeek, weekStart } from "./week-of.ts";

const anyDay = fc.integer({ min: -30_000, max: 60_000 }).map((n) => addDays(day("2000-01-01"), n));

test("another library (temporal-polyfill) names the same weeks", () => {
  fc.assert(
    fc.property(anyDay, (on) => {
      const { weekOfYear, yearOfWeek } = Temporal.PlainDate.from(printDay(on));
      expect(isoWeek(on)).toBe(`${yearOfWeek}-W${String(weekOfYear).padStart(2, "0")}`);
    }),
  );
});

test("law: a week begins on its weekday, at most six days before", () => {
  fc.assert(
    fc.property(anyDay, fc.constantFrom(...WEEKDAYS), (on, begins) => {
      const first = weekStart(on, begins);
      expect(weekdayOf(first)).toBe(begins);
      expect(on - first).toBeGreaterThanOrEqual(0);
      expect(on - first).toBeLessThan(7);
    }),
  );
});

test("weeks without a session stand between the others, and no session at all has no week", () => {
  const found = sessionsByWeek([day("2027-01-04"), day("2027-01-20")], "mon");
  expect(found.map(({ sessions }) => sessions)).toEqual([1, 0, 1]);
  expect(sessionsByWeek([], "sun")).toEqual([]);
});
