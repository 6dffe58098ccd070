import { day } from "../day.ts";
import type { Slot } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { powerForOlder } from "./power-for-older.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "stand-up" }),
  madeUpExercise({ id: "throw", pattern: "throw", mode: "ballistic" }),
]);
const OLD = { born: day("1962-03-01") };
const slot = (first: string, more = {}) => madeUpSlot(first, "squat", sets(2, reps(8), more));
const run = { conditioning: [{ do: "run", dose: sets(1, timeOf(1800)), effort: "easy" as const }] };
const doc = (...work: readonly Slot[]) => ({
  programme: madeUpProgramme([madeUpSession("a", 60, work, work.length === 0 ? run : {})]),
  catalogue,
  person: madeUpPerson(OLD),
  on: day("2027-03-01"),
});

testCheck(powerForOlder, {
  fine: {
    "a throw": doc(slot("stand-up"), slot("throw")),
    "lifted as fast as it goes": doc(slot("stand-up", { tempo: [3, 0, 0, 0] })),
    "no work at all": doc(),
    "at 64": { ...doc(slot("stand-up")), on: day("2027-02-28") },
    "nobody named": { programme: doc(slot("stand-up")).programme, catalogue, on: day("2027-03-01") },
    "no day": { programme: doc(slot("stand-up")).programme, catalogue, person: madeUpPerson(OLD) },
  },
  bad: {
    "beside days of running alone": {
      doc: {
        ...doc(),
        programme: madeUpProgramme([madeUpSession("a", 60, [slot("stand-up")]), madeUpSession("b", 60, [], run)]),
      },
      at: [["phases", 0]],
      data: [{ age: 65 }],
    },
    "in the other phase alone": {
      doc: {
        ...doc(),
        programme: madeUpProgramme([], {
          phases: [
            madeUpPhase([madeUpSession("a", 60, [slot("throw")])]),
            madeUpPhase([madeUpSession("a", 60, [slot("stand-up", { slot: "b" })])], { key: "two" }),
          ],
        }),
      },
      at: [["phases", 1]],
      data: [{ phase: "two" }],
    },
    none: { doc: doc(slot("stand-up")), at: [["phases", 0]], data: [{ phase: "one", age: 65 }] },
    "a tempo that lifts slowly": {
      doc: doc(slot("stand-up", { tempo: [0, 0, 2, 0] })),
      at: [["phases", 0]],
      data: [{ age: 65 }],
    },
  },
});
