import { describe, expect, test } from "vitest";
import type { Exercise, ExerciseId, Hands } from "../model/index.ts";
import { published } from "../testing/index.ts";
import { CATALOGUE } from "./catalogue.ts";

function get(id: ExerciseId): Exercise {
  const exercise = CATALOGUE.exercises.get(id);
  if (!exercise) throw new Error(`The catalogue has no exercise "${id}"`);
  return exercise;
}

describe("holds have the printed range, in seconds, with the usual raise", () => {
  test.each([
    [["wall-forearm-plank", "bench-plank", "knee-plank", "forearm-plank"], 10, 60, 5],
    [["long-lever-plank", "hollow-hold"], 10, 30, 5],
    [["wall-side-plank", "side-plank-knees", "side-plank-staggered"], 10, 45, 5],
    [["side-plank", "side-plank-leg-lift"], 10, 30, 5],
    [["dead-hang", "box-hang"], 10, 60, 5],
    [["forearm-wall-push", "seated-forearm-push", "towel-pull-apart", "towel-self-row"], 5, 30, 5],
    [["seated-thigh-press", "seated-lean-hold"], 5, 30, 5],
  ] as const)("%s: %i to %i s by %i", (ids, from, to, step) => {
    for (const id of ids) expect(get(id).hold, id).toEqual({ from, to, step });
  });
});

describe("shares of body mass", () => {
  const share = (id: ExerciseId) => () => get(id).bodyShare?.share ?? Number.NaN;

  published("ebben2011", "peak force at the hands over body mass", [
    ["printed", "hands on 60.96 cm", share("push-up-60"), 0.41, 0],
    ["printed", "knees", share("knee-push-up"), 0.49, 0],
    ["printed", "hands on 30.48 cm", share("push-up-30"), 0.55, 0],
    ["printed", "regular", share("floor-push-up"), 0.64, 0],
    ["printed", "feet on 30.48 cm", share("push-up-feet-30"), 0.7, 0],
    ["printed", "feet on 60.96 cm", share("push-up-feet-60"), 0.74, 0],
  ]);
  published("melroseDawes2015", "share in a strap row, degrees from upright", [
    ["printed", "30 degrees", share("inverted-row-30"), 0.3744, 0],
    ["printed", "45 degrees", share("inverted-row-45"), 0.5288, 0],
    ["printed", "60 degrees", share("inverted-row-60"), 0.6808, 0],
    ["printed", "75 degrees", share("inverted-row-75"), 0.7938, 0],
  ]);
  published("deLeva1996", "share moved in a pull-up", [
    ["worked", "table 4, men: 1 − 2 × (0.0162 + 0.0061)", share("pull-up"), 0.955, 0.006],
    ["worked", "table 4, women: 1 − 2 × (0.0138 + 0.0056)", share("pull-up"), 0.961, 0.006],
  ]);
});

describe("which hands hold, push or brace", () => {
  const of = (hands: Hands) => [...CATALOGUE.exercises.values()].filter((exercise) => exercise.hands === hands);

  test("with one arm at rest there is still a push, a pull from the front and one from above", () => {
    const alone = of("one").filter(({ limb }) => limb === "one arm");
    for (const pattern of ["horizontal push", "vertical push", "horizontal pull", "vertical pull"] as const) {
      expect(
        alone.filter((exercise) => exercise.pattern === pattern).map(({ id }) => id),
        pattern,
      ).not.toEqual([]);
    }
  });

  test("a row that leans on the other hand says so", () => {
    expect(of("one, other braces").map(({ id }) => id)).toEqual(
      expect.arrayContaining(["one-arm-row", "bag-row-supported", "floor-to-stand"]),
    );
  });

  test("whatever loads hand, wrist or grip names a hand", () => {
    const forgot = of("none").filter(({ stress }) => stress.grip || stress.wr_ext);
    expect(forgot.map(({ id }) => id)).toEqual([]);
  });

  test("a push or a pull names a hand, even when only the forearm presses", () => {
    expect(of("none").filter(({ pattern }) => /push|pull|carry/.test(pattern))).toEqual([]);
  });
});

test("a week of upper-body and trunk work adds up as printed", () => {
  const week: readonly (readonly [ExerciseId, number])[] = [
    ["barbell-bench-press", 3],
    ["one-arm-row", 3],
    ["barbell-overhead-press", 2],
    ["pull-up", 3],
    ["dumbbell-curl", 2],
    ["side-plank", 2],
  ];
  const total: Record<string, number> = {};
  for (const [id, sets] of week) {
    for (const [muscle, share] of Object.entries(get(id).muscles)) total[muscle] = (total[muscle] ?? 0) + sets * share;
  }
  expect(total).toEqual({
    chest: 3,
    "front shoulder": 3.5,
    "side shoulder": 1,
    "rear shoulder": 1.5,
    lats: 6,
    "mid back": 4.5,
    "upper traps": 1,
    biceps: 5,
    triceps: 2.5,
    forearm: 1.5,
    "side trunk": 2,
    "side hip": 1,
  });
});
