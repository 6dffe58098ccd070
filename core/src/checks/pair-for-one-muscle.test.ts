import { expect, test } from "vitest";
import type { Block } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { pairForOneMuscle } from "./pair-for-one-muscle.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "bench", name: "Bench", muscles: { chest: 1, triceps: 0.5 } }),
  madeUpExercise({ id: "fly", name: "Fly", muscles: { chest: 1 } }),
  madeUpExercise({ id: "row", name: "Row", muscles: { lats: 1 } }),
  madeUpExercise({ id: "press-down", name: "Press-down", muscles: { triceps: 1 } }),
]);
const slot = (first: string) => madeUpSlot(first, "squat", sets(3, reps(8)));
const doc = (...work: readonly Block[]) => ({ programme: madeUpProgramme([madeUpSession("a", 60, work)]), catalogue });
const AT = [["phases", 0, "sessions", 0, "work", 0]];

testCheck(pairForOneMuscle, {
  fine: {
    "two muscles": doc({ pair: [slot("bench"), slot("row")] }),
    "one only helps": doc({ pair: [slot("bench"), slot("press-down")] }),
    "one after the other": doc(slot("bench"), slot("fly")),
    "an exercise that nobody knows": doc({ pair: [slot("bench"), slot("moonwalk")] }),
  },
  bad: {
    "the same muscle": {
      doc: doc({ pair: [slot("bench"), slot("fly")], restS: 60 }),
      at: AT,
      data: [{ slot: "bench", muscles: ["chest"], names: ["Bench", "Fly"] }],
    },
    "in a round": {
      doc: doc({ round: [slot("bench"), slot("row"), slot("fly")] }),
      at: AT,
      data: [{ muscles: ["chest"], names: ["Bench", "Row", "Fly"] }],
    },
  },
});

test("the remedy does them one after the other, each with the rest of the pair", () => {
  const input = doc({ pair: [slot("bench"), slot("fly")], restS: 60 }, slot("row"));
  const [cure] = pairForOneMuscle.run(lookAt(input))[0]!.cures!();
  const after = changed(input.programme, cure!.changes).phases[0]!.sessions[0]!.work;
  expect(after).toMatchObject([
    { slot: "bench", dose: { restS: 60 } },
    { slot: "fly", dose: { restS: 60 } },
    { slot: "row" },
  ]);
});
