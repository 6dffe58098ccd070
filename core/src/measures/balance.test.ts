import { expect, test } from "vitest";
import { madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import type { AskedSession } from "./asked-session.ts";
import { balance } from "./balance.ts";

const CATALOGUE = madeUpCatalogue([
  madeUpExercise({ id: "squat", pattern: "squat" }),
  madeUpExercise({ id: "step-up", pattern: "single leg" }),
  madeUpExercise({ id: "hex", pattern: "hinge", alsoCounts: "squat" }),
  madeUpExercise({ id: "press", pattern: "vertical push" }),
  madeUpExercise({ id: "row", pattern: "horizontal pull" }),
  madeUpExercise({ id: "plank", pattern: "anti-extension" }),
  madeUpExercise({ id: "carry", pattern: "carry", alsoCounts: "anti-lateral flexion" }),
]);

function week(...work: readonly (readonly [string, number, number?])[]): readonly AskedSession[] {
  const slots = work.map(([exercise, count, reserve = 2]) => ({
    exercise,
    dose: sets(count, reps(8, { reserve: { from: reserve, to: reserve } })),
  }));
  return [{ warmup: [], blocks: [{ kind: "round", slots }], conditioning: [] }];
}

test("a set counts for its pattern and half for the one it also counts for", () => {
  const numbers = balance(
    week(["squat", 3], ["step-up", 2], ["hex", 3], ["press", 3], ["row", 4], ["plank", 2], ["carry", 2]),
    CATALOGUE,
  );
  expect(numbers).toEqual({
    squatAndSingleLeg: 26,
    hingeAndBridge: 12,
    push: 12,
    pull: 16,
    trunkDirections: ["anti-extension", "anti-lateral flexion"],
  });
});

test("sets far from the limit and exercises that are not known are left out", () => {
  expect(balance(week(["squat", 3, 5], ["moonwalk", 3]), CATALOGUE).squatAndSingleLeg).toBe(0);
});
