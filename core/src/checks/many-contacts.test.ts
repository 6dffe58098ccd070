import { expect, test } from "vitest";
import type { Dose, Slot, Status } from "../model/index.ts";
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
import { manyContacts } from "./many-contacts.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const contacts = (count: number, each: number): Dose =>
  sets(count, { amount: { kind: "contacts", span: { from: each, to: each } }, eachSide: false });
const jump = (dose: Dose, more: Partial<Slot> = {}) => madeUpSlot("jump", "jump", dose, more);
const doc = (work: readonly Slot[], status: Status = "novice") => ({
  programme: madeUpProgramme([madeUpSession("a", 60, work)], { status }),
  catalogue: madeUpCatalogue([madeUpExercise({ id: "jump", name: "Jump", pattern: "jump", amounts: "contacts" })]),
});
const AT = [["phases", 0, "sessions", 0]];

testCheck(manyContacts, {
  fine: {
    sixty: doc([jump(contacts(6, 10))]),
    "repetitions are no landings": doc([jump(sets(9, reps(10)))]),
    "a hundred, of people with experience": doc([jump(contacts(10, 10))], "intermediate"),
  },
  bad: {
    seventy: { doc: doc([jump(contacts(7, 10))]), at: AT, data: [{ session: "a", contacts: 70, most: 60 }] },
    "over two slots": {
      doc: doc([jump(contacts(4, 10)), jump(contacts(3, 7), { slot: "other" })]),
      at: AT,
      data: [{ contacts: 61 }],
    },
    "in a later week": {
      doc: doc([jump(contacts(2, 10), { changes: [{ week: 2, dose: contacts(8, 10) }] })]),
      at: AT,
      data: [{ contacts: 80 }],
    },
  },
});

test("the remedies take more and more sets away, never the last one", () => {
  const input = doc([jump(contacts(3, 30)), jump(contacts(2, 5), { slot: "other" })]);
  const cures = manyContacts.run(lookAt(input))[0]!.cures!();
  expect(cures.map(({ data }) => data["slots"])).toEqual([
    [
      { slot: "jump", name: "Jump", from: 3, to: 2 },
      { slot: "other", name: "Jump", from: 2, to: 1 },
    ],
    [{ slot: "jump", name: "Jump", from: 3, to: 1 }],
  ]);
  const after = changed(input.programme, cures[1]!.changes);
  expect(manyContacts.run(lookAt({ ...input, programme: after }))).toEqual([]);
});
