import { expect, test } from "vitest";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { manySetsAtOnce } from "./many-sets-at-once.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "bench", name: "Bench", muscles: { chest: 1, triceps: 0.5 } }),
  madeUpExercise({ id: "fly", name: "Fly", muscles: { chest: 1 } }),
]);
const slot = (first: string, count: number, key = first, more = {}) =>
  madeUpSlot(first, "horizontal push", sets(count, reps(8)), { slot: key, ...more });
const doc = (...days: readonly (readonly ReturnType<typeof slot>[])[]) => ({
  programme: madeUpProgramme([], {
    phases: [madeUpPhase(days.map((work, index) => madeUpSession("ab"[index]!, 90, work)))],
  }),
  catalogue,
});
const later = { changes: [{ week: 3, dose: sets(6, reps(8)) }] };

// "About ten sets per muscle and session": iusca2021, as reported.
testCheck(manySetsAtOnce, {
  fine: {
    "ten sets": doc([slot("bench", 5), slot("fly", 5)]),
    "twelve, over two sessions": doc([slot("bench", 6)], [slot("fly", 6)]),
    "twenty, for a muscle that helps": doc([slot("bench", 10)]),
  },
  bad: {
    "eleven sets": {
      doc: doc([slot("bench", 5), slot("fly", 6)]),
      at: [["phases", 0, "sessions", 0]],
      data: [{ session: "a", muscle: "chest", sets: 11, most: 10, week: 1 }],
    },
    "in a later week": {
      doc: doc([slot("fly", 2)], [slot("bench", 5), slot("fly", 5, "fly-b", later)]),
      at: [["phases", 0, "sessions", 1]],
      data: [{ session: "b", muscle: "chest", sets: 11, week: 3 }],
    },
  },
});

test("the remedy takes sets away in that session alone", () => {
  const input = doc([slot("bench", 6), slot("fly", 7)], [slot("fly", 4, "fly-b")]);
  const [cure] = manySetsAtOnce.run(lookAt(input))[0]!.cures!();
  expect(cure?.data["slots"]).toEqual([
    { slot: "fly", name: "Fly", from: 7, to: 5 },
    { slot: "bench", name: "Bench", from: 6, to: 5 },
  ]);
  const after = changed(input.programme, cure!.changes);
  expect(manySetsAtOnce.run(lookAt({ ...input, programme: after }))).toEqual([]);
  expect(after.phases[0]!.sessions[1]).toBe(input.programme.phases[0]!.sessions[1]);
});
