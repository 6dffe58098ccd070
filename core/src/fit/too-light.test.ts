import { expect, test } from "vitest";
import { hold, reps, sets } from "../testing/index.ts";
import { hardenDose } from "./too-light.ts";

test("long slow sets near the limit: 15–30 repetitions, 3-1-1-0, 1–2 in reserve; share and load go", () => {
  // Up to about 30 near the limit builds as much (schoenfeld2017load), and up to about 8 s each (schoenfeld2015tempo).
  const asked = sets(3, reps(8, { percent: 70, load: { value: 10, unit: "kg" }, within: { bouts: [2], restS: 10 } }), {
    restS: 90,
  });
  const set = { amount: { kind: "reps", span: { from: 15, to: 30 } }, eachSide: false, reserve: { from: 1, to: 2 } };
  expect(hardenDose(asked)).toEqual({ sets: [set, set, set], restS: 90, tempo: [3, 1, 1, 0] });
});

test("a reserve that is larger stays, one that is as small or smaller becomes 1–2", () => {
  const reserveOf = (from: number, to: number) =>
    hardenDose(sets(1, reps(8, { reserve: { from, to } }))).sets[0]!.reserve;
  expect(reserveOf(3, 4)).toEqual({ from: 3, to: 4 });
  expect(reserveOf(2, 3)).toEqual({ from: 1, to: 2 });
  expect(reserveOf(0, 1)).toEqual({ from: 1, to: 2 });
});

test("the coach's tempo stays, and holds stay as they are", () => {
  expect(hardenDose(sets(1, reps(8), { tempo: [5, 0, 1, 0] })).tempo).toEqual([5, 0, 1, 0]);
  expect(hardenDose(sets(2, hold(20))).sets).toEqual(sets(2, hold(20)).sets);
});
