import { expect, test } from "vitest";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { lookAt } from "./run/look.ts";
import { unknownExercise } from "./unknown-exercise.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "goblet-squat", name: "Goblet squat" }),
  madeUpExercise({ id: "cable-row", name: "Cable row", pattern: "horizontal pull" }),
  madeUpExercise({ id: "table-row", name: "Table row", pattern: "squat" }),
  madeUpExercise({ id: "cycle", name: "Cycle", pattern: "locomotion" }),
]);
const dose = sets(3, reps(8));
const session = (first: string, more: Parameters<typeof madeUpSession>[3] = {}) =>
  madeUpSession("a", 45, [madeUpSlot("goblet-squat", "squat", dose), madeUpSlot(first, "horizontal pull", dose)], more);
const doc = (...args: Parameters<typeof session>) => ({ programme: madeUpProgramme([session(...args)]), catalogue });
const minutes = sets(1, timeOf(300));

testCheck(unknownExercise, {
  fine: {
    "all known": doc("cable-row", { warmup: [{ do: "cycle", dose: minutes, or: ["goblet-squat"] }] }),
    "no session": { programme: madeUpProgramme([]), catalogue },
  },
  bad: {
    "a slip in a name": {
      doc: doc("cabel-row"),
      at: [["phases", 0, "sessions", 0, "work", 1, "first"]],
      data: [
        {
          slot: "cabel-row",
          exercise: "cabel-row",
          near: [{ id: "cable-row", name: "Cable row" }, { id: "table-row" }],
        },
      ],
    },
    "a name that nobody knows": {
      doc: doc("moonwalk"),
      at: [["phases", 0, "sessions", 0, "work", 1, "first"]],
      data: [{ exercise: "moonwalk", near: [] }],
    },
    "warm-up, what may stand for it, and conditioning": {
      doc: doc("cable-row", {
        warmup: [{ do: "cylce", dose: minutes, or: ["goblet-squat", "unicycle-nine"] }],
        conditioning: [{ do: "rope", dose: minutes, effort: "easy" }],
      }),
      at: [
        ["phases", 0, "sessions", 0, "warmup", 0, "do"],
        ["phases", 0, "sessions", 0, "warmup", 0, "or", 1],
        ["phases", 0, "sessions", 0, "conditioning", 0, "do"],
      ],
      data: [{ exercise: "cylce", near: [{ id: "cycle" }] }, { exercise: "unicycle-nine" }, { exercise: "rope" }],
    },
  },
});

test("each near name is a remedy, those of the slot's own pattern first", () => {
  const [found] = unknownExercise.run(lookAt(doc("cabel-row")));
  expect(found?.cures?.().map((cure) => cure.changes)).toEqual([
    [{ op: "set", at: ["phases", 0, "sessions", 0, "work", 1, "first"], value: "cable-row" }],
    [{ op: "set", at: ["phases", 0, "sessions", 0, "work", 1, "first"], value: "table-row" }],
  ]);
});
