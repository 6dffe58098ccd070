import { expect, test } from "vitest";
import type { SetDose } from "../model/index.ts";
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

test("four in reserve still count, of a range the middle, and a reserve that is not said", () => {
  const squats = (...dose: readonly SetDose[]) =>
    balance(
      [
        {
          warmup: [],
          blocks: [{ kind: "straight", slots: [{ exercise: "squat", dose: { sets: dose } }] }],
          conditioning: [],
        },
      ],
      CATALOGUE,
    ).squatAndSingleLeg / 4;
  const left = (from: number, to: number) => reps(8, { reserve: { from, to } });
  expect(squats(left(4, 4))).toBe(1);
  expect(squats(left(3, 5))).toBe(1);
  expect(squats(left(4, 5))).toBe(0);
  expect(squats(reps(8), left(6, 6), reps(8))).toBe(2);
});

test("half a set that a movement also counts for is enough to train a direction of the trunk", () => {
  expect(balance(week(["carry", 1]), CATALOGUE).trunkDirections).toEqual(["anti-lateral flexion"]);
  expect(balance(week(["plank", 1]), CATALOGUE).trunkDirections).toEqual(["anti-extension"]);
  expect(balance(week(["plank", 1, 5]), CATALOGUE).trunkDirections).toEqual([]);
});
