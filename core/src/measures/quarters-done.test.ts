import { expect, test } from "vitest";
import { addDays, type Day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { nextRevision } from "../revise/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpSituation,
  noonOf,
  PLAN_START,
  recordedSession,
  reps,
  sets,
} from "../testing/index.ts";
import { addQuarters, type DoneSet, foldRecord, logOf, quartersDone, slotQuarters, slotsIn } from "./index.ts";

const PLAN = nextRevision(madeUpSituation(CATALOGUE));
const dayOf = (at: number) => Math.floor(at / 86_400_000) as Day;
const done = (events: ReturnType<typeof recordedSession>, from = 0, to = 7) =>
  quartersDone(
    logOf(PLAN, foldRecord(events), () => undefined),
    CATALOGUE,
    dayOf,
    addDays(PLAN_START, from),
    addDays(PLAN_START, to),
  );

test("everything done as asked counts as the plan counts it; other days do not", () => {
  const [session] = PLAN.phases[0]!.weeks[0]!.sessions;
  const asked = slotsIn(session!)
    .map(({ exercise, dose }) => slotQuarters(CATALOGUE.exercises.get(exercise)!, dose))
    .reduce(addQuarters, {});
  const events = recordedSession(PLAN, "base/1/a", 0, noonOf(0));
  expect(done(events)).toEqual(asked);
  expect(done(events, 1)).toEqual({});
});

test("a set with much left over was practice, whatever was asked", () => {
  const sets = (reserve: number) => ({ squat: [{ reps: 5, reserve }], row: [] });
  expect(done(recordedSession(PLAN, "base/1/a", 0, noonOf(0), sets(6)))["front thigh"]).toBeUndefined();
  expect(done(recordedSession(PLAN, "base/1/a", 0, noonOf(0), sets(2)))["front thigh"]).toBe(4);
});

test("a set that nobody asked for counts by what was done: repetitions whole, a short hold half", () => {
  const slot = { key: "s", exercise: "plank", dose: sets(1, reps(8)), why: [], offer: [] };
  const catalogue = madeUpCatalogue([
    madeUpExercise({ id: "plank", pattern: "anti-extension", mode: "hold", muscles: { "front trunk": 1 } }),
    madeUpExercise({ id: "curl", pattern: "upper isolation", muscles: { biceps: 1 } }),
  ]);
  const quarters = (...done: readonly Partial<DoneSet>[]) =>
    quartersDone(
      [
        {
          session: "base/1/a",
          phase: "base",
          week: 1,
          light: false,
          at: 0,
          n: 1,
          asked: slot,
          sets: done.map((each, set) => ({ set, exercise: "curl", ...each })),
          leftOut: [],
        },
      ],
      catalogue,
      dayOf,
      0 as Day,
      1 as Day,
    );
  expect(quarters({ reps: { both: 8 } }, {})).toEqual({ biceps: 8 });
  expect(quarters({ reps: { both: 8 }, reserve: 4 }, { reps: { both: 8 }, reserve: 5 })).toEqual({ biceps: 4 });
  expect(quarters({ exercise: "plank", holdS: { both: 10 } })).toEqual({ "front trunk": 4 });
  expect(quarters({ exercise: "plank", holdS: { left: 30, right: 9 } })).toEqual({ "front trunk": 2 });
  expect(quarters({ exercise: "moonwalk", reps: { both: 8 } })).toEqual({});
});

test("from the first day up to the day before the last", () => {
  const events = recordedSession(PLAN, "base/1/a", 0, noonOf(3));
  expect(Object.keys(done(events, 3, 4))).not.toEqual([]);
  expect(done(events, 2, 3)).toEqual({});
  expect(done(events, 4, 5)).toEqual({});
});
