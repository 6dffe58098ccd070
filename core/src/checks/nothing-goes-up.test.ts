import { expect, test } from "vitest";
import type { Slot } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { nothingGoesUp } from "./nothing-goes-up.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const stay = { way: "stay" } as const;
const squat = madeUpSlot("squat", "squat", sets(3, reps(8)), stay);
const plank = madeUpSlot("plank", "anti-extension", sets(2, hold(20)), stay);
const doc = (work: readonly Slot[], weeks = 4) => ({
  programme: madeUpProgramme([], { phases: [madeUpPhase([madeUpSession("a", 60, work)], { weeks })] }),
  catalogue: madeUpCatalogue([]),
});
const walk = { conditioning: [{ do: "walk", dose: sets(1, timeOf(600)), effort: "easy" as const }] };

testCheck(nothingGoesUp, {
  fine: {
    "one of the slots goes up": doc([squat, { ...plank, way: "hold time" }]),
    "one of the doses changes": doc([{ ...squat, changes: [{ week: 3, dose: sets(4, reps(8)) }] }, plank]),
    "three weeks": doc([squat, plank], 3),
    "no slots": { ...doc([]), programme: madeUpProgramme([madeUpSession("a", 60, [], walk)]) },
  },
  bad: {
    "four weeks of the same": {
      doc: doc([squat, plank]),
      at: [["phases", 0]],
      data: [{ phase: "one", weeks: 4, slots: 2 }],
    },
  },
});

test("the remedy lets each slot go up in the usual way of its dose", () => {
  const input = doc([squat, plank]);
  const [cure] = nothingGoesUp.run(lookAt(input))[0]!.cures!();
  const after = changed(input.programme, cure!.changes);
  expect(after.phases[0]!.sessions[0]!.work).toMatchObject([{ way: "reps then load" }, { way: "hold time" }]);
});

test("where every dose stays by nature there is no remedy", () => {
  const walkSlot = madeUpSlot("walk", "locomotion", sets(1, timeOf(600)), stay);
  expect(nothingGoesUp.run(lookAt(doc([walkSlot])))[0]!.cures!()).toEqual([]);
});
