import { describe, expect, test } from "vitest";
import { madeUpExercise } from "../testing/index.ts";
import { CATALOGUE } from "./catalogue.ts";
import { type Facts, type TimeKind, timeKindOf, USUAL_TIMES } from "./usual-times.ts";

/** As our table prints them, ours, no source: seconds a repetition, first set-up, between sets, to the next station. */
const PRINTED: Readonly<Record<Exclude<TimeKind, "cyclic" | "hold">, readonly [number, number, number, number]>> = {
  barbell: [4, 120, 20, 60],
  "barbell hinge": [4, 120, 25, 60],
  "power lift": [5, 120, 20, 60],
  "weight in hand": [3.5, 30, 10, 40],
  "one side": [3.5, 30, 10, 40],
  machine: [3.5, 30, 5, 40],
  body: [3, 15, 0, 20],
  "bar or bars": [3.5, 20, 5, 40],
  band: [3, 40, 10, 20],
  isolation: [3, 20, 5, 40],
  carry: [27 / 30, 40, 0, 40],
  "jump or throw": [3, 20, 0, 30],
  mobility: [4, 10, 0, 10],
};

test.each(Object.entries(PRINTED))("%s takes the printed times", (kind, [rep, setup, change, move]) => {
  const times = USUAL_TIMES[kind as keyof typeof PRINTED];
  expect(times.secondsPerRep).toBeCloseTo(rep, 10);
  expect([times.setupS, times.changeS, times.moveS]).toEqual([setup, change, move]);
});

test("thirty metres carried take 25 to 30 seconds", () => {
  expect(30 * USUAL_TIMES.carry.secondsPerRep).toBeGreaterThanOrEqual(25);
  expect(30 * USUAL_TIMES.carry.secondsPerRep).toBeLessThanOrEqual(30);
});

describe("which row a movement takes", () => {
  const plain: Facts = madeUpExercise({ id: "any" });
  const rows: readonly (readonly [TimeKind, Partial<Facts>])[] = [
    ["body", {}],
    ["hold", { amounts: "hold", mode: "hold" }],
    ["mobility", { pattern: "mobility", amounts: "hold" }],
    ["carry", { pattern: "carry", amounts: "metres", needs: [["dumbbell"]], loadMeaning: "per hand" }],
    ["jump or throw", { pattern: "throw", needs: [["weighted ball"]] }],
    ["cyclic", { pattern: "locomotion", mode: "cyclic", amounts: "time" }],
    ["power lift", { pattern: "power lift", needs: [["barbell"]], loadMeaning: "total" }],
    ["barbell", { needs: [["barbell"], ["rack"]], loadMeaning: "total" }],
    ["barbell hinge", { pattern: "hinge", needs: [["hex bar"]], loadMeaning: "total" }],
    ["band", { needs: [["band"]], loadMeaning: "band" }],
    ["isolation", { pattern: "lower isolation", needs: [["dumbbell"]], loadMeaning: "per hand" }],
    ["bar or bars", { needs: [["pull-up bar"]] }],
    ["machine", { needs: [["leg press"]], loadMeaning: "stack" }],
    ["weight in hand", { needs: [["dumbbell", "kettlebell"]], loadMeaning: "one implement" }],
    ["one side", { needs: [["dumbbell"]], loadMeaning: "one implement", eachSide: true }],
    // A bar that hangs in a rack to be pulled on is no load.
    ["body", { needs: [["barbell"], ["rack"]], loadMeaning: "height" }],
  ];
  test.each(rows)("%s: %o", (kind, facts) => {
    expect(timeKindOf({ ...plain, ...facts })).toBe(kind);
  });
});

test("a pull that is set down each time takes a second more than one that is not", () => {
  const rep = (id: string) => CATALOGUE.exercises.get(id)?.secondsPerRep;
  expect([rep("barbell-deadlift"), rep("barbell-rdl"), rep("back-squat")]).toEqual([5, 4, 4]);
});
