import { expect, test } from "vitest";
import { type Dose, type Slot, slotsOf } from "../../model/index.ts";
import { madeUpProgramme, madeUpSession, madeUpSlot, reps, sets } from "../../testing/index.ts";
import { changed } from "../run/change.ts";
import { apart } from "./apart.ts";

const slot = (key: string, rest: Partial<Dose> = {}) =>
  madeUpSlot("squat", "squat", sets(2, reps(8), rest), { slot: key });
const AT = ["phases", 0, "sessions", 0, "work", 1];
const after = (block: Parameters<typeof apart>[0]) => {
  const programme = madeUpProgramme([madeUpSession("s", 60, [slot("first"), block, slot("last")])]);
  const work = changed(programme, apart(block, AT)).phases[0]!.sessions[0]!.work;
  return work.flatMap((one) => ("slot" in one ? slotsOf(one) : [])) as readonly Slot[];
};

test("the slots of a pair and of a round are done one after the other, in their order, where the block stood", () => {
  expect(after({ pair: [slot("a"), slot("b")] }).map((one) => one.slot)).toEqual(["first", "a", "b", "last"]);
  expect(after({ round: [slot("a"), slot("b"), slot("c")] }).map((one) => one.slot)).toEqual([
    "first",
    "a",
    "b",
    "c",
    "last",
  ]);
});

test("each keeps the rest it had in turn: its own before that of the block, none where none is said", () => {
  const rests = (block: Parameters<typeof apart>[0]) => after(block).map(({ dose }) => dose.restS);
  expect(rests({ pair: [slot("a", { restS: 30 }), slot("b")], restS: 90 })).toEqual([undefined, 30, 90, undefined]);
  expect(rests({ pair: [slot("a"), slot("b")] })).toEqual([undefined, undefined, undefined, undefined]);
  expect(after({ pair: [slot("a"), slot("b")] })[1]!.dose).not.toHaveProperty("restS");
});
