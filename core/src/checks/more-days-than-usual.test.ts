import type { Status } from "../model/index.ts";
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
import { moreDaysThanUsual } from "./more-days-than-usual.ts";

const week = (count: number, status: Status, runs = 0) => ({
  programme: madeUpProgramme(
    [
      ...Array.from({ length: count }, (_, index) =>
        madeUpSession(`s${index}`, 60, [madeUpSlot("squat", "squat", sets(3, reps(8)), { slot: `k${index}` })]),
      ),
      ...Array.from({ length: runs }, (_, index) =>
        madeUpSession(`r${index}`, 60, [], {
          conditioning: [{ do: "run", dose: sets(1, timeOf(1800)), effort: "easy" }],
        }),
      ),
    ],
    { status },
  ),
  catalogue: madeUpCatalogue([]),
});
const AT = [["phases", 0]];

// acsm2009: 2–3, 3–4, 4–5; haffTriplett2016: 2–3, 3–4, 4–7.
testCheck(moreDaysThanUsual, {
  fine: {
    "three days of a novice": week(3, "novice"),
    "and runs besides": week(3, "novice", 3),
    "four of an intermediate": week(4, "intermediate"),
    "seven of an advanced person": week(7, "advanced"),
    "five, done by somebody who comes three times": { ...week(5, "novice"), person: madeUpPerson({ perWeek: 3 }) },
    "five, done by an advanced person": { ...week(5, "novice"), person: madeUpPerson({ status: "advanced" }) },
  },
  bad: {
    "four of a novice": { doc: week(4, "novice"), at: AT, data: [{ days: 4, most: 3, status: "novice" }] },
    "five of an intermediate": { doc: week(5, "intermediate"), at: AT, data: [{ days: 5, most: 4 }] },
    "four, by somebody who is new": {
      doc: { ...week(4, "advanced"), person: madeUpPerson({}) },
      at: AT,
      data: [{ days: 4, most: 3, status: "novice" }],
    },
  },
});
