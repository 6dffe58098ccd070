import { expect, test } from "vitest";
import type { Phase, Session, Slot } from "../model/index.ts";
import { reps, sets } from "../testing/index.ts";
import { askedSession, askedWeek, workOf } from "./asked-session.ts";

const squat: Slot = {
  slot: "a-squat",
  pattern: "squat",
  first: "goblet-squat",
  down: 1,
  up: 1,
  dose: sets(3, reps(8)),
  changes: [{ week: 3, dose: sets(4, reps(6)) }],
  way: "load",
};
const row: Slot = { ...squat, slot: "a-row", pattern: "horizontal pull", first: "cable-row", changes: [] };
const session: Session = {
  key: "a",
  title: "A",
  minutes: 45,
  warmup: [
    { do: "cycle", dose: sets(1, reps(1)) },
    { ramp: "a-squat", sets: 2 },
  ],
  work: [squat, { pair: [row, { ...row, slot: "a-row-2" }], restS: 60 }],
  conditioning: [{ do: "cycle", dose: sets(1, reps(2)), effort: "easy" }],
};
const phase: Phase = { key: "p", title: "P", weeks: 4, light: [4], sessions: [session] };

test("a slot asks for the dose of its week", () => {
  expect(askedSession(session, 2, false).blocks[0]?.slots[0]?.dose).toEqual(sets(3, reps(8)));
  expect(askedSession(session, 3, false).blocks[0]?.slots[0]?.dose).toEqual(sets(4, reps(6)));
});

test("a light week halves the work of that week, not the warm-up", () => {
  const [light] = askedWeek(phase, 4);
  expect(workOf(light!).map((slot) => slot.dose.sets.length)).toEqual([2, 2, 2]);
  expect(light!.warmup.map((item) => item.dose.sets.length)).toEqual([1, 2]);
});

test("blocks keep their kind, order and rest; lighter sets belong to their slot", () => {
  const asked = askedSession(session, 1, false);
  expect(asked.blocks.map((block) => [block.kind, block.restS])).toEqual([
    ["straight", undefined],
    ["pair", 60],
  ]);
  expect(workOf(asked).map((slot) => slot.key)).toEqual(["a-squat", "a-row", "a-row-2"]);
  expect(asked.warmup.map((item) => [item.exercise, item.for])).toEqual([
    ["cycle", undefined],
    ["goblet-squat", "a-squat"],
  ]);
  expect(asked.conditioning.map((item) => item.exercise)).toEqual(["cycle"]);
});

test("lighter sets for a slot that is not there ask for nothing", () => {
  expect(askedSession({ ...session, warmup: [{ ramp: "gone", sets: 2 }] }, 1, false).warmup).toEqual([]);
});

test("a round is a round, and a block that says no rest has none", () => {
  const round = { round: [row, { ...row, slot: "b" }, { ...row, slot: "c" }] };
  const [asked] = askedSession({ ...session, work: [round] }, 1, false).blocks;
  expect(asked?.kind).toBe("round");
  expect(asked).not.toHaveProperty("restS");
});

test("lighter sets may lead up to a slot of a later block", () => {
  const warmup = [{ ramp: "a-row-2", sets: 1 }];
  expect(askedSession({ ...session, warmup }, 1, false).warmup).toMatchObject([
    { exercise: "cable-row", for: "a-row-2" },
  ]);
});

test("a session without warm-up and conditioning asks for none; slots keep what they are for", () => {
  const bare = askedSession({ key: "a", title: "A", minutes: 45, work: [squat] }, 1, false);
  expect([bare.warmup, bare.conditioning]).toEqual([[], []]);
  expect(bare.blocks[0]!.slots[0]).toMatchObject({ key: "a-squat", pattern: "squat", exercise: "goblet-squat" });
});
