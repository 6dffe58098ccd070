import { describe, expect, test } from "vitest";
import type { Exercise, ExerciseId } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise } from "../testing/index.ts";
import { CATALOGUE } from "./catalogue.ts";
import { gateOf } from "./gate.ts";

const gate = (from: ExerciseId, to: ExerciseId) => gateOf(CATALOGUE, { from, to, branch: "main" });

describe("a form's own count replaces the usual amount, from the form it names", () => {
  test.each([
    ["push-up-30", "floor-push-up", 1, "reps", 10],
    ["knee-plank", "forearm-plank", 3, "hold", 30],
    ["dead-hang", "hang-blades-down", 1, "hold", 20],
    ["low-box-jump", "jump-squat", 1, "contacts", 15],
    ["lowering-pull-up", "chin-up", 1, "reps", 5],
  ] as const)("%s to %s: %i × %s %i", (from, to, sets, kind, value) => {
    expect(gate(from, to)).toMatchObject({ of: from, own: true, sets, amount: { kind, value } });
  });
});

describe("over another step the usual amount holds, with every condition", () => {
  test.each([
    // The count is of push-ups from 30 cm; who comes over the knees shows three sets there.
    ["knee-push-up", "floor-push-up", "reps", 12],
    ["counter-push-up", "push-up-60", "reps", 12],
    ["dumbbell-rdl", "barbell-rdl", "reps", 8],
    ["inverted-row-60", "inverted-row-75", "reps", 12],
    ["inverted-row-75", "inverted-row-knees-bent", "reps", 8],
    ["pull-up", "uneven-pull-up", "reps", 8],
    ["carry-two-hand", "hex-bar-carry", "metres", 30],
    ["loaded-march", "carry-two-hand", "time", 30],
    ["snap-down", "low-box-jump", "contacts", 5],
    ["wall-side-plank", "side-plank-knees", "hold", 45],
    ["ring-support-hold", "ring-dip", "hold", 30],
  ] as const)("%s to %s: 3 × %s %i", (from, to, kind, value) => {
    expect(gate(from, to)).toMatchObject({ of: from, own: false, sets: 3, amount: { kind, value } });
    expect(gate(from, to).conditions).toEqual(CATALOGUE.exercises.get(to)?.need.conditions);
  });
});

test("every step of every ladder has an amount: what follows a lowering-only form counts its lowerings", () => {
  const steps = CATALOGUE.ladders.flatMap((ladder) => ladder.steps);
  expect(steps.filter((step) => gateOf(CATALOGUE, step).amount === undefined)).toEqual([]);
});

test("a lowering-only form never uses the usual amount", () => {
  const lower: Exercise = madeUpExercise({ id: "lower", lowering: true });
  const catalogue = madeUpCatalogue([lower, madeUpExercise({ id: "next" })], []);
  expect(gateOf(catalogue, { from: "lower", to: "next", branch: "main" }).amount).toBeUndefined();
});

test("a form that is not there is refused, by name", () => {
  expect(() => gate("nowhere", "floor-push-up")).toThrow("nowhere → floor-push-up");
  expect(() => gate("floor-push-up", "nowhere")).toThrow(RangeError);
});
