import { day } from "../day.ts";
import type { Person } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
  timeOf,
} from "../testing/index.ts";
import { strengthOnce } from "./strength-once.ts";

const run = { conditioning: [{ do: "run", dose: sets(1, timeOf(1800)), effort: "easy" as const }] };
const doc = (lifting: number, person?: Partial<Person>, running = 0) => ({
  programme: madeUpProgramme([
    ...Array.from({ length: lifting }, (_, index) =>
      madeUpSession(`l${index}`, 60, [madeUpSlot("squat", "squat", sets(2, reps(8)), { slot: `s${index}` })]),
    ),
    ...Array.from({ length: running }, (_, index) => madeUpSession(`r${index}`, 60, [], run)),
  ]),
  catalogue: madeUpCatalogue([]),
  ...(person === undefined ? {} : { person: madeUpPerson(person), on: day("2027-03-01") }),
});
const AT = [["phases", 0]];
const OLD = { born: day("1962-03-01") };

// Strengthening on two days a week or more, for adults and for older people: who2020.
testCheck(strengthOnce, {
  fine: {
    "two days": doc(2, {}),
    "one day and nobody named": doc(1),
    "a person without a day": { ...doc(1), person: madeUpPerson() },
  },
  bad: {
    "one day": { doc: doc(1, {}, 2), at: AT, data: [{ days: 1, least: 2, age: 40 }], severity: ["note"] },
    "three, of which one can be done": { doc: doc(3, { perWeek: 1 }), at: AT, data: [{ days: 1 }] },
    "at 65 it warns": { doc: doc(1, OLD), at: AT, data: [{ age: 65 }], severity: ["warn"] },
    "the day before it does not": {
      doc: { ...doc(1, OLD), on: day("2027-02-28") },
      at: AT,
      data: [{ age: 64 }],
      severity: ["note"],
    },
  },
});
