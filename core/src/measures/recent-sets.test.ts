import { expect, test } from "vitest";
import { day } from "../day.ts";
import { recentSets } from "./recent-sets.ts";

const week = (on: string, chest: number, lats = 0) => ({ week: day(on), sets: { chest, lats } });

test("the mean of the last four trained weeks, in any order", () => {
  const weeks = [week("2026-11-30", 8, 4), week("2026-11-02", 40), week("2026-11-23", 6), week("2026-11-09", 10)];
  const found = recentSets([...weeks, week("2026-11-16", 4)], day("2026-12-07"));
  expect(found).toMatchObject({ weeks: 4, daysOff: 0, usual: { chest: 7, lats: 1, calf: 0 } });
});

test("weeks without training are time off, not part of the mean", () => {
  const found = recentSets([week("2026-11-16", 8), week("2026-11-23", 0), week("2026-11-30", 0)], day("2026-12-07"));
  expect(found).toMatchObject({ weeks: 1, daysOff: 14, usual: { chest: 8 } });
});

test("a week that is not over does not count, and without any nothing is known", () => {
  expect(recentSets([week("2026-12-01", 8)], day("2026-12-07"))).toBeUndefined();
  expect(recentSets([week("2026-11-30", 8)], day("2026-12-07"))?.weeks).toBe(1);
  expect(recentSets([], day("2026-12-07"))).toBeUndefined();
});

test("a muscle of half a set a week was trained; the week counts from its first day to its seventh", () => {
  expect(recentSets([week("2026-11-30", 0.5)], day("2026-12-07"))).toMatchObject({ daysOff: 0, usual: { chest: 0.5 } });
  expect(recentSets([week("2026-11-30", 0, 2)], day("2026-12-08"))).toMatchObject({ daysOff: 1, usual: { lats: 2 } });
  expect(recentSets([week("2026-11-30", 0, 0)], day("2026-12-08"))).toBeUndefined();
});
