import { expect, test } from "vitest";
import { day } from "../day.ts";
import type { SetDose, Statement } from "../model/index.ts";
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
import { breathHold } from "./breath-hold.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const caution = (statement: Statement) => ({
  statement,
  from: day("2027-01-01"),
  recheck: day("2027-06-01"),
  who: "Dr Example",
});
const left = (from: number) => ({ reserve: { from, to: from } });
const doc = (set: SetDose, statement: Statement = "pressure") => ({
  programme: madeUpProgramme([
    madeUpSession("a", 60, [madeUpSlot("squat", "squat", { sets: [reps(8, left(4)), set] })]),
  ]),
  catalogue: madeUpCatalogue([madeUpExercise({ id: "squat", name: "Squat", loadMeaning: "total" })]),
  person: madeUpPerson({ cautions: [caution(statement)] }),
  on: day("2027-03-01"),
});
const AT = [["phases", 0, "sessions", 0, "work", 0, "dose"]];

testCheck(breathHold, {
  fine: {
    "84 % with two left": doc(reps(3, { percent: 84, ...left(2) })),
    "nothing said": doc(reps(8)),
    "a hold is another matter": doc(hold(20, left(0))),
    "to the end, with a condition that leaves the breath free": doc(reps(8, left(0)), "knee"),
    "to the end, by somebody young, of whom another check speaks": {
      ...doc(reps(8, left(0))),
      person: madeUpPerson({ born: day("2010-01-01") }),
    },
    "before the condition began": { ...doc(reps(8, left(0))), on: day("2026-12-31") },
    "nobody named": { ...doc(reps(8, left(0))), person: undefined as never },
    "and no day": { ...doc(reps(8, left(0))), on: undefined as never },
  },
  bad: {
    "85 %": {
      doc: doc(reps(3, { percent: 85, ...left(2) })),
      at: AT,
      data: [{ name: "Squat", statements: ["pressure"] }],
    },
    "one left": { doc: doc(reps(8, left(1)), "hernia"), at: AT, data: [{ statements: ["hernia"] }] },
    "as many as possible": {
      doc: doc({ amount: { kind: "most" }, eachSide: false }, "eye"),
      at: AT,
      data: [{ statements: ["eye"] }],
    },
  },
});

test("the remedy cuts the dose to what the condition allows", () => {
  const input = doc(reps(3, { percent: 90, ...left(0) }));
  const [cure] = breathHold.run(lookAt(input))[0]!.cures!();
  const after = changed(input.programme, cure!.changes);
  // Pressure: at most 70 %, two left (the table of cautions).
  expect(after.phases[0]!.sessions[0]!.work[0]).toMatchObject({
    dose: { sets: [{ reserve: { from: 4 } }, { percent: 70, reserve: { from: 2 } }] },
  });
  expect(breathHold.run(lookAt({ ...input, programme: after }))).toEqual([]);
});
