import { day } from "../day.ts";
import type { Person, SetDose } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  testCheck,
} from "../testing/index.ts";
import { pastDoseLimits } from "./past-dose-limits.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", name: "Squat", loadMeaning: "total" }),
  madeUpExercise({ id: "plank", name: "Plank", amounts: "hold", mode: "hold" }),
]);
const left = (from: number) => ({ reserve: { from, to: from } });
const SCREENED = {
  outcome: "no reason found",
  on: day("2027-01-01"),
  until: day("2027-12-31"),
  by: "the coach",
} as const;
const PRESSURE = {
  cautions: [{ statement: "pressure", from: day("2027-01-01"), recheck: day("2027-06-01"), who: "Dr Example" }],
  screening: SCREENED,
} as const;
const doc = (doses: readonly (readonly [first: string, set: SetDose])[], said: Partial<Person> = PRESSURE) => ({
  programme: madeUpProgramme([
    madeUpSession(
      "a",
      60,
      doses.map(([first, set], index) => madeUpSlot(first, "squat", { sets: [set] }, { slot: `k${index}` })),
    ),
  ]),
  catalogue,
  person: madeUpPerson(said),
  on: day("2027-03-01"),
});
const AT = [["phases", 0]];

// Pressure: at most 70 %, two left, holds of 20 s (the table of cautions, our own).
testCheck(pastDoseLimits, {
  fine: {
    "just within": doc([
      ["squat", reps(8, { percent: 70, ...left(2) })],
      ["plank", hold(20)],
    ]),
    "where nothing is said of what is left the plan adds it": doc([["squat", reps(8)]]),
    "no condition": doc([["squat", reps(8, { percent: 90, ...left(2) })]], { screening: SCREENED }),
    "nobody named": { ...doc([["plank", hold(60)]]), person: undefined as never },
    "and no day": { ...doc([["plank", hold(60)]]), on: undefined as never },
  },
  bad: {
    "a share": {
      doc: doc([["squat", reps(8, { percent: 71, ...left(2) })]]),
      at: AT,
      data: [{ percent: 70, reserve: 2, holdS: 20, doses: [{ name: "Squat", dose: "1 × 8 @71 %, 2 in reserve" }] }],
    },
    "what is left": { doc: doc([["squat", reps(8, left(1))]]), at: AT, data: [{ doses: [{ name: "Squat" }] }] },
    "seconds of a hold": {
      doc: doc([["plank", hold(21)]]),
      at: AT,
      data: [{ doses: [{ name: "Plank", dose: "1 × 21 s" }] }],
    },
    "the same dose twice is told once": {
      doc: doc([
        ["plank", hold(60)],
        ["plank", hold(60)],
        ["plank", hold(45)],
      ]),
      at: AT,
      data: [{ doses: [{ dose: "1 × 60 s" }, { dose: "1 × 45 s" }] }],
    },
  },
});
