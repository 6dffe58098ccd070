import { expect, test } from "vitest";
import type { PlanSession, PlanSlot } from "../model/index.ts";
import { reps, sets } from "../testing/index.ts";
import { withoutSlots } from "./without-slots.ts";

const slot = (key: string): PlanSlot => ({ key, exercise: key, dose: sets(2, reps(8)), why: [], offer: [] });
const dose = sets(1, reps(5));
const session: PlanSession = {
  key: "a",
  title: "A",
  warmup: [
    { exercise: "walk", dose },
    { exercise: "one", dose, for: "one" },
  ],
  blocks: [
    { kind: "straight", slots: [slot("one")] },
    { kind: "pair", restS: 60, slots: [slot("two"), slot("three")] },
    { kind: "round", restS: 30, slots: [slot("four"), slot("five"), slot("six")] },
  ],
  conditioning: [],
  open: [],
  minutes: { low: 20, high: 30 },
};
const because = { code: "plan/paused", data: {} };
const out = (...keys: readonly string[]) => withoutSlots(session, new Map(keys.map((key) => [key, because])));

test("a slot that is out stands open with its reason, and its lighter sets are gone", () => {
  const { blocks, open, warmup } = out("one");
  expect(blocks.map(({ kind }) => kind)).toEqual(["pair", "round"]);
  expect(open).toEqual([{ key: "one", why: [because] }]);
  expect(warmup.map(({ exercise }) => exercise)).toEqual(["walk"]);
});

test("what is left of a pair stands alone, what is left of a round stays one while there are two", () => {
  expect(out("three").blocks[1]).toEqual({ kind: "straight", slots: [slot("two")] });
  expect(out("four").blocks[2]).toEqual({ kind: "round", restS: 30, slots: [slot("five"), slot("six")] });
  expect(out("four", "six").blocks[2]).toEqual({ kind: "straight", slots: [slot("five")] });
});

test("nothing out is nothing changed", () => {
  expect(out("seven")).toBe(session);
});
