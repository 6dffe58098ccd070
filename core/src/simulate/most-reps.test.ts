import { expect, test } from "vitest";
import { lifter } from "./lifter.ts";
import { mostReps } from "./most-reps.ts";
import { WORLDS } from "./world.ts";

const ASKED = { loadKg: 45, reps: { from: 5, to: 7 }, reserve: 2, sets: 3 };

test("of every set, also where the person writes nothing down; nobody does more than that", () => {
  const world = { ...WORLDS[0]!, hidesFailure: 0.9, slips: 0.5 };
  let short = 0;
  for (let index = 0; index < 60; index++) {
    const most = mostReps(world, 3, index)(7, ASKED);
    expect(most).toHaveLength(3);
    const written = lifter({ ...world, hidesFailure: 0 }, 3, index).train(7, ASKED);
    for (const [set, { reps }] of written.entries()) {
      expect(reps).toBeLessThanOrEqual(most[set]!);
      // Who fell short went on until nothing went any more.
      if (reps >= 5) continue;
      short++;
      expect(reps).toBe(most[set]);
    }
  }
  expect(short).toBeGreaterThan(10);
});

test("epley1985: on average about 30 (maximum / load − 1), less the half that is not counted", () => {
  const world = { ...WORLDS[0]!, daySd: [0, 0] as const };
  const off = Array.from({ length: 400 }, (_, index) => {
    const one = lifter(world, 3, index);
    const loadKg = (one.maximum(7) * 30) / 40;
    return mostReps(world, 3, index)(7, { loadKg, sets: 1 })[0]! - 9.5;
  });
  expect(Math.abs(off.reduce((sum, each) => sum + each, 0) / off.length)).toBeLessThan(0.2);
});
