import { expect, test } from "vitest";
import { madeUpSlot, reps, sets } from "../../testing/index.ts";
import { editOf } from "./file-form.ts";

const dose = sets(3, reps(8), { restS: 90 });

test("doses are written as text, plain values as they are", () => {
  expect(editOf({ op: "set", at: ["a", "dose"], value: dose })).toEqual({
    op: "set",
    at: ["a", "dose"],
    value: "3 × 8, rest 90 s",
  });
  expect(editOf({ op: "set", at: ["minutes"], value: 60 })).toEqual({ op: "set", at: ["minutes"], value: 60 });
  expect(editOf({ op: "remove", at: ["a", 1] })).toEqual({ op: "remove", at: ["a", 1] });
});

test("a slot is written without what its file need not say", () => {
  const plain = madeUpSlot("squat", "squat", dose, { down: 99, up: 0 });
  expect(editOf({ op: "insert", at: ["work", 0], value: plain })).toMatchObject({
    value: { slot: "squat", pattern: "squat", first: "squat", dose: "3 × 8, rest 90 s" },
  });
  const full = madeUpSlot("squat", "squat", dose, { way: "stay", note: "slowly", changes: [{ week: 2, dose }] });
  expect(editOf({ op: "insert", at: ["work", 0], value: full })).toEqual({
    op: "insert",
    at: ["work", 0],
    value: {
      slot: "squat",
      pattern: "squat",
      first: "squat",
      down: 1,
      up: 2,
      dose: "3 × 8, rest 90 s",
      changes: [{ week: 2, dose: "3 × 8, rest 90 s" }],
      way: "stay",
      note: "slowly",
    },
  });
});

test("a pair is written with its rest", () => {
  const a = madeUpSlot("a", "squat", dose, { down: 99, up: 0 });
  const b = madeUpSlot("b", "squat", dose, { down: 99, up: 0 });
  const edit = editOf({ op: "set", at: ["work", 0], value: { pair: [a, b], restS: 60 } });
  expect(edit).toMatchObject({ value: { pair: [{ slot: "a" }, { slot: "b" }], restS: 60 } });
  expect(Object.keys((edit as unknown as { value: { pair: object[] } }).value.pair[0]!)).toEqual([
    "slot",
    "pattern",
    "first",
    "dose",
  ]);
});

test("warm-ups, lists of weeks and rounds are written as their file has them", () => {
  const warmup = [
    { do: "cycle", dose: sets(1, reps(10)), or: ["row"] },
    { do: "walk", dose: sets(1, reps(10)) },
    { ramp: "squat", sets: 2 },
  ];
  expect(editOf({ op: "set", at: ["warmup"], value: warmup })).toMatchObject({
    value: [
      { do: "cycle", dose: "1 × 10", or: ["row"] },
      { do: "walk", dose: "1 × 10" },
      { ramp: "squat", sets: 2 },
    ],
  });
  expect(editOf({ op: "set", at: ["light"], value: [4, 8] })).toMatchObject({ value: [4, 8] });
  expect(editOf({ op: "set", at: ["first"], value: "goblet-squat" })).toMatchObject({ value: "goblet-squat" });
  const slots = ["a", "b", "c"].map((key) => madeUpSlot(key, "squat", dose));
  const round = editOf({ op: "set", at: ["work", 0], value: { round: slots } }) as unknown as { value: object };
  expect(round.value).toMatchObject({ round: [{ slot: "a" }, { slot: "b" }, { slot: "c" }] });
  expect(round.value).not.toHaveProperty("restS");
  const pair = editOf({ op: "set", at: ["work", 0], value: { pair: slots.slice(0, 2) } }) as unknown as {
    value: object;
  };
  expect(pair.value).not.toHaveProperty("restS");
});

test("muscles that a slot is for are written", () => {
  const slot = madeUpSlot("curl", "upper isolation", dose, { muscles: ["biceps"] });
  expect(editOf({ op: "insert", at: ["work", 0], value: slot })).toMatchObject({ value: { muscles: ["biceps"] } });
});
