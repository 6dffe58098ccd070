import { expect, test } from "vitest";
import type { SetDose, Slot, Status } from "../model/index.ts";
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
import { mostlyToFailure } from "./mostly-to-failure.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", muscles: { "front thigh": 1 } }),
  madeUpExercise({ id: "stretch", pattern: "mobility" }),
]);
const none = reps(8, { reserve: { from: 0, to: 0 } });
const some = reps(8, { reserve: { from: 1, to: 2 } });
const unsaid = reps(8);
const all: SetDose = { amount: { kind: "most" }, eachSide: false };
const slot = (first: string, sets: readonly SetDose[], more: Partial<Slot> = {}) =>
  madeUpSlot(first, "squat", { sets }, more);
const doc = (slots: readonly Slot[], status: Status = "novice") => ({
  programme: madeUpProgramme([madeUpSession("a", 60, slots)], { status }),
  catalogue,
});
const AT = [["phases", 0]];

testCheck(mostlyToFailure, {
  fine: {
    "half of the sets": doc([slot("squat", [none, some])]),
    "nothing said of the reserve": doc([slot("squat", [unsaid, unsaid])]),
    "a test set that leaves two": doc([slot("squat", [{ ...all, reserve: { from: 2, to: 2 } }])]),
    "holds end when they end": doc([slot("squat", [hold(30, { reserve: { from: 0, to: 0 } })])]),
    "what does not count as work": doc([slot("stretch", [none, none])]),
    "no sets at all": doc([]),
  },
  bad: {
    "two of three": {
      doc: doc([slot("squat", [none, all, some])]),
      at: AT,
      data: [{ failing: 2, sets: 3 }],
      severity: ["warn"],
    },
    "in a later week": {
      doc: doc([slot("squat", [some], { changes: [{ week: 3, dose: { sets: [none, none] } }] })]),
      at: AT,
      data: [{ failing: 2, sets: 3 }],
    },
    "by people with experience it is a note": {
      doc: doc([slot("squat", [none])], "intermediate"),
      at: AT,
      data: [{ failing: 1 }],
      severity: ["note"],
    },
    "by somebody who is new it warns": {
      doc: { ...doc([slot("squat", [none])], "advanced"), person: madeUpPerson() },
      at: AT,
      data: [{ failing: 1 }],
      severity: ["warn"],
    },
  },
});

test("the remedy leaves two in every such set, in later weeks too", () => {
  const input = doc([slot("squat", [none, some], { changes: [{ week: 3, dose: { sets: [none, none] } }] })]);
  const [cure] = mostlyToFailure.run(lookAt(input))[0]!.cures!();
  expect(cure).toMatchObject({ id: "more-in-reserve", data: { reserve: 2, slots: 2 } });
  expect(mostlyToFailure.run(lookAt({ ...input, programme: changed(input.programme, cure!.changes) }))).toEqual([]);
});

test("as many as possible is what it is: no remedy", () => {
  expect(mostlyToFailure.run(lookAt(doc([slot("squat", [all])])))[0]!.cures!()).toEqual([]);
});
