import { expect, test } from "vitest";
import type { Plan, PlanSession, PlanSlot, SetDone, StaveEvent } from "../model/index.ts";
import { madeUpEvent, reps, sets } from "../testing/index.ts";
import { exerciseHistory, foldRecord, leastOf, loadAsked, logOf, occurrencesOf, slotHistory } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const slot = (key: string, exercise: string, more: Partial<PlanSlot> = {}): PlanSlot => ({
  key,
  exercise,
  dose: sets(2, reps(8)),
  load: kg(12),
  why: [],
  offer: [],
  ...more,
});
const session = (key: string, ...slots: readonly PlanSlot[]): PlanSession => ({
  key,
  title: key,
  warmup: [],
  blocks: [{ kind: "straight", slots }],
  conditioning: [],
  open: [],
  minutes: { low: 10, high: 20 },
});
const week = (number: number, light = false) => ({
  week: number,
  light,
  sessions: [session("a", slot("squat", "goblet-squat")), session("b", slot("squat-b", "goblet-squat"))],
});
const PLAN: Plan = {
  id: "plan-1",
  person: "ana",
  programme: "hash",
  made: { engine: "1", catalogue: "c", state: "s", decisions: "d" },
  firmTo: { phase: "base" },
  notes: [],
  phases: [
    {
      key: "base",
      title: "Base",
      score: { must: 0, want: 0, bound: 0, proven: true },
      weeks: [week(1), week(2, true)],
    },
  ],
};
const done = (id: string, n: number, at: string, said: Partial<SetDone>, key = "squat") =>
  madeUpEvent(
    id,
    n,
    "set-done",
    { exercise: "goblet-squat", reps: "as asked", load: "as asked", reserve: "not said", ...said },
    { of: { plan: "plan-1", session: at, slot: key, set: 0 } },
  );

const log = (events: readonly StaveEvent[], revisions: Readonly<Record<string, Plan>> = {}) =>
  logOf(PLAN, foldRecord(events), (id) => revisions[id]);

test("occurrences go by phase, week and session", () => {
  expect(occurrencesOf(PLAN).map(({ id, light }) => [id, light])).toEqual([
    ["base/1/a", false],
    ["base/1/b", false],
    ["base/2/a", true],
    ["base/2/b", true],
  ]);
});

test("sets stand beside what was asked, in the plan's order, whatever the order of recording", () => {
  const events = [done("late", 1, "base/2/a", { reps: 6 }), done("early", 2, "base/1/a", { reps: 7 })];
  const history = slotHistory(log(events), "squat");
  expect(history.map((one) => [one.session, one.light, one.sets[0]!.reps, one.sets[0]!.asked])).toEqual([
    ["base/1/a", false, { both: 7 }, reps(8)],
    ["base/2/a", true, { both: 6 }, reps(8)],
  ]);
});

test("a load left alone is the one asked, for the form that was asked only; none is none", () => {
  const lifted = (said: Partial<SetDone>) =>
    slotHistory(log([done("a", 1, "base/1/a", said)]), "squat")[0]!.sets[0]!.lifted;
  expect(lifted({})).toEqual(kg(12));
  expect(lifted({ load: kg(14) })).toEqual(kg(14));
  expect(lifted({ load: "none" })).toBeUndefined();
  expect(lifted({ exercise: "body-squat" })).toBeUndefined();
});

test("what was asked is what was on the screen, and not what a later revision asks", () => {
  const heavier = week(1);
  const old = {
    ...PLAN,
    id: "plan-1",
    phases: [
      {
        ...PLAN.phases[0]!,
        weeks: [{ ...heavier, sessions: [session("a", slot("squat", "goblet-squat", { load: kg(10) }))] }],
      },
    ],
  };
  const events = [done("a", 1, "base/1/a", {})];
  expect(slotHistory(log(events, { "plan-1": old }), "squat")[0]!.sets[0]!.lifted).toEqual(kg(10));
  expect(slotHistory(log(events), "squat")[0]!.sets[0]!.lifted).toEqual(kg(12));
});

test("loads may differ from set to set", () => {
  expect([0, 1, 2].map((at) => loadAsked({ ...slot("s", "x"), loads: [kg(10), kg(8)] }, at)?.value)).toEqual([
    10, 8, 12,
  ]);
});

test("one exercise in two slots has one history, in the order of recording", () => {
  const events = [done("a", 3, "base/1/a", { reps: 8 }), done("b", 2, "base/1/b", { reps: 9 }, "squat-b")];
  const history = exerciseHistory(log(events), "goblet-squat");
  expect(history.map((one) => one.session)).toEqual(["base/1/b", "base/1/a"]);
  expect(exerciseHistory(log(events), "body-squat")).toEqual([]);
});

test("of two sides the weaker counts, and of one side nothing is told", () => {
  expect(leastOf({ both: 8 })).toBe(8);
  expect(leastOf({ left: 8, right: 6 })).toBe(6);
  expect(leastOf({ left: 8 })).toBeUndefined();
  expect(leastOf(undefined)).toBeUndefined();
});
