import { expect, test } from "vitest";
import { CATALOGUE } from "./catalogue.ts";

/** Useful ranges of holds as our table prints them, ours, no source: seconds from, to, usual raise. */
const PRINTED: readonly (readonly [what: string, from: number, to: number, step: number])[] = [
  ["forearm, knee, bench or wall plank; hands plank", 10, 60, 5],
  ["long-lever plank, hollow hold, body saw position", 10, 30, 5],
  ["side plank on knees, staggered or against a wall", 10, 45, 5],
  ["side plank feet stacked or top leg lifted", 10, 30, 5],
  ["adductor side plank short or long lever", 5, 20, 3],
  ["wall sit", 15, 120, 10],
  ["split-squat position held", 10, 45, 5],
  ["dead hang", 10, 60, 5],
  ["hang with blades drawn; top of pull-up", 5, 20, 3],
  ["top support on bars or rings", 5, 30, 5],
  ["wall handstand", 10, 40, 5],
  ["bridge top, two legs", 10, 60, 5],
  ["bridge top, one leg", 5, 30, 5],
  ["calf raise top, one leg", 10, 45, 5],
  ["pull, push or towel against itself or a wall", 5, 30, 5],
  ["seated lean or thigh press", 5, 30, 5],
  ["loaded standing hold", 10, 45, 5],
  ["mobility position", 10, 60, 10],
];

const HOLDS = [...CATALOGUE.exercises.values()].filter(({ amounts }) => amounts === "hold");

test("every hold has a range, and it is one of the printed ones", () => {
  const printed = new Set(PRINTED.map(([, from, to, step]) => `${from}–${to} by ${step}`));
  const odd = HOLDS.filter(({ hold }) => !hold || !printed.has(`${hold.from}–${hold.to} by ${hold.step}`));
  expect(odd.map(({ id }) => id)).toEqual([]);
  expect(HOLDS.length).toBeGreaterThan(0);
});

test("nothing but a hold has a hold range", () => {
  const odd = [...CATALOGUE.exercises.values()].filter(({ amounts, hold }) => hold && amounts !== "hold");
  expect(odd.map(({ id }) => id)).toEqual([]);
});

test.each([["wall-sit-high", 15, 120, 10]] as const)("%s: %i to %i s by %i", (id, from, to, step) => {
  expect(CATALOGUE.exercises.get(id)?.hold).toEqual({ from, to, step });
});
