import { describe, expect, test } from "vitest";
import { illBefore, RETURN_RULES, returnBefore } from "./illness.ts";

describe("practice: the neck check as a first question", () => {
  test.each([
    [[], "go", undefined],
    [["runny nose"], "soften", "before/ill-easy-trial"],
    [["runny nose", "fever"], "hold", "before/ill-rest"],
    [["stomach or gut"], "hold", "before/ill-rest"],
    [["sore throat", "palpitations"], "hold", "before/ill-doctor"],
  ] as const)("%j: %s", (signs, before, code) => {
    const answer = illBefore(signs);
    expect(answer.before).toBe(before);
    expect(answer.because[0]?.code).toBe(code);
  });
});

describe("elliottLadder2021, table 1, printed: days 1–2 15 min under 70 %, 3 30, 4 45 with light resistance, 5–6 60", () => {
  test.each([
    [0, "hold", null, null, null],
    [1, "soften", 15, 70, "none"],
    [2, "soften", 15, 70, "none"],
    [3, "soften", 30, 80, "none"],
    [4, "soften", 45, 80, "light"],
    [5, "soften", 60, 80, "light"],
    [6, "soften", 60, 80, "light"],
    [7, "go", null, null, null],
  ] as const)("%d days free: %s", (days, before, minutes, percent, resistance) => {
    const answer = returnBefore(days);
    expect(answer.before).toBe(before);
    if (minutes !== null) expect(answer.because[0]?.data).toMatchObject({ minutes, percent, resistance });
  });
});

describe("salman2021, printed: 7 days free, then two weeks gentle", () => {
  const rule = RETURN_RULES[1]!;
  test.each([
    [6, "hold"],
    [7, "soften"],
    [20, "soften"],
    [21, "go"],
  ] as const)("%d days free: %s", (days, before) => {
    expect(returnBefore(days, rule).before).toBe(before);
    if (before !== "go")
      expect(returnBefore(days, rule).because[0]?.data).toMatchObject({ rule: rule.id, dated: "2021" });
  });
  test("gentle is 30 minutes without resistance", () => {
    expect(returnBefore(7, rule).because[0]?.data).toMatchObject({ minutes: 30, percent: null, resistance: "none" });
  });
});

test.each([-1, 0.5, Number.NaN])("%d days are refused", (days) => {
  expect(() => returnBefore(days)).toThrow(RangeError);
});
