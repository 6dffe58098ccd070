import { describe, expect, test } from "vitest";
import type { Coached, StepUp } from "./coach.ts";
import { judgeCertainty, judgeWays } from "./judge-ways.ts";

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

describe("certainty", () => {
  test("what was said near a level, and how often it came true", () => {
    const sure = (certainty: number, within: boolean) => ({ certainty, within });
    const all = [
      one([sure(0.65, true), sure(0.7, false), sure(0.775, true)]),
      one([sure(0.899, false), sure(0.9, true), sure(1, true), sure(0.5, false), good]),
    ];
    const found = judgeCertainty(all, 1);
    expect(found.map(({ level, steps }) => [level, steps])).toEqual([
      [0.7, 2],
      [0.85, 2],
      [0.95, 2],
    ]);
    expect(found.map(({ said }) => said)).toEqual([0.675, 0.837, 0.95]);
    expect(found.map(({ happened }) => happened.value)).toEqual([0.5, 0.5, 1]);
  });
  test("nothing said, nothing told", () => expect(judgeCertainty([one([good, bad])], 1)).toEqual([]));
});
