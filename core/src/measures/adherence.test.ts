import { expect, test } from "vitest";
import { addDays } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { nextRevision, sessionDays } from "../revise/index.ts";
import { madeUpEvent, madeUpSituation, noonOf, PLAN_START, recordedSession } from "../testing/index.ts";
import { adherence, foldRecord, slotsIn } from "./index.ts";

const SITUATION = madeUpSituation(CATALOGUE, [], 14);
const PLAN = nextRevision(SITUATION);
const DAYS = sessionDays({ ...SITUATION, plan: PLAN });
const SLOTS = slotsIn(PLAN.phases[0]!.weeks[0]!.sessions[0]!);
const ASKED = SLOTS.reduce((sum, { dose }) => sum + dose.sets.length, 0);
const of = (session: string) => ({ plan: PLAN.id, session });
const over = (weeks: number, ...events: Parameters<typeof foldRecord>[0][]) =>
  adherence(DAYS, foldRecord(events.flat()), PLAN_START, addDays(PLAN_START, 7 * weeks));

test("sessions with a day, and the sets of those that were done; what is not said is no reason", () => {
  const first = recordedSession(PLAN, "base/1/a", 0, noonOf(0), { row: [{}, {}] });
  expect(over(1, first)).toEqual({
    asked: 2,
    done: 1,
    early: 0,
    missed: {},
    sets: { asked: ASKED, done: ASKED - SLOTS[1]!.dose.sets.length + 2 },
  });
});

test("what was said to be missed is told by why, and no longer once it was done", () => {
  const sick = madeUpEvent("sick", 1, "missed", { because: "sick" }, { of: of("base/1/b") });
  const unsaid = madeUpEvent("gone", 2, "missed", {}, { of: of("base/1/a") });
  expect(over(1, [sick, unsaid])).toMatchObject({ asked: 2, done: 0, missed: { sick: 1, "not said": 1 } });
  expect(over(1, [sick], recordedSession(PLAN, "base/1/b", 5, noonOf(5)))).toMatchObject({ done: 1, missed: {} });
});

test("a session done a week late is done; one that ended early is done, and more sets than asked are no more", () => {
  const late = recordedSession(PLAN, "base/1/a", 0, noonOf(8), { squat: [{}, {}, {}, {}, {}] });
  const early = madeUpEvent("early", 99, "session-ended", { early: true }, { of: of("base/1/a") });
  expect(over(1, late, [early])).toMatchObject({ done: 1, early: 1, sets: { asked: ASKED, done: ASKED } });
});

test("from the first day up to the day before the last; nothing asked, nothing said", () => {
  const asked = (from: number, to: number) =>
    adherence(DAYS, foldRecord([]), addDays(PLAN_START, from), addDays(PLAN_START, to)).asked;
  const first = DAYS[0]!.day - PLAN_START;
  expect([asked(first, first + 1), asked(first + 1, first + 2), asked(first - 1, first)]).toEqual([1, 0, 0]);
});

test("the same reason twice counts twice, and an end in time is not early", () => {
  const missed = ["base/1/a", "base/1/b"].map((session, at) =>
    madeUpEvent(`m-${at}`, at + 1, "missed", { because: "sick" }, { of: of(session) }),
  );
  expect(over(1, missed)).toMatchObject({ missed: { sick: 2 }, early: 0, sets: { asked: 0, done: 0 } });
  const end = madeUpEvent("end", 99, "session-ended", { early: false }, { of: of("base/1/a") });
  expect(over(1, recordedSession(PLAN, "base/1/a", 0, noonOf(0)), [end])).toMatchObject({ done: 1, early: 0 });
});
