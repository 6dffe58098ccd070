import { describe, expect, test } from "vitest";
import { addDays } from "../day.ts";
import type { RecentWeek } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, PLAN_START, reps, sets } from "../testing/index.ts";
import { type Log, musclePast } from "./index.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "bench", name: "Bench", muscles: { chest: 1, triceps: 0.5 } }),
  madeUpExercise({ id: "row", name: "Row", muscles: { lats: 1 } }),
]);
const dayOf = (at: number) => addDays(PLAN_START, at);
/** One set of a movement on each of some days. */
const log = (...did: readonly (readonly [exercise: string, day: number])[]): Log =>
  did.map(([exercise, at], n) => ({
    session: `base/${n + 1}/a`,
    phase: "base",
    week: n + 1,
    light: false,
    at,
    n,
    asked: { key: exercise, exercise, dose: sets(1, reps(8)), why: [], offer: [] },
    sets: [{ set: 0, exercise }],
    leftOut: [],
  }));
const past = (
  muscle: "chest" | "triceps" | "lats" | "calf",
  did: Log,
  on: number,
  written: readonly RecentWeek[] = [],
) => musclePast(muscle, did, catalogue, dayOf, addDays(PLAN_START, on), written);

describe("a muscle by itself, whatever the person did with others", () => {
  const did = log(["bench", 0], ["row", 2], ["row", 9], ["row", 16], ["row", 23]);

  test("thirteen days without it are no break, fourteen are", () => {
    expect(past("chest", did, 13)).toEqual({ days: 13, ever: true, exposures: 1 });
    expect(past("chest", did, 14)).toEqual({ days: 14, ever: true, exposures: 0 });
    expect(past("lats", did, 24)).toEqual({ days: 1, ever: true, exposures: 4 });
  });

  test("what only helps is trained too; what nothing used is off for as long as anything is known", () => {
    expect(past("triceps", did, 13)).toMatchObject({ exposures: 1 });
    expect(past("calf", did, 24)).toEqual({ days: 24, ever: false, exposures: 0 });
  });

  test("taken up again: sessions since, and the days before", () => {
    const back = log(["bench", 0], ["row", 9], ["bench", 20], ["bench", 23]);
    expect(past("chest", back, 21)).toEqual({ days: 1, ever: true, exposures: 1, daysBefore: 20 });
    expect(past("chest", back, 24)).toEqual({ days: 1, ever: true, exposures: 2, daysBefore: 20 });
    expect(past("lats", log(["bench", 0], ["row", 15]), 16)).toEqual({
      days: 1,
      ever: true,
      exposures: 1,
      daysBefore: 15,
    });
  });
});

test("weeks of the roster tell what was before the record; without both nothing is known", () => {
  const weeks = (muscle: "chest" | "lats") => [{ week: addDays(PLAN_START, -7), sets: { [muscle]: 6 } }];
  expect(past("chest", [], 5, weeks("chest"))).toEqual({ days: 6, ever: true, exposures: 1 });
  expect(past("lats", [], 7, weeks("chest"))).toEqual({ days: 14, ever: false, exposures: 0 });
  expect(past("chest", [], 5)).toBeUndefined();
  expect(past("chest", log(["bench", 5]), 5)).toBeUndefined();
});
