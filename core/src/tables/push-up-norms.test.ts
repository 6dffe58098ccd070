import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { PUSH_UP_CLASSES, PUSH_UP_NORMS, pushUpClass } from "./push-up-norms.ts";

const rank = (count: number, age: number, sex: "man" | "woman") =>
  PUSH_UP_CLASSES.indexOf(pushUpClass(count, age, sex)!);

published("csepPushUps", "class of a count, 0 lowest", [
  ["printed", "man 34, 20", () => rank(20, 34, "man"), 2, 0],
  ["printed", "woman 52, 7", () => rank(7, 52, "woman"), 2, 0],
  ["printed", "man 45, 23", () => rank(23, 45, "man"), 3, 0],
  ["printed", "man 19, 39", () => rank(39, 19, "man"), 4, 0],
  ["printed", "man 29, 16", () => rank(16, 29, "man"), 0, 0],
  ["printed", "woman 60, 1", () => rank(1, 60, "woman"), 0, 0],
  ["printed", "woman 69, 17", () => rank(17, 69, "woman"), 4, 0],
]);

test("six bands without a gap, edges rising; sums guard against a slip", () => {
  expect(PUSH_UP_NORMS.map(({ from, to }) => to - from)).toEqual([4, 9, 9, 9, 9, 9]);
  for (const [at, band] of PUSH_UP_NORMS.entries()) {
    if (at > 0) expect(band.from).toBe(PUSH_UP_NORMS[at - 1]!.to + 1);
    for (const edges of [band.men, band.women]) expect(edges.toSorted((a, b) => a - b)).toEqual(edges);
  }
  const sum = (sex: "men" | "women") => PUSH_UP_NORMS.flatMap((band) => band[sex]).reduce((a, b) => a + b, 0);
  expect([sum("men"), sum("women")]).toEqual([109 + 104 + 81 + 65 + 51 + 42, 88 + 76 + 68 + 55 + 41 + 36]);
});

describe("outside", () => {
  test("ages without a row are not judged", () => {
    expect(pushUpClass(20, 14, "man")).toBeUndefined();
    expect(pushUpClass(20, 70, "woman")).toBeUndefined();
    expect(pushUpClass(20, Number.NaN, "woman")).toBeUndefined();
  });
  test.each([-1, 2.5, Number.NaN])("%d is refused", (count) => {
    expect(() => pushUpClass(count, 30, "man")).toThrow(RangeError);
  });
});
