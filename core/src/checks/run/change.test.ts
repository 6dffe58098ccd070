import { expect, test } from "vitest";
import { madeUpProgramme, madeUpSession, madeUpSlot, reps, sets } from "../../testing/index.ts";
import { changed } from "./change.ts";

const dose = sets(3, reps(8));
const slots = ["a", "b", "c", "d"].map((key) => madeUpSlot(key, "squat", dose));
const programme = madeUpProgramme([madeUpSession("one", 45, slots), madeUpSession("two", 45, slots)]);
const work = (index: number) => ["phases", 0, "sessions", 0, "work", index];
const keys = (after: typeof programme) =>
  after.phases[0]!.sessions[0]!.work.map((block) => ("slot" in block ? block.slot : "pair"));

test("a value is set, the rest is shared and the programme given stays", () => {
  const before = structuredClone(programme);
  const after = changed(programme, [{ op: "set", at: [...work(1), "dose"], value: sets(2, reps(5)) }]);
  expect(after.phases[0]!.sessions[0]!.work[1]).toMatchObject({ slot: "b", dose: sets(2, reps(5)) });
  expect(after.phases[0]!.sessions[1]).toBe(programme.phases[0]!.sessions[1]);
  expect(programme).toEqual(before);
});

test("places are put in and taken out by the positions before any change", () => {
  const extra = madeUpSlot("x", "squat", dose);
  const after = changed(programme, [
    { op: "remove", at: work(0) },
    { op: "insert", at: work(4), value: extra },
    { op: "remove", at: work(2) },
  ]);
  expect(keys(after)).toEqual(["b", "d", "x"]);
});

test("two slots become a pair", () => {
  const after = changed(programme, [
    { op: "set", at: work(1), value: { pair: [slots[1]!, slots[3]!], restS: 60 } },
    { op: "remove", at: work(3) },
  ]);
  expect(keys(after)).toEqual(["a", "pair", "c"]);
});

test("no changes, the same programme", () => {
  expect(changed(programme, [])).toBe(programme);
});
