import { expect, test } from "vitest";
import { madeUpExercise, reps, sets } from "../testing/index.ts";
import { blockSeconds } from "./block-seconds.ts";

const press = madeUpExercise({ id: "press", secondsPerRep: 4, setupS: 120, changeS: 20, moveS: 60 });
const row = madeUpExercise({ id: "row", secondsPerRep: 3, setupS: 30, changeS: 5, moveS: 40 });

test("straight sets rest after every set but the last and change plates between them", () => {
  const block = blockSeconds("straight", [{ exercise: press, dose: sets(3, reps(8), { restS: 120 }) }]);
  expect(block).toEqual({ setUp: 120, work: 3 * 32 + 2 * 20, rest: 240, changes: 0, assumed: [] });
});

test("a pair rests once a turn; both stations are set up and walked to once", () => {
  const pair = [
    { exercise: press, dose: sets(3, reps(8)) },
    { exercise: row, dose: sets(3, reps(10)) },
  ];
  expect(blockSeconds("pair", pair, 90)).toEqual({
    setUp: 150,
    work: 3 * 32 + 2 * 20 + 3 * 30 + 2 * 5,
    rest: 180,
    changes: 40,
    assumed: [],
  });
});

test("a pair without a rest of its own takes the longest its slots ask for", () => {
  const pair = [
    { exercise: press, dose: sets(3, reps(8), { restS: 45 }) },
    { exercise: row, dose: sets(3, reps(10), { restS: 75 }) },
  ];
  expect(blockSeconds("pair", pair).rest).toBe(150);
});

test("a rest that is not said is 90 s and is named, unless there is only one set", () => {
  const three = blockSeconds("straight", [{ exercise: press, dose: sets(3, reps(8)) }]);
  expect([three.rest, three.assumed]).toEqual([180, ["rest"]]);
  expect(blockSeconds("straight", [{ exercise: press, dose: sets(1, reps(8)) }]).assumed).toEqual([]);
});

test("as many as possible is named", () => {
  const open = { amount: { kind: "most" }, eachSide: false } as const;
  expect(blockSeconds("straight", [{ exercise: press, dose: sets(2, open, { restS: 60 }) }]).assumed).toEqual(["reps"]);
});

test("no slots, no time", () => {
  expect(blockSeconds("round", [])).toEqual({ setUp: 0, work: 0, rest: 0, changes: 0, assumed: [] });
});

test("a block's own rest counts before that of its slots, the longest of theirs before a usual one", () => {
  const slots = (...rests: readonly (number | undefined)[]) =>
    rests.map((restS) => ({ exercise: press, dose: sets(2, reps(8), restS === undefined ? {} : { restS }) }));
  expect(blockSeconds("pair", slots(120, 60), 0).rest).toBe(0);
  expect(blockSeconds("round", slots(30, undefined, 20)).rest).toBe(30);
  expect(blockSeconds("pair", slots(undefined, undefined)).assumed).toEqual(["rest"]);
});

test("a pair of unlike sets has as many turns as the longer slot", () => {
  const pair = [
    { exercise: press, dose: sets(1, reps(8)) },
    { exercise: row, dose: sets(3, reps(10)) },
  ];
  expect(blockSeconds("pair", pair, 60).rest).toBe(120);
});

test("sets that differ are each timed; one that leaves its number open is enough to say so", () => {
  const open = { amount: { kind: "most" }, eachSide: false } as const;
  const unlike = { sets: [reps(8), reps(6), open], restS: 60 };
  const block = blockSeconds("straight", [{ exercise: press, dose: unlike }]);
  expect(block.work).toBe(4 * (8 + 6 + 12) + 2 * 20);
  expect(block.assumed).toEqual(["reps"]);
});

test("straight slots in one block rest each by itself", () => {
  const two = [
    { exercise: press, dose: sets(2, reps(8), { restS: 120 }) },
    { exercise: row, dose: sets(2, reps(8), { restS: 60 }) },
  ];
  expect(blockSeconds("straight", two).rest).toBe(180);
});
