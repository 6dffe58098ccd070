import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { LoadMeaning } from "../model/index.ts";
import { madeUpExercise, madeUpPerson } from "../testing/index.ts";
import { kg, type Load } from "../units.ts";
import { offScale, onScale, ownStrength, recordsOf } from "./own-strength.ts";

const on = day("2027-03-01");
const kgOf = (value: number): Load => ({ value, unit: "kg" });
const form = (loadMeaning: LoadMeaning) =>
  madeUpExercise({ id: "it", loadMeaning, bodyShare: { share: 1, source: "ours" } });
const lifts = [
  { exercise: "it", load: kgOf(10), reps: 1, on: addDays(on, -3) },
  { exercise: "it", reps: 6, on },
  { exercise: "other", load: kgOf(99), reps: 1, on },
];
const person = madeUpPerson({ mass: { load: kgOf(80), on }, lifts });

test("each meaning has its scale, and off the scale is on the scale turned round", () => {
  expect(onScale(form("per hand"), person, kgOf(10))).toBe(kg(20));
  expect(onScale(form("added to body"), person, kgOf(10))).toBe(kg(90));
  expect(onScale(form("assist"), person, kgOf(10))).toBe(kg(70));
  expect(onScale(form("stack"), person, kgOf(10))).toBe(kg(10));
  for (const meaning of ["total", "per hand", "added to body", "assist", "stack", "one implement"] as const) {
    expect(offScale(form(meaning), person, onScale(form(meaning), person, kgOf(10))!)).toBe(kg(10));
  }
  expect(onScale(form("stack"), person, undefined)).toBeUndefined();
});

test("a record without a load counts only where the body is part of it", () => {
  expect(recordsOf(form("total"), person).map((lift) => lift.reps)).toEqual([1]);
  expect(recordsOf(form("added to body"), person).map((lift) => lift.reps)).toEqual([6, 1]);
});

test("the 1RM is on the scale: 80 kg of body for 6 repetitions", () => {
  expect(ownStrength(form("added to body"), person, on)?.low).toBe(kg(92));
  expect(ownStrength(form("total"), person, on)?.low).toBe(kg(10));
  expect(ownStrength(form("band"), person, on)).toBeUndefined();
});
