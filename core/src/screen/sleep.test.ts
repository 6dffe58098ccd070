import { expect, test } from "vitest";
import { sleepBefore } from "./sleep.ts";

test("common practice: under 5 hours today may be softer", () => {
  expect(sleepBefore(4.9)).toEqual({
    before: "soften",
    because: [{ code: "before/slept-little", data: { hours: 4.9, limit: 5, rule: "short night, under 5 h" } }],
  });
  expect(sleepBefore(5).before).toBe("go");
  expect(sleepBefore(0).before).toBe("soften");
});

test.each([-1, 24.5, Number.NaN])("%d hours are refused", (hours) => {
  expect(() => sleepBefore(hours)).toThrow(RangeError);
});
