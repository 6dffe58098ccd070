import { describe, expect, test } from "vitest";
import { type CalledOff, noticeGiven } from "./notice-given.ts";

const HOUR = 60;
/** Sunday 10:00 on a wall clock whose zero is Saturday 00:00. */
const SESSION = 34 * HOUR;
const off = (more: Partial<CalledOff>) =>
  noticeGiven({
    sessionMin: SESSION,
    calledOffMin: 0,
    ruleH: 24,
    by: "person",
    because: "other",
    illIsFree: true,
    left: 10,
    ...more,
  });

// The clocks go forward in the night between: 22.5 and 23.25 hours went by, and neither is what the rule counts.
describe("ot-09 (open case): a pack of ten, 24 hours, and the night in which the clocks change", () => {
  test("Saturday 10:30 is 23.5 hours on the wall: late; 09:45 is 24.25: in time", () => {
    expect(off({ calledOffMin: 10.5 * HOUR })).toEqual({ hours: 23.5, inTime: false, costs: 1, left: 9 });
    expect(off({ calledOffMin: 9.75 * HOUR })).toEqual({ hours: 24.25, inTime: true, costs: 0, left: 10 });
    expect(off({ calledOffMin: 10 * HOUR }).inTime).toBe(true);
  });
  test("illness by its own rule; what the coach calls off two hours before never costs", () => {
    const late = { calledOffMin: 32 * HOUR };
    expect(off({ ...late, because: "ill" })).toMatchObject({ inTime: false, costs: 0, left: 10 });
    expect(off({ ...late, because: "ill", illIsFree: false })).toMatchObject({ costs: 1, left: 9 });
    expect(off({ ...late, by: "coach" })).toEqual({ hours: 2, inTime: false, costs: 0, left: 10 });
  });
});

test("not coming at all is late; an empty pack cannot pay", () => {
  expect(off({ calledOffMin: 35 * HOUR })).toMatchObject({ hours: -1, costs: 1 });
  expect(off({ calledOffMin: 33 * HOUR, left: 0 })).toMatchObject({ costs: 0, left: 0 });
});

test.each([{ ruleH: -1 }, { ruleH: 400 }, { left: -1 }, { calledOffMin: Number.NaN }, { calledOffMin: -1e9 }])(
  "%j is refused",
  (more) => {
    expect(() => off(more)).toThrow(RangeError);
  },
);
