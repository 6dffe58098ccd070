import { expect, test } from "vitest";
import { madeUpCatalogue, madeUpExercise } from "../testing/index.ts";
import { harderForms } from "./harder-forms.ts";

const form = (id: string) => madeUpExercise({ id });
const catalogue = madeUpCatalogue(
  [
    form("wall"),
    form("bench"),
    { ...form("floor"), need: { count: { of: "bench", reps: 10, sets: 2 }, conditions: ["flat hands"] } },
    form("side"),
  ],
  [
    {
      id: "push",
      name: "Push",
      start: "wall",
      steps: [
        { from: "wall", to: "bench", branch: "main" },
        { from: "bench", to: "floor", branch: "main" },
        { from: "bench", to: "side", branch: "side" },
      ],
    },
  ],
);

test("each form one step harder, with its own gate or the usual one", () => {
  expect(harderForms(catalogue, "bench")).toEqual([
    {
      exercise: "floor",
      gate: { of: "bench", own: true, sets: 2, amount: { kind: "reps", value: 10 }, conditions: ["flat hands"] },
    },
    {
      exercise: "side",
      gate: { of: "bench", own: false, sets: 3, amount: { kind: "reps", value: 12 }, conditions: [] },
    },
  ]);
});

test("two steps up is not one, and the hardest has none above it", () => {
  expect(harderForms(catalogue, "wall").map(({ exercise }) => exercise)).toEqual(["bench"]);
  expect(harderForms(catalogue, "floor")).toEqual([]);
});
