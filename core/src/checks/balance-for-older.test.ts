import { day } from "../day.ts";
import type { Person, WarmUp } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { balanceForOlder } from "./balance-for-older.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "press", pattern: "horizontal push" }),
  madeUpExercise({ id: "split", pattern: "single leg", stress: { balance: 1 } }),
  madeUpExercise({ id: "stand", pattern: "balance", amounts: "time" }),
]);
const OLD = { born: day("1962-03-01") };
const doc = (firsts: readonly string[], person: Partial<Person> = OLD, warmup: readonly WarmUp[] = []) => ({
  programme: madeUpProgramme(
    firsts.map((first, index) =>
      madeUpSession(`s${index}`, 60, [madeUpSlot(first, "squat", sets(2, reps(8)), { slot: `k${index}` })], { warmup }),
    ),
  ),
  catalogue,
  person: madeUpPerson(person),
  on: day("2027-03-01"),
});
const AT = [["phases", 0]];

// From 65 on, balance and strength on three days a week or more: who2020.
testCheck(balanceForOlder, {
  fine: {
    "three days": doc(["split", "split", "split"]),
    "by the warm-up": doc(["press", "press", "press"], OLD, [{ do: "stand", dose: sets(1, timeOf(60)) }]),
    "none, at 64": { ...doc(["press"]), on: day("2027-02-28") },
    "none, nobody named": { programme: doc(["press"]).programme, catalogue, on: day("2027-03-01") },
    "none, and no day": { programme: doc(["press"]).programme, catalogue, person: madeUpPerson(OLD) },
  },
  bad: {
    none: { doc: doc(["press", "press"]), at: AT, data: [{ days: 0, least: 3, age: 65 }], severity: ["warn"] },
    two: { doc: doc(["split", "press", "split"]), at: AT, data: [{ days: 2 }], severity: ["note"] },
    "three, of which two can be done": {
      doc: doc(["split", "split", "split"], { ...OLD, perWeek: 2 }),
      at: AT,
      data: [{ days: 2 }],
    },
  },
});
