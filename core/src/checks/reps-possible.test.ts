import { expect, test } from "vitest";
import type { SetDose } from "../model/index.ts";
import { hold, published, reps, sets } from "../testing/index.ts";
import { sharedSets, unlikelySets, WIDEST_TIMES } from "./reps-possible.ts";

const at = (percent: number, more: Partial<SetDose> = {}) => ({ percent, ...more });
const possible = (count: number, set: SetDose, restS?: number) =>
  sharedSets(sets(count, set, restS === undefined ? {} : { restS })).map((each) => each.possible);

published("nscaEssentialsTable", "repetitions for a first set at 75 %", [
  ["printed", "row", () => possible(1, reps(10, at(75)))[0] ?? Number.NaN, 10, 0],
]);
published("cooke2019", "widest spread taken at 70 %, against the most that anybody did", [
  ["worked", "2.5 × 11", () => 11 * WIDEST_TIMES, 26, 1.5],
]);
published("richensCleather2014", "widest spread taken at 80 %, against the runners' mean", [
  ["worked", "2.5 × 8", () => 8 * WIDEST_TIMES, 19.8, 0.5],
]);
published("richensCleather2014", "widest spread taken at 90 %, against the runners' mean", [
  ["worked", "2.5 × 4", () => 4 * WIDEST_TIMES, 10.8, 1],
]);

test("our rule: a set that leaves fewer than 2 costs the next half a repetition, a quarter after 3 min of rest", () => {
  expect(possible(5, reps(5, at(85)))).toEqual([6, 5.5, 5, 4.5, 4]);
  expect(possible(5, reps(5, at(85)), 180)).toEqual([6, 5.75, 5.5, 5.25, 5]);
  expect(possible(3, reps(5, at(80)))).toEqual([8, 8, 8]);
});

test("what coaches usually write is likely", () => {
  expect(unlikelySets(sets(5, reps(5, at(80))))).toEqual([]);
  expect(unlikelySets(sets(3, reps(5, at(85))))).toEqual([]);
  expect(unlikelySets(sets(3, reps(8, at(75, { reserve: { from: 2, to: 2 } }))))).toEqual([]);
});

test("later sets and reserve count", () => {
  expect(unlikelySets(sets(1, reps(10, at(75))))).toEqual([]);
  expect(unlikelySets(sets(3, reps(10, at(75)))).map((each) => each.set)).toEqual([1, 2]);
  expect(unlikelySets(sets(1, reps(9, at(75, { reserve: { from: 2, to: 3 } }))))[0]?.needed).toBe(11);
});

test("the lower end of a range is what must be possible", () => {
  expect(unlikelySets(sets(1, reps({ from: 10, to: 12 }, at(75))))).toEqual([]);
});

test("nothing is said where the book says nothing", () => {
  expect(sharedSets(sets(3, reps(30, at(60))))).toEqual([]);
  expect(sharedSets(sets(3, reps(30)))).toEqual([]);
  expect(sharedSets(sets(3, hold(30, at(90))))).toEqual([]);
  expect(sharedSets(sets(1, { amount: { kind: "most" }, eachSide: false, percent: 85 }))).toEqual([]);
});

test("between two rows the larger number is taken", () => {
  expect(possible(1, reps(8, at(82)))).toEqual([8]);
});

test("as many as possible with a least number needs that number, and what is left besides", () => {
  const most = (least: number, more: Partial<SetDose> = {}): SetDose => ({
    amount: { kind: "most", least },
    eachSide: false,
    percent: 85,
    ...more,
  });
  expect(sharedSets(sets(1, most(5)))).toMatchObject([{ needed: 5, fresh: 6 }]);
  expect(sharedSets(sets(1, most(5, { reserve: { from: 2, to: 2 } })))[0]?.needed).toBe(7);
  expect(unlikelySets(sets(1, most(6)))).toEqual([]);
  expect(unlikelySets(sets(1, most(7)))).toHaveLength(1);
});

test("a set that leaves two costs nothing, one that leaves fewer does; the rest is long from 3 min on", () => {
  // 8 at 80 % by the book: six leave two, seven leave one.
  expect(possible(2, reps(6, at(80)))).toEqual([8, 8]);
  expect(possible(2, reps(7, at(80)))).toEqual([8, 7.5]);
  expect(possible(2, reps(7, at(80)), 179)).toEqual([8, 7.5]);
});

test("what is left in reserve is not done, and so tires nobody", () => {
  expect(possible(2, reps(6, at(80, { reserve: { from: 2, to: 2 } })))).toEqual([8, 8]);
});
