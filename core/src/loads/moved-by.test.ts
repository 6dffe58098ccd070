import fc from "fast-check";
import { expect, test } from "vitest";
import type { Exercise, LoadMeaning } from "../model/index.ts";
import { madeUpExercise, published } from "../testing/index.ts";
import { inKg, kg, type Load } from "../units.ts";
import { loadToMove, movedBy } from "./moved-by.ts";

const kgOf = (value: number): Load => ({ value, unit: "kg" });
const form = (loadMeaning: LoadMeaning, share?: number): Exercise =>
  madeUpExercise({
    id: "it",
    loadMeaning,
    ...(share === undefined ? {} : { bodyShare: { share, source: "deLeva1996" as const } }),
  });

published("deLeva1996", "80 kg man, pull-up with 10 kg added, kg moved", [
  [
    "worked",
    "1 − 2 × (forearm + hand) = 0.9554",
    () => inKg(movedBy(form("added to body", 0.9554), kgOf(10), kg(80))!),
    86.43,
    0.02,
  ],
]);
published("mier2014", "60 kg woman, push-up, bottom, kg moved", [
  ["worked", "70.3 %", () => inKg(movedBy(form("body only", 0.703), undefined, kg(60))!), 42.18, 0.005],
]);

test("what a load moves, in each meaning", () => {
  expect(movedBy(form("total"), kgOf(40))).toBe(kg(40));
  expect(movedBy(form("per hand"), kgOf(12))).toBe(kg(24));
  expect(movedBy(form("one implement"), kgOf(16))).toBe(kg(16));
  expect(movedBy(form("assist", 1), kgOf(64), kg(82))).toBe(kg(18));
  expect(movedBy(form("assist", 1), kgOf(90), kg(82))).toBe(kg(0));
  expect(movedBy(form("added to body", 0.95), undefined, kg(80))).toBe(kg(76));
});

test("nobody knows what a stack or a band moves, nor help without the body mass of that day or its share", () => {
  for (const meaning of ["stack", "band", "none"] as const)
    expect(movedBy(form(meaning, 1), kgOf(10), kg(80))).toBeUndefined();
  for (const meaning of ["assist", "added to body", "body only"] as const) {
    expect(movedBy(form(meaning, 1), kgOf(10))).toBeUndefined();
    expect(movedBy(form(meaning), kgOf(10), kg(80))).toBeUndefined();
    expect(loadToMove(form(meaning), kg(10), kg(80))).toBeUndefined();
  }
  for (const meaning of ["total", "per hand", "one implement", "assist"] as const) {
    expect(movedBy(form(meaning, 1), undefined, kg(80))).toBeUndefined();
  }
  expect(loadToMove(form("stack"), kg(10))).toBeUndefined();
});

test("the load that moves a mass moves that mass", () => {
  const meaning = fc.constantFrom("total", "per hand", "one implement", "added to body", "assist");
  fc.assert(
    fc.property(meaning, fc.integer({ min: 1, max: 160 }), (said, halves) => {
      const exercise = form(said as LoadMeaning, 0.9);
      const moved = movedBy(exercise, kgOf(halves / 2), kg(100))!;
      expect(loadToMove(exercise, moved, kg(100))).toBe(kg(halves / 2));
    }),
  );
});

test("a mass less than the body's own part asks for no load and one greater for no help", () => {
  expect(loadToMove(form("added to body", 0.9), kg(50), kg(100))).toBe(kg(0));
  expect(loadToMove(form("assist", 0.9), kg(95), kg(100))).toBe(kg(0));
});
