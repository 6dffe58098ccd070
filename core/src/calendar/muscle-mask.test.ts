import fc from "fast-check";
import { expect, test } from "vitest";
import { MUSCLES } from "../model/index.ts";
import { maskOf, musclesIn, sharedCount } from "./muscle-mask.ts";

const someMuscles = fc.subarray([...MUSCLES]);

test("a mask and its muscles say the same", () => {
  fc.assert(
    fc.property(someMuscles, (muscles) => {
      expect(musclesIn(maskOf(muscles))).toEqual(muscles);
    }),
  );
  expect(maskOf(["chest", "side shoulder"])).toBe(5);
});

test("shared muscles are those that stand in both lists", () => {
  fc.assert(
    fc.property(someMuscles, someMuscles, (a, b) => {
      expect(sharedCount(maskOf(a), maskOf(b))).toBe(a.filter((muscle) => b.includes(muscle)).length);
    }),
  );
});
