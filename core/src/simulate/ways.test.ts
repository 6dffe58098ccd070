import { describe, expect, test } from "vitest";
import type { Asked } from "./lifter.ts";
import { recorded } from "./recorded.ts";
import { twoForTwoPlain } from "./ways.ts";
import { WORLDS } from "./world.ts";

const ASKED: Asked = { loadKg: 60, reps: { from: 10, to: 12 }, reserve: 0, sets: 3 };
const world = WORLDS[0]!;
/** Three sets of each session, the last one last. */
const after = (...sessions: readonly (readonly number[])[]) =>
  twoForTwoPlain({
    history: sessions.map((reps, at) =>
      recorded(
        at,
        at * 3.5,
        ASKED,
        reps.map((count) => ({ loadKg: 60, reps: count })),
      ),
    ),
    asked: ASKED,
    day: 30,
    world,
  }).asked.loadKg;
const lasts = (...reps: readonly number[]) => after(...reps.map((count) => [12, 12, count]));

describe("haffTriplett2016, printed: goal 10, last sets of two sessions running", () => {
  test("12, 12 raises by one load; 12, 11 and 12, 10, 12 hold", () => {
    expect(lasts(12, 12)).toBe(62.5);
    expect(lasts(12, 11)).toBe(60);
    expect(lasts(12, 10, 12)).toBe(60);
    expect(lasts(12)).toBe(60);
  });
});

describe("edges, ours", () => {
  test("a last set that is not there raises nothing", () => expect(after([12, 12, 12], [12, 12])).toBe(60));
  test("sessions with another load do not count", () => {
    const history = [50, 60].map((loadKg, at) =>
      recorded(at, at * 3.5, { ...ASKED, loadKg }, Array(3).fill({ loadKg, reps: 12 })),
    );
    expect(twoForTwoPlain({ history, asked: ASKED, day: 30, world }).asked.loadKg).toBe(60);
  });
  test("two short in the first set twice running goes a load back; one short, or once, does not", () => {
    expect(after([8, 8, 8], [8, 8, 8])).toBe(57.5);
    expect(after([8, 8, 8], [9, 9, 9])).toBe(60);
    expect(after([12, 8, 8], [8, 8, 8])).toBe(60);
  });
  test("the lightest load stays", () => {
    const asked = { ...ASKED, loadKg: world.stepKg };
    const history = [0, 1].map((at) => recorded(at, at * 3.5, asked, [{ loadKg: world.stepKg, reps: 1 }]));
    expect(twoForTwoPlain({ history, asked, day: 30, world }).asked.loadKg).toBe(world.stepKg);
  });
});
