import { expect, test } from "vitest";
import { hold, madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import type { AskedSession, AskedSlot } from "./asked-session.ts";
import { nearSets } from "./near-sets.ts";

const CATALOGUE = madeUpCatalogue([
  madeUpExercise({ id: "bench", pattern: "horizontal push", muscles: { chest: 1, triceps: 0.5 } }),
  madeUpExercise({ id: "press-down", pattern: "upper isolation", muscles: { triceps: 1 } }),
  madeUpExercise({ id: "swing", pattern: "hinge", mode: "ballistic", muscles: { buttocks: 1 } }),
  madeUpExercise({ id: "plank", pattern: "anti-extension", mode: "hold", muscles: { "front trunk": 1 } }),
]);

function session(slots: readonly AskedSlot[]): AskedSession {
  return { warmup: [], blocks: [{ kind: "straight", slots }], conditioning: [] };
}
const counts = (...slots: readonly AskedSlot[]) => Object.fromEntries(nearSets(session(slots), CATALOGUE));
const left = (from: number, to = from) => reps(8, { reserve: { from, to } });

test("sets that a muscle drives and sets that it helps in, over all slots of the session", () => {
  const day = [
    { exercise: "bench", dose: sets(3, reps(8)) },
    { exercise: "press-down", dose: sets(2, reps(12)) },
    { exercise: "bench", dose: sets(1, reps(8)) },
  ];
  expect(counts(...day)).toEqual({ chest: { direct: 4, helping: 0 }, triceps: { direct: 2, helping: 4 } });
});

test("three in reserve are near the limit, more are not; of a range the middle counts; not said is near", () => {
  const bench = (set: ReturnType<typeof reps>) => counts({ exercise: "bench", dose: sets(2, set) })["chest"]?.direct;
  expect(bench(left(3))).toBe(2);
  expect(bench(left(2, 4))).toBe(2);
  expect(bench(left(3, 4))).toBeUndefined();
  expect(bench(reps(8))).toBe(2);
});

test("one set of several near the limit counts once", () => {
  expect(counts({ exercise: "bench", dose: { sets: [left(5), left(4), left(1)] } })["chest"]?.direct).toBe(1);
});

test("ballistic work, short holds and what nobody knows are left out", () => {
  expect(counts({ exercise: "swing", dose: sets(5, reps(10)) })).toEqual({});
  expect(counts({ exercise: "plank", dose: sets(3, hold(9)) })).toEqual({});
  expect(counts({ exercise: "plank", dose: sets(3, hold(10)) })).toEqual({ "front trunk": { direct: 3, helping: 0 } });
  expect(counts({ exercise: "moonwalk", dose: sets(3, reps(8)) })).toEqual({});
});
