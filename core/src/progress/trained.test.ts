import { describe, expect, test } from "vitest";
import type { DoneSet } from "../measures/index.ts";
import type { Dose } from "../model/index.ts";
import { isAtTop } from "./trained.ts";

const holds = (...spans: readonly (readonly [number, number])[]): Dose => ({
  sets: spans.map(([from, to]) => ({ amount: { kind: "hold", span: { from, to } }, eachSide: false })),
});
const held = (set: number, seconds: number, asked: Dose): DoneSet =>
  ({ set, holdS: { both: seconds }, asked: asked.sets[set]! }) as DoneSet;

describe("a hold at the top", () => {
  const now = holds([20, 30], [20, 30]);

  test("is as long as the longest that was asked", () => {
    expect(isAtTop(held(0, 30, now), now)).toBe(true);
    expect(isAtTop(held(0, 29, now), now)).toBe(false);
  });

  test("is not at the top of what is asked since: one step never rests on the sets of the step before", () => {
    expect(isAtTop(held(0, 30, now), holds([25, 35], [25, 35]))).toBe(false);
    expect(isAtTop(held(0, 35, now), holds([25, 35], [25, 35]))).toBe(true);
  });

  test("counts by what was asked then, where that set is asked no more, and is unknown where nobody read it", () => {
    expect(isAtTop(held(1, 30, now), holds([20, 30]))).toBe(true);
    expect(isAtTop({ set: 0, asked: now.sets[0]! } as DoneSet, now)).toBe(false);
  });
});
