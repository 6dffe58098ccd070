import { describe, expect, test } from "vitest";
import { PAIN_RULES, type PainToday, painBefore } from "./pain.ts";

const today = (score: number, morning?: number, more: Partial<PainToday> = {}): PainToday => ({
  score,
  ...(morning === undefined ? {} : { morning }),
  rising: false,
  signs: [],
  ...more,
});

describe("silbernagel2007, from memory: free to 2, at most 5, the next morning too, never rising", () => {
  test.each([
    [2, 1, "go"],
    [5, 3, "soften"],
    [4, 6, "hold"],
    [6, 2, "hold"],
    [2, 2, "go"],
    [3, 0, "soften"],
    [0, 3, "soften"],
    [5, 5, "soften"],
    [0, undefined, "go"],
  ] as const)("%d, next morning %s: %s", (score, morning, want) => {
    expect(painBefore(today(score, morning)).before).toBe(want);
  });
  test("rising from week to week holds at any score", () => {
    expect(painBefore(today(1, 1, { rising: true })).before).toBe("hold");
  });
});

test("practice: the clinic's edge of 3 differs from 2 and from nothing else", () => {
  const clinic = PAIN_RULES[1]!;
  expect(painBefore(today(3, 3), clinic).before).toBe("go");
  expect(painBefore(today(4), clinic).before).toBe("soften");
  expect(painBefore(today(6), clinic).before).toBe("hold");
});

test("what no rule of numbers is made for asks a clinician, at any score", () => {
  expect(painBefore(today(1, 0, { signs: ["numbness"] }))).toEqual({
    before: "hold",
    because: [{ code: "before/pain-not-by-rule", data: { signs: ["numbness"] } }],
  });
});

test.each([-1, 10.5, Number.NaN])("%d is no pain score", (score) => {
  expect(() => painBefore(today(score))).toThrow(RangeError);
  expect(() => painBefore(today(1, score))).toThrow(RangeError);
});
