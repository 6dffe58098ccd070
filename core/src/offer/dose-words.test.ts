import { describe, expect, test } from "vitest";
import { hold, madeUpExercise, reps, timeOf } from "../testing/index.ts";
import { type DoseFacts, doseWords } from "./dose-words.ts";

const lift = madeUpExercise({ id: "lift" });
const still = madeUpExercise({ id: "still", mode: "hold", amounts: "hold" });
const ride = madeUpExercise({ id: "ride", mode: "cyclic", amounts: "time", pattern: "locomotion" });

function words(exercise = lift, set = reps(8), facts: DoseFacts = {}) {
  return [...doseWords(exercise, set, facts)].toSorted();
}
const left = (from: number) => ({ reserve: { from, to: from } });

describe("a set with load or body mass", () => {
  const rows: [string, Parameters<typeof words>[1], string[]][] = [
    ["79 % with 2 left is middle", reps(8, { percent: 79, ...left(2) }), []],
    ["80 % is heavy", reps(8, { percent: 80, ...left(2) }), ["heavy"]],
    ["84 % breathes on", reps(5, { percent: 84, ...left(2) }), ["heavy"]],
    ["at 85 % people hold their breath", reps(5, { percent: 85, ...left(2) }), ["breath", "heavy"]],
    ["1 left is near failure", reps(12, { percent: 60, ...left(1) }), ["breath", "near failure"]],
    [
      "as many as possible leaves none",
      { amount: { kind: "most" }, eachSide: false, percent: 60 },
      ["breath", "near failure"],
    ],
    ["50 % with 4 left is light", reps(10, { percent: 50, ...left(4) }), ["light"]],
    ["51 % with 4 left is middle", reps(10, { percent: 51, ...left(4) }), []],
    ["50 % with 3 left is middle", reps(10, { percent: 50, ...left(3) }), []],
    [
      "a range of reserve counts by its lowest",
      reps(8, { percent: 70, reserve: { from: 1, to: 3 } }),
      ["breath", "near failure"],
    ],
    ["share unknown, 3 left: middle", reps(8, left(3)), []],
    ["share unknown, 8 left: middle, never light", reps(8, left(8)), []],
    ["share unknown, 2 left: taken as 90 %", reps(8, left(2)), ["breath", "heavy"]],
    ["nothing known: as heavy as can be", reps(8), ["breath", "heavy", "near failure"]],
    [
      "a number that is none alarms",
      reps(8, { percent: Number.NaN, ...left(Number.NaN) }),
      ["breath", "heavy", "near failure"],
    ],
  ];
  test.each(rows)("%s", (_, set, want) => expect(words(lift, set)).toEqual(want));

  test("a body-mass form that cannot be made lighter is never light", () => {
    expect(words(madeUpExercise({ id: "fixed", fixed: true }), reps(10, { percent: 40, ...left(5) }))).toEqual([]);
  });
  test("lowering only is said by the form, and is not light", () => {
    const lower = madeUpExercise({ id: "lower", lowering: true });
    expect(words(lower, reps(5, { percent: 50, ...left(4) }))).toEqual(["lowering"]);
  });
  test("a limit on the share bounds a share that nobody knows", () => {
    expect(words(lift, reps(8, left(2)), { percent: 70 })).toEqual([]);
    expect(words(lift, reps(8, left(4)), { percent: 50 })).toEqual([]);
  });
});

describe("a hold", () => {
  const rows: [string, number, number, string[]][] = [
    ["30 s of a best of 60 is middle", 30, 60, []],
    ["31 s is long", 31, 90, ["hold"]],
    ["24 of 30 s is 80 % of the best", 24, 30, ["hold"]],
    ["27 of 30 s is 90 % of the best", 27, 30, ["breath", "hold", "near failure"]],
    ["10 of 20 s is light", 10, 20, ["light"]],
    ["11 of 40 s is too long to be light", 11, 40, []],
    ["10 of 19 s is too much of the best to be light", 10, 19, []],
  ];
  test.each(rows)("%s", (_, seconds, bestHoldS, want) => {
    expect(words(still, hold(seconds), { bestHoldS })).toEqual(want);
  });
  test("is never heavy, whatever share is written", () => {
    expect(words(still, hold(20, { percent: 100 }))).toEqual(["breath", "hold", "near failure"]);
  });
  test("of an unknown best is taken as 90 % of it, unless 3 or more are reported left", () => {
    expect(words(still, hold(5))).toEqual(["breath", "hold", "near failure"]);
    expect(words(still, hold(5, left(3)))).toEqual([]);
  });
  test("ends at 75 % of the best where a reserve is asked", () => {
    expect(words(still, hold(20), { reserve: 2 })).toEqual([]);
    expect(words(still, hold(31), { reserve: 2 })).toEqual(["hold"]);
  });
});

describe("conditioning goes by speech", () => {
  test("whole sentences are middle, short phrases heavy", () => {
    expect(words(ride, timeOf(600), { effort: "easy" })).toEqual([]);
    expect(words(ride, timeOf(600), { effort: "steady" })).toEqual([]);
    expect(words(ride, timeOf(600), { effort: "hard" })).toEqual(["heavy"]);
  });
  test("a reserve limit keeps it in sentences", () => {
    expect(words(ride, timeOf(600), { effort: "hard", reserve: 2 })).toEqual([]);
    expect(words(ride, timeOf(600), { reserve: 2 })).toEqual([]);
  });
  test("effort unknown and no limit: as hard as can be", () => {
    expect(words(ride, timeOf(600))).toContain("heavy");
  });
});

test("range and balance work without numbers is middle, not near failure", () => {
  expect(words(madeUpExercise({ id: "reach", pattern: "mobility" }), reps(8))).toEqual([]);
  expect(words(madeUpExercise({ id: "stand", pattern: "balance", mode: "hold", amounts: "hold" }), hold(20))).toEqual(
    [],
  );
});
