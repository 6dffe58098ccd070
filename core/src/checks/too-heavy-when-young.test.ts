import { expect, test } from "vitest";
import { day } from "../day.ts";
import type { SetDose, Status } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  testCheck,
} from "../testing/index.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";
import { tooHeavyWhenYoung } from "./too-heavy-when-young.ts";

const left = (from: number) => ({ reserve: { from, to: from } });
const doc = (set: SetDose, status: Status = "novice", born = "2010-06-01") => ({
  programme: madeUpProgramme([madeUpSession("a", 60, [madeUpSlot("squat", "squat", { sets: [set, set] })])]),
  catalogue: madeUpCatalogue([madeUpExercise({ id: "squat", name: "Squat" })]),
  person: madeUpPerson({ status, born: day(born) }),
  on: day("2027-03-01"),
});
const AT = [["phases", 0, "sessions", 0, "work", 0, "dose"]];
const all: SetDose = { amount: { kind: "most" }, eachSide: false };

// Up to 60 % while they learn: lloyd2014, as restated.
testCheck(tooHeavyWhenYoung, {
  fine: {
    "60 % while new": doc(reps(8, { percent: 60, ...left(2) })),
    "79 % afterwards": doc(reps(8, { percent: 79, ...left(2) }), "intermediate"),
    "no share and no reserve said": doc(reps(8)),
    "as many as possible, two left": doc({ ...all, ...left(2) }),
    "90 %, on the eighteenth birthday": doc(reps(3, { percent: 90 }), "novice", "2009-03-01"),
    "90 %, nobody named": { ...doc(reps(3, { percent: 90 })), person: undefined as never },
    "90 %, and no day": { ...doc(reps(3, { percent: 90 })), on: undefined as never },
  },
  bad: {
    "61 % while new": {
      doc: doc(reps(8, { percent: 61, ...left(2) })),
      at: AT,
      data: [{ side: "share", percent: 61, most: 60, age: 16 }],
    },
    "80 % afterwards": {
      doc: doc(reps(8, { percent: 80, ...left(2) }), "advanced"),
      at: AT,
      data: [{ side: "share", most: 79 }],
    },
    "one left": { doc: doc(reps(8, left(1))), at: AT, data: [{ side: "limit", left: 2, percent: 0 }] },
    "as many as possible": { doc: doc(all), at: AT, data: [{ side: "limit" }] },
    "90 %, the day before the birthday": {
      doc: doc(reps(3, { percent: 90 }), "novice", "2009-03-02"),
      at: AT,
      data: [{ age: 17 }],
    },
  },
});

test("the remedy lowers the share and leaves two; as many as possible has none", () => {
  const input = doc(reps(5, { percent: 85, reserve: { from: 0, to: 3 } }));
  const [cure] = tooHeavyWhenYoung.run(lookAt(input))[0]!.cures!();
  const after = changed(input.programme, cure!.changes);
  expect(after.phases[0]!.sessions[0]!.work[0]).toMatchObject({
    dose: { sets: [{ percent: 60, reserve: { from: 2, to: 3 } }, { percent: 60 }] },
  });
  expect(tooHeavyWhenYoung.run(lookAt({ ...input, programme: after }))).toEqual([]);
  expect(tooHeavyWhenYoung.run(lookAt(doc(all)))[0]!.cures!()).toEqual([]);
});
