import { describe, expect, test } from "vitest";
import { sideGap, symmetry } from "./sides.ts";

describe("the weaker side and its gap (common practice, no source)", () => {
  test.each([
    [9, 10, "more", "left", 10],
    [10, 9, "more", "right", 10],
    [9, 10, "less", "right", 10],
    [7, 7, "more", "none", 0],
    [0, 8, "more", "left", 100],
    [12.5, 14, "more", "left", 10.7],
  ] as const)("%d and %d, %s is better: %s by %d %%", (left, right, better, weaker, gapPercent) => {
    expect(sideGap({ left, right }, better)).toEqual({ weaker, gapPercent });
  });
  test.each([
    [0, 0],
    [-1, 5],
    [Number.NaN, 5],
    [5, Number.POSITIVE_INFINITY],
  ])("%d and %d are refused", (left, right) => {
    expect(() => sideGap({ left, right })).toThrow(RangeError);
  });
});

describe("mo-03: a knee six and a half months after a graft (published study)", () => {
  const tests = [
    { test: "strength", injured: 142, uninjured: 168 },
    { test: "single hop", injured: 151, uninjured: 160 },
    { test: "triple hop", injured: 470, uninjured: 505 },
    { test: "side hop", injured: 31, uninjured: 39 },
  ];
  test("not passed, the failed lines named; an average would have passed", () => {
    const { passed, lines } = symmetry(tests);
    expect(passed).toBe(false);
    expect(lines.map(({ percent }) => percent)).toEqual([84.5, 94.4, 93.1, 79.5]);
    expect(lines.filter((line) => !line.passed).map((line) => line.test)).toEqual(["strength", "side hop"]);
  });
  test("the other way round passes: the direction of the ratio matters", () => {
    const turned = tests.map(({ test, injured, uninjured }) => ({ test, injured: uninjured, uninjured: injured }));
    expect(symmetry(turned).passed).toBe(true);
  });
  test("exactly 90 % does not exceed 90 %; nothing tested passes nothing", () => {
    expect(symmetry([{ test: "hop", injured: 90, uninjured: 100 }]).passed).toBe(false);
    expect(symmetry([{ test: "hop", injured: 90.1, uninjured: 100 }]).passed).toBe(true);
    expect(symmetry([]).passed).toBe(false);
  });
  test("no uninjured side is refused", () => {
    expect(() => symmetry([{ test: "hop", injured: 90, uninjured: 0 }])).toThrow(RangeError);
    expect(() => symmetry([{ test: "hop", injured: Number.NaN, uninjured: 5 }])).toThrow(RangeError);
  });
});
