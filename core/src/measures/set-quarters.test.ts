import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Exercise, PATTERNS } from "../model/index.ts";
import { hold, madeUpExercise, published, reps, sets } from "../testing/index.ts";
import { type Quarters, quarters } from "../units.ts";
import { addQuarters, isDirectSet, setQuarters, slotQuarters } from "./set-quarters.ts";

const curl = madeUpExercise({ id: "curl", pattern: "upper isolation", muscles: { biceps: 1 } });
const row = madeUpExercise({
  id: "row",
  pattern: "horizontal pull",
  muscles: { lats: 1, "mid back": 1, biceps: 0.5, "rear shoulder": 0.5 },
});
const chinUp = madeUpExercise({ id: "chin", pattern: "vertical pull", muscles: { lats: 1, biceps: 0.5 } });
const swing = madeUpExercise({
  id: "swing",
  pattern: "hinge",
  mode: "ballistic",
  muscles: { buttocks: 1, "back thigh": 1, "low back": 0.5 },
});
const plank = madeUpExercise({
  id: "plank",
  pattern: "anti-extension",
  mode: "hold",
  amounts: "hold",
  muscles: { "front trunk": 1, "side trunk": 0.5 },
});

const week = [
  slotQuarters(curl, sets(3, reps(10))),
  slotQuarters(row, sets(6, reps(10))),
  slotQuarters(chinUp, sets(4, reps(6))),
];

published("pelland2024", "fractional sets of the elbow flexors in 6 rows, 4 chin-ups, 3 curls", [
  ["worked", "the 0.5 way of counting", () => (week.reduce(addQuarters).biceps ?? 0) / 4, 8, 0],
]);

describe("what a set counts", () => {
  test("1 for what drives the movement, a half for what helps", () => {
    expect(setQuarters(row, reps(10))).toEqual({ lats: 4, "mid back": 4, biceps: 2, "rear shoulder": 2 });
  });
  test("left and right are one set", () => {
    expect(setQuarters(row, reps(10, { eachSide: true }))).toEqual(setQuarters(row, reps(10)));
  });
  test("up to 4 in reserve counts, 5 does not, unsaid counts, a range by its middle", () => {
    const at = (from: number, to: number) => setQuarters(curl, reps(10, { reserve: { from, to } })).biceps ?? 0;
    expect([at(4, 4), at(5, 5), at(3, 5), at(4, 5)]).toEqual([4, 0, 4, 0]);
    expect(setQuarters(curl, reps(10)).biceps).toBe(4);
  });
  test("practice counts nothing for what helps either", () => {
    expect(setQuarters(row, reps(10, { reserve: { from: 5, to: 5 } }))).toEqual({});
    expect(slotQuarters(row, { sets: [reps(10, { reserve: { from: 6, to: 6 } }), reps(10)] })).toEqual(
      setQuarters(row, reps(10)),
    );
  });
  test("a whole direct set is one that drives the movement, near enough the limit and long enough", () => {
    expect(isDirectSet(curl, reps(10))).toBe(true);
    expect(isDirectSet(curl, reps(10, { reserve: { from: 5, to: 5 } }))).toBe(false);
    expect(isDirectSet(swing, reps(15))).toBe(false);
    expect([hold(9), hold(10)].map((set) => isDirectSet(plank, set))).toEqual([false, true]);
  });
  test("a count may be added to", () => {
    expect(slotQuarters(curl, sets(2, reps(10)), { biceps: quarters(1), lats: quarters(2) })).toEqual({
      biceps: 12,
      lats: 8,
    });
  });
  test("a reserve that is not a number is not counted", () => {
    expect(setQuarters(curl, reps(10, { reserve: { from: Number.NaN, to: 2 } }))).toEqual({});
  });
  test("a hold of 10 s counts whole, a shorter one half, short bouts added", () => {
    expect(setQuarters(plank, hold(10))).toEqual({ "front trunk": 4, "side trunk": 2 });
    expect(setQuarters(plank, hold(9))).toEqual({ "front trunk": 2, "side trunk": 2 });
    expect(setQuarters(plank, hold(5, { within: { bouts: [5], restS: 10 } }))["front trunk"]).toBe(4);
  });
  test("ballistic work counts half and its helpers nothing", () => {
    expect(setQuarters(swing, reps(15))).toEqual({ buttocks: 2, "back thigh": 2 });
  });
  test("mobility, balance, locomotion, jumps and throws count nothing", () => {
    const none = PATTERNS.filter(
      (pattern) => setQuarters({ ...curl, pattern } as Exercise, reps(10)).biceps === undefined,
    );
    expect(none).toEqual(["jump", "throw", "locomotion", "mobility", "balance"]);
  });
});

test("one set more never lowers a count, and the order of adding changes nothing", () => {
  const some = fc.array(fc.constantFrom(curl, row, chinUp, swing), { maxLength: 12 });
  fc.assert(
    fc.property(some, fc.constantFrom(curl, row, chinUp, swing), (week, more) => {
      const count = (list: readonly Exercise[]) =>
        list.map((each) => setQuarters(each, reps(8))).reduce(addQuarters, {} as Record<string, Quarters>);
      const before = count(week);
      const after = count([...week, more]);
      expect(count([...week].reverse())).toEqual(before);
      for (const [muscle, value] of Object.entries(before)) {
        expect(after[muscle as keyof typeof after]).toBeGreaterThanOrEqual(value ?? quarters(0));
      }
    }),
  );
});
