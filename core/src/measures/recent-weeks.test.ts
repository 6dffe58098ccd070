import { expect, test } from "vitest";
import { addDays } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { StaveEvent } from "../model/index.ts";
import { nextRevision } from "../revise/index.ts";
import { madeUpSituation, noonOf, PLAN_START, recordedSession } from "../testing/index.ts";
import { foldRecord, logOf, recentSets, recentWeeks, weeklySets } from "./index.ts";

const SITUATION = madeUpSituation(CATALOGUE, [], 14);
const PLAN = nextRevision(SITUATION);
const session = (id: string, n: number, on: number) => recordedSession(PLAN, id, n, noonOf(on));
const recent = (on: number, events: readonly StaveEvent[], written: Parameters<typeof recentWeeks>[4] = []) => {
  const log = logOf(PLAN, foldRecord(events), () => undefined);
  return recentWeeks(log, CATALOGUE, SITUATION.dayOf, addDays(PLAN_START, on), written);
};
const whole = [...session("base/1/a", 0, 0), ...session("base/1/b", 40, 3)];

test("a week done as asked counts what the week of the plan counts, and days off are told to the day", () => {
  const [week, ...more] = recent(20, whole);
  expect(more).toEqual([]);
  const asked = weeklySets(PLAN.phases[0]!.weeks[0]!.sessions, CATALOGUE).quarters;
  expect(week!.sets).toEqual(Object.fromEntries(Object.entries(asked).map(([muscle, count]) => [muscle, count / 4])));
  // The last sets were done on day 3: sixteen whole days lie between.
  expect(recentSets([week!], addDays(PLAN_START, 20))!.daysOff).toBe(16);
});

test("weeks of the roster stand before the record and never beside it", () => {
  const written = [
    { week: addDays(PLAN_START, -14), sets: { chest: 9 } },
    { week: addDays(PLAN_START, 0), sets: { chest: 30 } },
  ];
  expect(recent(7, whole, written).map(({ week }) => week - PLAN_START)).toEqual([-3, -14]);
  expect(recent(7, [], written)).toEqual(written);
});

test("what was done on the day or later does not count, nor does what lies eight weeks before the last record", () => {
  expect(recent(0, whole)).toEqual([]);
  const later = [...whole, ...session("base/2/a", 90, 80)];
  expect(recent(81, later)).toHaveLength(1);
});
