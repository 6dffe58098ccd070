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
} from "../testing/index.ts";
import { tooOftenWhenYoung } from "./too-often-when-young.ts";

const doc = (count: number, said: Partial<Person> = {}) => ({
  programme: madeUpProgramme(
    Array.from({ length: count }, (_, index) =>
      madeUpSession(`s${index}`, 60, [madeUpSlot("squat", "squat", sets(2, reps(8)), { slot: `k${index}` })]),
    ),
  ),
  catalogue: madeUpCatalogue([]),
  person: madeUpPerson({ born: day("2010-06-01"), ...said }),
  on: day("2027-03-01"),
});

// Two or three days a week, none next to another: lloyd2014, as restated.
testCheck(tooOftenWhenYoung, {
  fine: {
    "three days": doc(3),
    "four, of which three can be done": doc(4, { perWeek: 3 }),
    "four, on the eighteenth birthday": doc(4, { born: day("2009-03-01") }),
    "four, nobody named": { ...doc(4), person: undefined as never },
    "four, and no day": { ...doc(4), on: undefined as never },
  },
  bad: {
    "four days": { doc: doc(4), at: [["phases", 0]], data: [{ days: 4, most: 3, age: 16 }] },
  },
});
