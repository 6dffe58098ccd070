import { expect, test } from "vitest";
import type { PlanPhase, PlanSession } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import { musclesIn } from "./muscle-mask.ts";
import { sessionsToPlace, trainingDays } from "./sessions-to-place.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", muscles: { "front thigh": 1, buttocks: 1, "low back": 0.5 } }),
  madeUpExercise({ id: "press", pattern: "horizontal push", muscles: { chest: 1, triceps: 0.5 } }),
]);

function session(key: string, exercise: string, reserve: number, setCount: number, high: number): PlanSession {
  const dose = sets(setCount, reps(8, { reserve: { from: reserve, to: reserve } }));
  return {
    key,
    title: key,
    warmup: [],
    blocks: [{ kind: "straight", slots: [{ key: `${key}-1`, exercise, dose, why: [], offer: [] }] }],
    conditioning: [],
    open: [],
    minutes: { low: high - 10, high },
  };
}

/** Three weeks, the third light, with three sessions a week. */
const phase: PlanPhase = {
  key: "base",
  title: "Base",
  score: { must: 0, want: 0, bound: 0, proven: true },
  weeks: [1, 2, 3].map((week) => ({
    week,
    light: week === 3,
    sessions: [
      session("A", "squat", 2, week === 3 ? 2 : 3, 40.2),
      session("B", "press", 2, 3, 30),
      session("C", "squat", 4, 3, 35),
    ],
  })),
};

test("every week has all sessions, or they come in turn when days are fewer", () => {
  const ids = (perWeek: number) => sessionsToPlace(phase, catalogue, perWeek).map(({ id, week }) => `${week}:${id}`);
  expect(ids(3)).toHaveLength(9);
  expect(ids(2)).toEqual(["0:base/1/A", "0:base/1/B", "1:base/2/C", "1:base/2/A", "2:base/3/B", "2:base/3/C"]);
  expect(ids(0)).toEqual([]);
});

test("a session of which nothing is left needs no day, and takes no turn. Once its 0 minutes stopped everything", () => {
  const emptied = (which: string): PlanPhase => ({
    ...phase,
    weeks: phase.weeks.map((week) => ({
      ...week,
      sessions: week.sessions.map((one) =>
        which.includes(one.key) ? { ...one, blocks: [], minutes: { low: 0, high: 0 } } : one,
      ),
    })),
  });
  const ids = (which: string, perWeek: number) =>
    sessionsToPlace(emptied(which), catalogue, perWeek).map(({ id, week }) => `${week}:${id}`);
  expect(ids("B", 2)).toEqual(["0:base/1/A", "0:base/1/C", "1:base/2/A", "1:base/2/C", "2:base/3/A", "2:base/3/C"]);
  expect(ids("ABC", 3)).toEqual([]);
  expect(ids("", 3)).toHaveLength(9);
});

test("length, hard muscles and week are those of the week it stands in", () => {
  const [first] = sessionsToPlace(phase, catalogue, 3, 4);
  expect(first).toMatchObject({ id: "base/1/A", week: 4, planWeek: 1, phase: "base", session: "A", minutes: 41 });
  const hard = sessionsToPlace(phase, catalogue, 3).map(({ id, hard }) => [id, musclesIn(hard)]);
  expect(hard.slice(0, 3)).toEqual([
    ["base/1/A", ["buttocks", "front thigh"]],
    ["base/1/B", ["chest"]],
    ["base/1/C", []],
  ]);
  // In the light week two sets are left, which load nothing hard.
  expect(hard[6]).toEqual(["base/3/A", []]);
});

test("training days are those of the best whole week, long windows only", () => {
  const hour = { from: 600, to: 660 };
  const free = [[hour], [], [hour], [], [{ from: 600, to: 620 }], [], []];
  const away = free.map(() => []);
  expect(trainingDays([...free, ...away], 7, 45)).toBe(2);
  expect(trainingDays([...free, ...away], 7, 20)).toBe(3);
  expect(trainingDays([...away, ...free], 7, 45)).toBe(2);
  expect(trainingDays(free.slice(0, 3), 7, 45)).toBe(2);
  expect(trainingDays([...away, [hour], [hour], [hour]], 7, 45)).toBe(0);
  expect(trainingDays([], 7, 45)).toBe(0);
});
