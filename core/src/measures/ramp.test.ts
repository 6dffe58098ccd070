import { expect, test } from "vitest";
import { madeUpExercise } from "../testing/index.ts";
import { rampDose, rampOf } from "./ramp.ts";

const squat = madeUpExercise({ id: "squat", loadMeaning: "total" });

test("lighter sets are fives with a short rest", () => {
  expect(rampOf(squat, 2)).toEqual(rampDose(2));
  expect(rampDose(2).sets.map((set) => set.amount)).toEqual([
    { kind: "reps", span: { from: 5, to: 5 } },
    { kind: "reps", span: { from: 5, to: 5 } },
  ]);
  expect(rampDose(1).restS).toBe(45);
});

test("one-sided work is led up to on each side", () => {
  expect(rampOf({ ...squat, eachSide: true }, 1)?.sets[0]?.eachSide).toBe(true);
});

test("nothing to make lighter, nothing to lead up with", () => {
  for (const loadMeaning of ["body only", "band", "height", "none", "assist"] as const) {
    expect(rampOf({ ...squat, loadMeaning }, 2)).toBeUndefined();
  }
  expect(rampOf({ ...squat, amounts: "hold" }, 2)).toBeUndefined();
  expect(rampOf(squat, 0)).toBeUndefined();
});
