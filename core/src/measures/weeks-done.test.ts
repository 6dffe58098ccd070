import { expect, test } from "vitest";
import { addDays } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { Away, StaveEvent } from "../model/index.ts";
import { nextRevision } from "../revise/index.ts";
import { madeUpEvent, madeUpSituation, noonOf, PLAN_START, recordedSession } from "../testing/index.ts";
import { foldRecord, OFF_DAYS, slotsIn, weeksDone } from "./index.ts";

const SITUATION = madeUpSituation(CATALOGUE, [], 14);
const PLAN = nextRevision(SITUATION);
const SPANS = [0, 1, 2, 3].map((week) => ({
  first: addDays(PLAN_START, 7 * week),
  last: addDays(PLAN_START, 7 * week + 6),
}));
const [SETS_A, SETS_B] = PLAN.phases[0]!.weeks[0]!.sessions.map((session) =>
  slotsIn(session).reduce((sum, { dose }) => sum + dose.sets.length, 0),
) as [number, number];
const weeks = (events: readonly StaveEvent[], today: number, away: readonly Away[] = []) =>
  weeksDone(PLAN, SPANS, foldRecord(events), { away, today: addDays(PLAN_START, today), dayOf: SITUATION.dayOf });
const gone = (from: number, to: number, waits?: true): Away => ({
  from: addDays(PLAN_START, from),
  to: addDays(PLAN_START, to),
  ...(waits ? { waits } : {}),
});

test("light weeks of 246 competitors lasted 6.4 ± 1.7 days: five days off are as long as the shortest usual one (rogerson2024)", () => {
  expect(OFF_DAYS).toBe(Math.ceil(6.4 - 1.7));
  expect(weeks([], 0, [gone(0, 4)])[0]!.off).toBe("away");
  expect(weeks([], 0, [gone(0, 3)])[0]!.off).toBeUndefined();
});

test("sets count on the days on which they were done; one session of two is half a week", () => {
  const done = recordedSession(PLAN, "base/1/a", 0, noonOf(8));
  const [one, two] = weeks(done, 14);
  expect(one).toMatchObject({ name: "base/1", asked: SETS_A + SETS_B, done: 0, off: "nothing recorded" });
  expect(two).toMatchObject({ name: "base/2", asked: SETS_A + SETS_B, done: SETS_A });
  expect(two!.off).toBeUndefined();
});

test("less than half is little; a week is only over after its last day; why it was missed is said where it is known", () => {
  const little = recordedSession(PLAN, "base/1/a", 0, noonOf(0), { row: [] });
  expect(weeks(little, 7)[0]!.off).toBe("little done");
  expect(weeks(little, 6)[0]!.off).toBeUndefined();
  const sick = madeUpEvent("sick", 50, "missed", { because: "sick" }, { of: { plan: PLAN.id, session: "base/1/b" } });
  expect(weeks([...little, sick], 7)[0]!.off).toBe("sick");
});

test("a clock outside the plan: the sets count in the week they were asked in", () => {
  expect(weeks(recordedSession(PLAN, "base/1/a", 0, noonOf(-9000)), 7)[0]!.done).toBe(SETS_A);
  expect(weeks(recordedSession(PLAN, "base/2/a", 0, noonOf(400)), 14)[1]!.done).toBe(SETS_A);
});

test("days on which the plan stands still stand before the week that they hold up", () => {
  const spans = SPANS.map(({ first, last }, at) =>
    at === 0 ? { first, last } : { first: addDays(first, 6), last: addDays(last, 6) },
  );
  const found = weeksDone(PLAN, spans, foldRecord([]), {
    away: [gone(7, 12, true)],
    today: PLAN_START,
    dayOf: SITUATION.dayOf,
  });
  expect(found.map(({ stoodStill, off }) => [stoodStill, off])).toEqual([
    [0, undefined],
    [6, undefined],
    [0, undefined],
    [0, undefined],
  ]);
});
