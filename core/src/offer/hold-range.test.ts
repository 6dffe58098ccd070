import { expect, test } from "vitest";
import { hold, madeUpExercise, reps, sets, timeOf } from "../testing/index.ts";
import { outsideRange, wrongAmounts } from "./hold-range.ts";

const plank = madeUpExercise({ id: "plank", mode: "hold", amounts: "hold", hold: { from: 10, to: 60, step: 5 } });
const squat = madeUpExercise({ id: "squat" });

test("10 to 60 s are fine, 9 and 61 are not", () => {
  for (const seconds of [10, 60]) expect(outsideRange(plank, sets(3, hold(seconds)))).toEqual([]);
  expect(outsideRange(plank, sets(3, hold({ from: 9, to: 20 })))).toEqual([
    { code: "offer/hold-range", data: { asked: { from: 9, to: 20 }, range: { from: 10, to: 60 } } },
  ]);
  expect(outsideRange(plank, sets(3, hold({ from: 45, to: 61 }))).length).toBe(1);
});

test("a number that is none is outside", () => {
  expect(outsideRange(plank, sets(1, hold(Number.NaN))).length).toBe(1);
});

test("a form without a range has none to leave", () => {
  expect(outsideRange(squat, sets(1, hold(300)))).toEqual([]);
});

test("repetitions of a hold, or a hold of what is counted, mean nothing", () => {
  expect(wrongAmounts(plank, sets(3, reps(10)))).toEqual([
    { code: "offer/amount", data: { asked: "reps", takes: "hold" } },
  ]);
  expect(wrongAmounts(squat, sets(3, hold(20)))).toEqual([
    { code: "offer/amount", data: { asked: "hold", takes: "reps" } },
  ]);
  expect(wrongAmounts(madeUpExercise({ id: "x", hold: { from: 10, to: 45, step: 5 } }), sets(3, hold(20)))).toEqual([]);
});

test("as many as possible suits all, and time what is held, counted or walked", () => {
  for (const exercise of [plank, squat]) {
    expect(wrongAmounts(exercise, { sets: [{ amount: { kind: "most" }, eachSide: false }] })).toEqual([]);
    expect(wrongAmounts(exercise, sets(1, timeOf(30)))).toEqual([]);
  }
});
