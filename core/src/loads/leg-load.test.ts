import { expect, test } from "vitest";
import type { Exercise } from "../model/index.ts";
import { madeUpExercise, published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { legLoad } from "./leg-load.ts";

const squat = madeUpExercise({
  id: "squat",
  loadMeaning: "total",
  bodyShare: { share: 0.886, source: "deLeva1996" },
});
const split = madeUpExercise({
  id: "split",
  pattern: "single leg",
  limb: "split stance",
  loadMeaning: "per hand",
  bodyShare: { share: 0.844, source: "helme2020" },
});
const oneLeg: Exercise = madeUpExercise({
  id: "one-leg",
  limb: "one leg",
  bodyShare: { share: 0.94, source: "deLeva1996" },
});
const of = (exercise: Exercise, load: number, mass: number) => () =>
  inKg(legLoad(exercise, { value: load, unit: "kg" }, kg(mass)) ?? (Number.NaN as never));

published("helme2020", "80 kg person with 20 kg, rear foot raised: kg on the lead foot", [
  ["worked", "84.4 % of 100 kg", of(split, 10, 80), 84.4, 0.005],
]);
published("deLeva1996", "80 kg man with a 100 kg bar: kg moved by both legs", [
  ["worked", "88.6 % of 80 kg + 100 kg", () => 2 * of(squat, 100, 80)(), 170.88, 0.005],
]);
published("deLeva1996", "80 kg on one leg: kg moved", [["worked", "94 %", of(oneLeg, 0, 80), 75.2, 0.005]]);

test("undefined where the share, the load or the pattern does not tell", () => {
  const { bodyShare: _, ...unshared } = squat;
  expect(legLoad(unshared, { value: 20, unit: "kg" }, kg(80))).toBeUndefined();
  expect(legLoad(squat, undefined, kg(80))).toBeUndefined();
  expect(legLoad({ ...squat, loadMeaning: "stack" }, { value: 20, unit: "kg" }, kg(80))).toBeUndefined();
  expect(legLoad({ ...squat, pattern: "hinge" }, { value: 20, unit: "kg" }, kg(80))).toBeUndefined();
  expect(legLoad({ ...squat, mode: "hold" }, { value: 20, unit: "kg" }, kg(80))).toBeUndefined();
  expect(legLoad({ ...squat, limb: "alternating" }, { value: 20, unit: "kg" }, kg(80))).toBeUndefined();
});

test("added load may be none", () => {
  expect(legLoad({ ...oneLeg, loadMeaning: "added to body" }, undefined, kg(80))).toBe(kg(75.2));
});
