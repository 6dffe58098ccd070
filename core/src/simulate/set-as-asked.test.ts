import { expect, test } from "vitest";
import { lifter } from "./lifter.ts";
import { doneInFull, isDone } from "./set-as-asked.ts";
import { WORLDS } from "./world.ts";

const ASKED = { loadKg: 45, reps: { from: 5, to: 7 }, reserve: 2, sets: 3 };

test("in full: three sets with their reserve, where the person leaves sets out or says nothing; what is written is the same", () => {
  const world = { ...WORLDS[0]!, hidesFailure: 0.7, reserveUnsaid: 0.5, slips: 0.1 };
  let [left, unsaid, slipped] = [0, 0, 0];
  for (let index = 0; index < 60; index++) {
    const written = lifter(world, 3, index).train(7, ASKED);
    const full = doneInFull(world, 3, index)(7, ASKED);
    expect(full).toHaveLength(3);
    for (const { loadKg, reserve } of full) expect([loadKg, typeof reserve]).toEqual([45, "number"]);
    left += 3 - written.length;
    if (written.length < 3) continue;
    for (const [set, { loadKg, reps, reserve }] of written.entries()) {
      expect(reps).toBe(full[set]!.reps);
      if (reserve !== undefined) expect(reserve).toBe(full[set]!.reserve);
      if (reserve === undefined) unsaid++;
      if (loadKg !== 45) slipped++;
    }
  }
  for (const count of [left, unsaid, slipped]) expect(count).toBeGreaterThan(5);
});

test("done: the bottom with the reserve asked for, or more repetitions than that", () => {
  const done = (reps: number, reserve: number) => isDone({ loadKg: 45, reps, reserve }, 5, ASKED);
  expect([done(5, 2), done(5, 3), done(6, 1)]).toEqual([true, true, true]);
  expect([done(5, 1), done(4, 4)]).toEqual([false, false]);
});
