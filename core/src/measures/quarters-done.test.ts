import { expect, test } from "vitest";
import { addDays, type Day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { nextRevision } from "../revise/index.ts";
import { madeUpSituation, noonOf, PLAN_START, recordedSession } from "../testing/index.ts";
import { addQuarters, foldRecord, logOf, quartersDone, slotQuarters, slotsIn } from "./index.ts";

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
