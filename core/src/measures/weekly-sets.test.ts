import { expect, test } from "vitest";
import type { MuscleShares, Programme, Slot } from "../model/index.ts";
import { hold, madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import { phaseWeekSets, weeklySets } from "./weekly-sets.ts";

const named = (id: string, muscles: MuscleShares) => madeUpExercise({ id, muscles, pattern: "hinge" });

/** Our own worked week: the shares of the catalogue guide, and the totals it comes to by hand. */
const CATALOGUE = madeUpCatalogue([
  named("bench", { chest: 1, "front shoulder": 0.5, triceps: 0.5 }),
  named("one-arm-row", { lats: 1, "mid back": 1, biceps: 0.5, "rear shoulder": 0.5 }),
  named("back-squat", { "front thigh": 1, buttocks: 1, "inner thigh": 0.5, "low back": 0.5 }),
  named("rdl", { "back thigh": 1, buttocks: 1, "low back": 0.5, "inner thigh": 0.5, forearm: 0.5 }),
  named("press", { "front shoulder": 1, "side shoulder": 0.5, triceps: 0.5, "upper traps": 0.5 }),
  named("pull-up", { lats: 1, biceps: 0.5, "mid back": 0.5, forearm: 0.5 }),
  named("curl", { biceps: 1 }),
  madeUpExercise({
    id: "side-plank",
    pattern: "anti-lateral flexion",
    mode: "hold",
    muscles: { "side trunk": 1, "side hip": 0.5 },
  }),
]);

const WEEK: readonly (readonly [string, number])[] = [
  ["bench", 3],
  ["one-arm-row", 3],
  ["back-squat", 3],
  ["rdl", 3],
  ["press", 2],
  ["pull-up", 3],
  ["curl", 2],
];

const session = {
  warmup: [{ exercise: "back-squat", dose: sets(3, reps(5)), for: "s" }],
  blocks: [
    ...WEEK.map(([exercise, count]) => ({
      kind: "straight" as const,
      slots: [{ exercise, dose: sets(count, reps(8)) }],
    })),
    { kind: "straight" as const, slots: [{ exercise: "side-plank", dose: sets(2, hold(20)) }] },
  ],
  conditioning: [{ exercise: "back-squat", dose: sets(1, reps(50)) }],
};

test("the worked week: every muscle as counted by hand, warm-up and conditioning left out", () => {
  const { quarters, unknown } = weeklySets([session], CATALOGUE);
  const inSets = Object.fromEntries(Object.entries(quarters).map(([muscle, value]) => [muscle, value / 4]));
  expect(unknown).toEqual([]);
  expect(inSets).toEqual({
    chest: 3,
    "front shoulder": 3.5,
    "side shoulder": 1,
    "rear shoulder": 1.5,
    lats: 6,
    "mid back": 4.5,
    "upper traps": 1,
    biceps: 5,
    triceps: 2.5,
    forearm: 3,
    "side trunk": 2,
    "low back": 3,
    buttocks: 6,
    "side hip": 1,
    "inner thigh": 3,
    "front thigh": 3,
    "back thigh": 3,
  });
});

test("what is not known is named, not guessed", () => {
  const odd = {
    ...session,
    blocks: [{ kind: "straight" as const, slots: [{ exercise: "moonwalk", dose: sets(3, reps(8)) }] }],
  };
  expect(weeklySets([odd], CATALOGUE)).toEqual({ quarters: {}, unknown: ["moonwalk"] });
});

const slot: Slot = {
  slot: "a",
  pattern: "upper isolation",
  first: "curl",
  down: 0,
  up: 0,
  dose: sets(3, reps(10)),
  changes: [{ week: 2, dose: sets(5, reps(8)) }],
  way: "load",
};
const programme: Programme = {
  stave: 1,
  id: "p",
  title: "P",
  version: 1,
  goal: "general",
  status: "novice",
  units: "kg",
  phases: [
    { key: "one", title: "One", weeks: 3, light: [3], sessions: [{ key: "a", title: "A", minutes: 30, work: [slot] }] },
  ],
};

test("dose changes and light weeks count", () => {
  const weeks = [1, 2, 3].map((week) => phaseWeekSets(programme, 0, week, CATALOGUE).quarters.biceps);
  expect(weeks).toEqual([12, 20, 12]);
});

test("a week that is not in the programme is refused", () => {
  for (const week of [0, 4, Number.NaN]) expect(() => phaseWeekSets(programme, 0, week, CATALOGUE)).toThrow(RangeError);
  expect(() => phaseWeekSets(programme, 1, 1, CATALOGUE)).toThrow(RangeError);
});
