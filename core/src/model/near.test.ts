import { expect, test } from "vitest";
import { listNames, nearNames, slipsBetween } from "./near.ts";

test("a swap of neighbours is one slip, as is a letter too many, too few or wrong", () => {
  for (const [one, other] of [
    ["sqaut", "squat"],
    ["squatt", "squat"],
    ["squt", "squat"],
    ["squab", "squat"],
  ] as const) {
    expect(slipsBetween(one, other, 3)).toBe(1);
  }
});

test("case, spaces and underscores are no slip", () => {
  expect(slipsBetween("Floor push_up", "floor-push-up", 2)).toBe(0);
});

test("the textbook pair kitten and sitting lies three slips apart, and is cut off below three", () => {
  expect(slipsBetween("kitten", "sitting", 3)).toBe(3);
  expect(slipsBetween("kitten", "sitting", 2)).toBe(3);
  expect(slipsBetween("kitten", "sitting", 1)).toBe(2);
});

test("slips are the same both ways", () => {
  const words = ["row", "rows", "bent-over-row", "squat", "", "mon", "nom"];
  for (const a of words) for (const b of words) expect(slipsBetween(a, b, 4)).toBe(slipsBetween(b, a, 4));
});

test("nearest names first, at most three, none that are far", () => {
  expect(nearNames("windws", ["window", "windows", "wide"])).toEqual(["windows", "window"]);
  expect(nearNames("mom", ["mon", "tue", "wed"])).toEqual(["mon"]);
  expect(nearNames("leg press", ["bench press", "leg press", "leg curl machine"])).toEqual(["leg press"]);
  expect(nearNames("aaaa", ["aaab", "aaac", "aaad", "aaae"])).toHaveLength(3);
  expect(nearNames("x".repeat(5000), ["x".repeat(5001)])).toEqual([]);
});

test("thirty names are listed, of more the first thirty", () => {
  const names = Array.from({ length: 31 }, (_, i) => `n${i}`);
  expect(listNames(names.slice(0, 30))).toMatch(/n29$/);
  expect(listNames(names)).toMatch(/n29, …$/);
});
