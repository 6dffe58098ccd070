import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { Lift } from "../model/index.ts";
import { published } from "../testing/index.ts";
import { inKg, massOf } from "../units.ts";
import { isOld, plainRecord, repsPossible, strengthFrom } from "./record.ts";

const on = day("2027-03-01");
const lift = (value: number, reps: number, more: Partial<Lift> = {}): Lift => ({
  exercise: "it",
  load: { value, unit: "kg" },
  reps,
  on,
  ...more,
});
const strength = (...lifts: readonly Lift[]) => strengthFrom(lifts, (each) => each.load && massOf(each.load), on);

published("oconner1989", "low end of 100 kg × 5 with 2 in reserve, kg", [
  ["worked", "7 repetitions", () => inKg(strength(lift(100, 5, { reserve: 2 }))!.low), 117.5, 0.005],
]);

test("the latest record that an equation takes, and of one day the strongest", () => {
  const before = addDays(on, -7);
  expect(strength(lift(100, 5, { on: before }), lift(90, 5))?.lift.load?.value).toBe(90);
  expect(strength(lift(60, 10), lift(90, 5), lift(80, 6))?.lift.load?.value).toBe(90);
  expect(strength(lift(100, 5, { on: before }), lift(60, 15))?.lift.load?.value).toBe(100);
});

test("more than 10 repetitions with those in reserve, or none said, give no figure", () => {
  expect(strength(lift(60, 11))).toBeUndefined();
  expect(strength(lift(60, 9, { reserve: 2 }))).toBeUndefined();
  expect(strength({ exercise: "it", load: { value: 60, unit: "kg" }, holdS: 30, on })).toBeUndefined();
  expect(strength({ exercise: "it", reps: 5, on })).toBeUndefined();
  expect(strength(lift(0, 5))).toBeUndefined();
  expect(strength()).toBeUndefined();
});

test("an unsaid reserve counts as none and half a repetition is not counted", () => {
  expect(repsPossible(lift(60, 5))).toBe(5);
  expect(repsPossible(lift(60, 5, { reserve: 1.5 }))).toBe(6);
});

test("a record is old after 12 weeks, and when its day is not known", () => {
  expect(isOld(lift(60, 5, { on: addDays(on, -84) }), on)).toBe(false);
  expect(isOld(lift(60, 5, { on: addDays(on, -85) }), on)).toBe(true);
  expect(isOld(lift(60, 5), Number.NaN as typeof on)).toBe(true);
  expect(strength(lift(60, 5, { on: addDays(on, -85) }))?.old).toBe(true);
});

test("a record as plain data says what was not said", () => {
  expect(plainRecord({ exercise: "it", reps: 12, on })).toEqual({
    exercise: "it",
    load: null,
    reps: 12,
    reserve: null,
    on: "2027-03-01",
  });
});
