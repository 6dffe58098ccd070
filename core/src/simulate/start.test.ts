import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { lifter, repsToFailure } from "./lifter.ts";
import { ASKED_ALWAYS, firstAsked, isWithin, onStack, shareFor } from "./start.ts";
import { WORLDS } from "./world.ts";

published("epley1985", "share of the maximum for 10 repetitions", [
  ["worked", "30 / 40", () => shareFor(10, "thirtieths"), 0.75, 1e-12],
]);
published("mayhew1992", "share of the maximum for 10 repetitions", [
  ["worked", "0.522 + 0.419 e^(−0.55)", () => shareFor(10, "exponential"), 0.76374, 0.00001],
]);

test("a share and its repetitions are each other turned round", () => {
  for (const curve of ["thirtieths", "exponential"] as const)
    for (const reps of [2, 5, 8.5, 12]) expect(repsToFailure(shareFor(reps, curve), curve)).toBeCloseTo(reps, 9);
});

test("loads lie on the stack, and the lightest is one pin", () => {
  const [world] = WORLDS;
  expect([61.2, 61.3, 0.1, -4].map((load) => onStack(load, world!))).toEqual([60, 62.5, 2.5, 2.5]);
});

test("within: the bottom of the range and the reserve, without the day's luck", () => {
  const world = { ...WORLDS[0]!, daySd: [0.2, 0.2] as const };
  const one = lifter(world, 1, 1);
  // Five and two left are seven: 30 / 37 of the maximum.
  const most = (one.trend(10) * 30) / 37;
  expect(isWithin(one, world, 10, { ...ASKED_ALWAYS, loadKg: most * 0.999 })).toBe(true);
  expect(isWithin(one, world, 10, { ...ASKED_ALWAYS, loadKg: most * 1.001 })).toBe(false);
});

test("the first load lies about 8 % around that for the middle of the range", () => {
  const world = { ...WORLDS[0]!, stepKg: 0.01 };
  const off = Array.from({ length: 500 }, (_, index) => {
    const one = lifter(world, 9, index);
    return Math.log(firstAsked(one, world, 9, index, ASKED_ALWAYS).loadKg / ((one.trend(0) * 30) / 38));
  });
  const mean = off.reduce((sum, each) => sum + each, 0) / off.length;
  const sd = Math.sqrt(off.reduce((sum, each) => sum + (each - mean) ** 2, 0) / off.length);
  expect(Math.abs(mean)).toBeLessThan(0.018);
  expect(sd).toBeGreaterThan(0.07);
  expect(sd).toBeLessThan(0.09);
});
