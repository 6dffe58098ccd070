import { expect, test } from "vitest";
import { closePoints, latePoints } from "./points.ts";

const H48 = 48 * 60;

test("nothing is counted when the hours are exactly as wanted, or no muscle is shared", () => {
  expect(closePoints(5, H48, H48)).toBe(0);
  expect(closePoints(0, 24 * 60, H48)).toBe(0);
});

test("every six hours begun count, for every shared muscle", () => {
  expect(closePoints(1, H48 - 1, H48)).toBe(2);
  expect(closePoints(1, H48 - 360, H48)).toBe(2);
  expect(closePoints(1, H48 - 361, H48)).toBe(4);
  expect(closePoints(3, 24 * 60, H48)).toBe(24);
});

test("a day late weighs more than any window, and less than a next-day pair that shares three muscles", () => {
  expect(latePoints(0)).toBe(0);
  expect(latePoints(1)).toBeGreaterThan(4);
  expect(latePoints(1)).toBeLessThan(closePoints(3, 24 * 60, H48));
});
