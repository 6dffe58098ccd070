import { expect, test } from "vitest";
import type { Dose } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { holdOutsideRange } from "./hold-outside-range.ts";
import { lookAt } from "./run/look.ts";

const plank = { id: "plank", name: "Plank", pattern: "anti-extension", amounts: "hold", mode: "hold" } as const;
const catalogue = madeUpCatalogue([
  madeUpExercise({ ...plank, hold: { from: 10, to: 60, step: 5 } }),
  madeUpExercise({ id: "squat" }),
]);
const doc = (dose: Dose, first = "plank", changes?: readonly { week: number; dose: Dose }[]) => ({
  programme: madeUpProgramme([
    madeUpSession("a", 45, [madeUpSlot(first, "anti-extension", dose, changes === undefined ? {} : { changes })]),
  ]),
  catalogue,
});
const AT = ["phases", 0, "sessions", 0, "work", 0, "dose"];

testCheck(holdOutsideRange, {
  fine: {
    "both ends of the range": doc(sets(2, hold({ from: 10, to: 60 }))),
    "a form without a range": doc(sets(2, hold(300)), "squat"),
    repetitions: doc(sets(2, reps(90))),
    "nobody knows it": doc(sets(2, hold(300)), "moonwalk"),
  },
  bad: {
    "a second over": {
      doc: doc(sets(2, hold(61))),
      at: [AT],
      data: [{ exercise: "plank", asked: { from: 61, to: 61 }, range: { from: 10, to: 60 } }],
    },
    "a second under": {
      doc: doc(sets(2, hold({ from: 9, to: 20 }))),
      at: [AT],
      data: [{ asked: { from: 9, to: 20 } }],
    },
    "a change within the phase": {
      doc: doc(sets(2, hold(30)), "plank", [{ week: 3, dose: sets(2, hold(90)) }]),
      at: [["phases", 0, "sessions", 0, "work", 0, "changes", 0, "dose"]],
      data: [{ fromWeek: 3 }],
    },
  },
});

test("the remedy moves both ends into the range and leaves the rest", () => {
  const asked = { sets: [...sets(1, hold({ from: 5, to: 90 })).sets, ...sets(1, hold(30)).sets], restS: 45 };
  const [cure] = holdOutsideRange.run(lookAt(doc(asked)))[0]!.cures!();
  expect(cure!.data).toEqual({ from: "5–90 s, 30 s, rest 45 s", to: "10–60 s, 30 s, rest 45 s" });
});
