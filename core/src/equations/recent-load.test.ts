import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { fadingMeans, recentLoad } from "./recent-load.ts";

const days = (count: number, load: number) => Array<number>(count).fill(load);
const RISE = [...days(21, 200), ...days(7, 350)];

published("williams2017", "21 days of 200, then 7 of 350", [
  ["worked", "mean of 7 days", () => recentLoad(RISE).recent, 350, 0],
  ["worked", "mean of 28 days", () => recentLoad(RISE).usual, 237.5, 0],
  ["worked", "7 days over 28", () => recentLoad(RISE).overUsual, 1.4737, 0.00005],
  ["worked", "7 days over the 21 before", () => recentLoad(RISE).overEarlier!, 1.75, 0],
  ["worked", "fading, 7 days", () => fadingMeans(RISE, 7).at(-1)!, 329.9774, 0.00005],
  ["worked", "fading, 28 days", () => fadingMeans(RISE, 28).at(-1)!, 259.0398, 0.00005],
  ["worked", "fading, 7 over 28", () => recentLoad(RISE).fading, 1.2738, 0.00005],
]);
published("williams2017", "share of today in a fading mean", [
  ["printed", "7 days: 0.25", () => fadingMeans([0, 1], 7)[1]!, 0.25, 0],
  ["printed", "28 days: 0.068966", () => fadingMeans([0, 1], 28)[1]!, 0.068966, 5e-7],
]);

test("williams2017, worked: from 100 with 300, 0, 0, 0 over 7 days", () => {
  expect(fadingMeans([100, 300, 0, 0, 0], 7)).toEqual([100, 150, 112.5, 84.375, 63.28125]);
});

test("days alike give 1 in all three ways, whatever the unit", () => {
  for (const load of [1, 350]) expect(recentLoad(days(40, load))).toMatchObject({ overUsual: 1, overEarlier: 1 });
  const twice = recentLoad(RISE.map((load) => 2 * load));
  expect(twice.overUsual).toBeCloseTo(recentLoad(RISE).overUsual, 12);
  expect(twice.fading).toBeCloseTo(recentLoad(RISE).fading, 12);
});

test("only the last 28 days count for the plain means; older ones still fade", () => {
  const older = recentLoad([...days(7, 900), ...RISE]);
  expect(older).toMatchObject({ recent: 350, usual: 237.5, overEarlier: 1.75 });
  expect(older.fading).toBeLessThan(recentLoad(RISE).fading);
});

test("three weeks of nothing leave no ratio to them, four weeks of nothing none at all", () => {
  expect(recentLoad([...days(21, 0), ...days(7, 350)])).toMatchObject({ overUsual: 4 });
  expect(recentLoad([...days(21, 0), ...days(7, 350)])).not.toHaveProperty("overEarlier");
  expect(() => recentLoad(days(28, 0))).toThrow(/something must have been done/);
});

test("refuses fewer than 28 days and loads that cannot be", () => {
  expect(() => recentLoad(days(27, 200))).toThrow(/number of days/);
  for (const load of [-1, 20_001, Number.NaN]) {
    expect(() => recentLoad([...days(27, 200), load])).toThrow(/load of a day/);
  }
  expect(() => fadingMeans([], 7)).toThrow(RangeError);
  expect(recentLoad(days(28, 20_000)).recent).toBe(20_000);
});
