import { describe, expect, test } from "vitest";
import type { Coached, StepUp } from "./coach.ts";
import { judgeWays } from "./judge-ways.ts";

const one = (steps: readonly StepUp[], late = 0, heavy = 0, stepsBack = 0): Coached => ({
  steps,
  stepsBack,
  weeks: 20,
  late,
  heavy,
});
const good: StepUp = { within: true };
const bad: StepUp = { within: false };

describe("two ways with the same people", () => {
  const ours = [one([good, bad], 2, 1), one([good], 4, 0, 1)];
  const plain = [one([good], 6, 1), one([bad, bad, good], 10, 3)];
  test("each per person, and the difference person by person", () => {
    const { people, weeks, ours: mine, plain: theirs, less } = judgeWays(ours, plain, 1);
    expect([people, weeks]).toEqual([2, 20]);
    expect([mine.steps.value, mine.tooSoon.value, mine.stepsBack.value, mine.late.value, mine.heavy.value]).toEqual([
      1.5, 0.5, 0.5, 3, 0.5,
    ]);
    expect([theirs.steps.value, theirs.tooSoon.value, theirs.late.value, theirs.heavy.value]).toEqual([2, 1, 8, 2]);
    expect([less.tooSoon.value, less.late.value, less.heavy.value]).toEqual([-0.5, -5, -1.5]);
    expect([less.late.low, less.late.high]).toEqual([-6, -4]);
  });
  test("other people cannot be compared", () => {
    expect(() => judgeWays(ours, plain.slice(1), 1)).toThrow(RangeError);
    expect(() => judgeWays([], [], 1)).toThrow(RangeError);
  });
});
