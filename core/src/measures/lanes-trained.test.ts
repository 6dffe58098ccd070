import { expect, test } from "vitest";
import { madeUpCatalogue, madeUpExercise, reps, sets, timeOf } from "../testing/index.ts";
import type { AskedSession, AskedSlot } from "./asked-session.ts";
import { lanesTrained } from "./lanes-trained.ts";

const CATALOGUE = madeUpCatalogue([
  madeUpExercise({ id: "squat", pattern: "squat" }),
  madeUpExercise({ id: "bridge", pattern: "bridge" }),
  madeUpExercise({ id: "curl", pattern: "upper isolation" }),
  madeUpExercise({ id: "walk", pattern: "locomotion" }),
]);

function session(slots: readonly AskedSlot[], conditioning: AskedSession["conditioning"] = []): AskedSession {
  return { warmup: [], blocks: slots.map((slot) => ({ kind: "straight", slots: [slot] })), conditioning };
}

test("sets and sessions of every lane, practice sets too; nothing trained is zero", () => {
  const easy = reps(8, { reserve: { from: 6, to: 6 } });
  const lanes = lanesTrained(
    [
      session([
        { exercise: "squat", dose: sets(3, easy) },
        { exercise: "squat", dose: sets(1, easy) },
      ]),
      session([
        { exercise: "squat", dose: sets(2, easy) },
        { exercise: "bridge", dose: sets(2, easy) },
      ]),
    ],
    CATALOGUE,
  );
  expect(lanes.squat).toEqual({ sets: 6, sessions: 2 });
  expect(lanes.hinge).toEqual({ sets: 2, sessions: 1 });
  expect(lanes.pull).toEqual({ sets: 0, sessions: 0 });
});

test("isolation trains no lane, conditioning trains its own", () => {
  const lanes = lanesTrained(
    [session([{ exercise: "curl", dose: sets(3, reps(8)) }], [{ exercise: "walk", dose: sets(1, timeOf(600)) }])],
    CATALOGUE,
  );
  expect(Object.entries(lanes).filter(([, work]) => work.sets > 0)).toEqual([
    ["carry or conditioning", { sets: 1, sessions: 1 }],
  ]);
});

test("an exercise that is not known counts by what its slot is for", () => {
  const lanes = lanesTrained(
    [session([{ exercise: "moonwalk", dose: sets(2, reps(8)), pattern: "hinge" }])],
    CATALOGUE,
  );
  expect(lanes.hinge.sets).toBe(2);
});
