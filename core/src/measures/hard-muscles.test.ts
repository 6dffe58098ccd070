import { expect, test } from "vitest";
import { madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import type { AskedSession } from "./asked-session.ts";
import { directSets, hardMuscles } from "./hard-muscles.ts";

const CATALOGUE = madeUpCatalogue([
  madeUpExercise({ id: "squat", muscles: { "front thigh": 1, "low back": 0.5 } }),
  madeUpExercise({ id: "curl", pattern: "upper isolation", muscles: { biceps: 1 } }),
]);

function session(...work: readonly (readonly [string, number, number?])[]): AskedSession {
  return {
    warmup: [],
    blocks: work.map(([exercise, count, reserve]) => ({
      kind: "straight",
      slots: [
        {
          exercise,
          dose: sets(count, reps(8, reserve === undefined ? {} : { reserve: { from: reserve, to: reserve } })),
        },
      ],
    })),
    conditioning: [],
  };
}

test("three direct sets near the limit load a muscle hard; helping never does", () => {
  expect(hardMuscles(session(["squat", 3, 3]), CATALOGUE)).toEqual(["front thigh"]);
  expect(hardMuscles(session(["squat", 2, 3]), CATALOGUE)).toEqual([]);
  expect(hardMuscles(session(["squat", 3, 4]), CATALOGUE)).toEqual([]);
});

test("a reserve that is not said counts as hard", () => {
  expect(hardMuscles(session(["squat", 3]), CATALOGUE)).toEqual(["front thigh"]);
});

test("sets of several slots add up", () => {
  expect(directSets(session(["squat", 2, 4], ["squat", 1, 1]), CATALOGUE).get("front thigh")).toEqual({
    direct: 3,
    near: 1,
  });
});
