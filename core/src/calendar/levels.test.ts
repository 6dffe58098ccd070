import fc from "fast-check";
import { expect, test } from "vitest";
import { day } from "../day.ts";
import { levelsIn, weightsOf } from "./levels.ts";
import type { CalendarTask } from "./task.ts";

function task(said: Partial<CalendarTask>): CalendarTask {
  const windows = Array.from({ length: 14 }, () => [{ from: 600, to: 660, cost: 4 }]);
  const sessions = [0, 0, 1].map((week, n) => ({ id: "ABC"[n]!, week, minutes: 45, hard: 0b111 }));
  const plain = { days: 14, weekDays: 7, carry: 2, maxInRow: 3, gapHours: 48 };
  return { start: day("2027-03-01"), sessions, windows, ...plain, ...said };
}

test("a unit of a level weighs more than all that the lower levels can hold", () => {
  // Each of three sessions: 4 for the window, 30 for two days late, 1 for the day after another, and 2 × 3 muscles × (8 + 4) six-hours missing.
  expect(weightsOf(task({}))).toEqual({ asked: 322 * 16, fixed: 322 * 4, dropped: 322, close: 1, closeIsLevel: false });
  const own = weightsOf(task({ gapIsMust: true }));
  expect(own).toEqual({
    asked: 106 * 217 * 16,
    fixed: 106 * 217 * 4,
    dropped: 106 * 217,
    close: 106,
    closeIsLevel: true,
  });
});

test("law: a number made of levels gives the levels back", () => {
  const most = (max: number) => fc.integer({ min: 0, max });
  fc.assert(
    fc.property(most(3), most(3), most(216), most(105), (fixed, dropped, close, points) => {
      const weights = weightsOf(task({ gapIsMust: true }));
      const value = fixed * weights.fixed + dropped * weights.dropped + close * weights.close + points;
      expect(levelsIn(value, weights)).toEqual({ fixed, dropped, close, points });
    }),
  );
  expect(levelsIn(322 + 7, weightsOf(task({})))).toEqual({ fixed: 0, dropped: 1, close: 0, points: 7 });
});

test("where nothing but hours missing can cost a point, the level still is one", () => {
  const windows = Array.from({ length: 14 }, () => [{ from: 600, to: 660, cost: 0 }]);
  const weights = weightsOf(task({ windows, carry: 0, gapIsMust: true }));
  expect(levelsIn(5 * weights.close, weights)).toEqual({ fixed: 0, dropped: 0, close: 5, points: 0 });
});

test("levels that no whole number can hold are refused", () => {
  const sessions = Array.from({ length: 1000 }, (_, n) => ({ id: `${n}`, week: 0, minutes: 45, hard: 2 ** 20 - 1 }));
  expect(() => weightsOf(task({ sessions, gapHours: 96, gapIsMust: true }))).toThrow(/Cannot place sessions as/);
});
