import { expect, test } from "vitest";
import { backOff } from "./back-off.ts";

test("waits longer with every failure, up to a minute", () => {
  expect([1, 2, 3, 7, 50].map((failures) => backOff(failures, 1))).toEqual([1000, 2000, 4000, 60_000, 60_000]);
});
test("chance spreads phones over half of the wait", () => {
  expect(backOff(3, 0)).toBe(2000);
  expect(backOff(3, 0.5)).toBe(3000);
});
