import { expect, test } from "vitest";
import type { Exercise, Hands, LoadMeaning } from "../model/index.ts";
import { madeUpExercise } from "../testing/index.ts";
import { kg, type Load } from "../units.ts";
import { heldPerHand, heldTotal } from "./held.ts";

const six: Load = { value: 6, unit: "kg" };
const form = (loadMeaning: LoadMeaning, hands: Hands): Exercise => madeUpExercise({ id: "it", loadMeaning, hands });

test.each([
  ["a pair of dumbbells", form("per hand", "two"), kg(12), kg(6)],
  ["a bar in both hands", form("total", "two"), kg(6), kg(3)],
  ["a bar in one hand", form("total", "one"), kg(6), kg(6)],
  ["one bell, also when both hands hold it", form("one implement", "two"), kg(6), kg(6)],
  ["a belt in a hang", form("added to body", "two"), kg(6), undefined],
  ["a vest without hands", form("added to body", "none"), kg(6), kg(6)],
  ["a push-up: nothing held, but hands carry body mass", form("body only", "two"), kg(0), undefined],
  ["a body squat", form("body only", "none"), kg(0), kg(0)],
  ["a stack", form("stack", "two"), undefined, undefined],
  ["a band", form("band", "two"), undefined, undefined],
  ["help", form("assist", "two"), undefined, undefined],
])("%s", (_, exercise, total, hand) => {
  expect(heldTotal(exercise, six)).toBe(total);
  expect(heldPerHand(exercise, six)).toBe(hand);
});

test("a load not known yet is not known to be under a limit", () => {
  for (const meaning of ["total", "per hand", "one implement", "added to body"] as const) {
    expect(heldTotal(form(meaning, "two"), undefined)).toBeUndefined();
    expect(heldPerHand(form(meaning, "two"), undefined)).toBeUndefined();
  }
});
