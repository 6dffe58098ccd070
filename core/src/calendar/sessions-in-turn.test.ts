import fc from "fast-check";
import { expect, test } from "vitest";
import { sessionsInTurn } from "./sessions-in-turn.ts";

test("fewer days than sessions: they come in turn and the next week goes on", () => {
  expect(sessionsInTurn(["A", "B", "C"], 2, 3)).toEqual([
    ["A", "B"],
    ["C", "A"],
    ["B", "C"],
  ]);
});

test("as many days, or more: every week has all, once", () => {
  for (const perWeek of [3, 5])
    expect(sessionsInTurn(["A", "B", "C"], perWeek, 2)).toEqual([
      ["A", "B", "C"],
      ["A", "B", "C"],
    ]);
});

test("no day, no session, no week: nothing", () => {
  expect(sessionsInTurn(["A", "B"], 0, 2)).toEqual([[], []]);
  expect(sessionsInTurn([], 3, 2)).toEqual([[], []]);
  expect(sessionsInTurn(["A"], 3, 0)).toEqual([]);
});

test("law: no session is left behind by more than one turn, and none comes twice in a week", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 7 }),
      fc.integer({ min: 1, max: 7 }),
      fc.nat({ max: 20 }),
      (n, perWeek, weeks) => {
        const keys = "ABCDEFG".slice(0, n).split("");
        const plan = sessionsInTurn(keys, perWeek, weeks);
        const counts = keys.map((key) => plan.flat().filter((one) => one === key).length);
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
        for (const week of plan) expect(new Set(week).size).toBe(week.length);
      },
    ),
  );
});

test("refuses days and weeks that are no whole numbers", () => {
  for (const bad of [-1, 1.5, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => sessionsInTurn(["A"], bad, 1)).toThrow(RangeError);
    expect(() => sessionsInTurn(["A"], 1, bad)).toThrow(RangeError);
  }
});
