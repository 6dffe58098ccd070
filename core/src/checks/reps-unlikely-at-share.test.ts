import { expect, test } from "vitest";
import { type Dose, printDose } from "../model/index.ts";
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
import { repsUnlikelyAtShare } from "./reps-unlikely-at-share.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([madeUpExercise({ id: "squat", name: "Squat" })]);
const doc = (dose: Dose, changes?: readonly { week: number; dose: Dose }[]) => ({
  programme: madeUpProgramme([
    madeUpSession("a", 45, [madeUpSlot("squat", "squat", dose, changes === undefined ? {} : { changes })]),
  ]),
  catalogue,
});
const AT = ["phases", 0, "sessions", 0, "work", 0];

testCheck(repsUnlikelyAtShare, {
  fine: {
    "five fives at 80 %": doc(sets(5, reps(5, { percent: 80 }))),
    "no share": doc(sets(3, reps(30))),
    "a share under the table": doc(sets(3, reps(25, { percent: 50 }))),
  },
  bad: {
    "three tens at 75 %: the second set": {
      doc: doc(sets(3, reps(10, { percent: 75 }))),
      at: [[...AT, "dose"]],
      data: [{ slot: "squat", name: "Squat", percent: 75, set: 2, needed: 10, fresh: 10, possible: 9.5 }],
      severity: ["warn"],
    },
    "eight with 3 in reserve at 80 %": {
      doc: doc(sets(1, reps(8, { percent: 80, reserve: { from: 3, to: 3 } }))),
      at: [[...AT, "dose"]],
      data: [{ set: 1, needed: 11, fresh: 8 }],
    },
    "far beyond anybody measured stops": {
      doc: doc(sets(3, reps(12, { percent: 90 }))),
      at: [[...AT, "dose"]],
      data: [{ needed: 12, fresh: 4 }],
      severity: ["stop"],
    },
    "a later week": {
      doc: doc(sets(3, reps(5, { percent: 80 })), [{ week: 3, dose: sets(3, reps(5, { percent: 90 })) }]),
      at: [[...AT, "changes", 0, "dose"]],
      data: [{ fromWeek: 3, percent: 90 }],
    },
  },
});

function remedies(dose: Dose): readonly string[] {
  const cures = repsUnlikelyAtShare.run(lookAt(doc(dose)))[0]?.cures?.() ?? [];
  return cures.map((cure) => {
    const [change] = cure.changes;
    return change?.op === "set" ? printDose(change.value as Dose) : "none";
  });
}

test("the remedies are the highest printed share that fits, and repetitions that fit", () => {
  expect(remedies(sets(3, reps(10, { percent: 75 })))).toEqual(["3 × 10 @70 %", "3 × 9 @75 %"]);
  expect(remedies(sets(1, reps(8, { percent: 90 })))).toEqual(["1 × 8 @80 %", "1 × 4 @90 %"]);
});

test("unlike sets are each brought to what fits", () => {
  const dose = { sets: [reps(3, { percent: 95 }), reps(8, { percent: 83 })] };
  const [share] = remedies(dose);
  expect(share).toBe("1 × 3 @93 % + 1 × 8 @77 %");
});

test("where no printed share allows so many, only the repetitions can give way", () => {
  expect(remedies(sets(1, reps(20, { percent: 70 })))).toEqual(["1 × 11 @70 %"]);
});

test("two repetitions may become one, and one becomes none", () => {
  // Two at 100 %: the book gives 2 at 95 %, and 1 at 100 %.
  expect(remedies(sets(1, reps(2, { percent: 100 })))).toEqual(["1 × 2 @95 %", "1 × 1 @100 %"]);
});

test("a range loses a repetition at both ends, and never falls under one", () => {
  expect(remedies(sets(1, reps({ from: 5, to: 6 }, { percent: 90 })))[1]).toBe("1 × 4–5 @90 %");
  expect(remedies(sets(1, reps({ from: 1, to: 3 }, { percent: 90, reserve: { from: 5, to: 5 } })))[1]).toBeUndefined();
});

test("only sets like the one that asks too much are changed", () => {
  const dose = { sets: [reps(8, { percent: 90 }), reps(3, { percent: 90 })] };
  expect(remedies(dose)[1]).toBe("4, 3 @90 %");
});
