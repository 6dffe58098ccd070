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
const done = (id: string, n: number, at: string, said: Partial<SetDone>, key = "squat", set = 0) =>
  madeUpEvent(
    id,
    n,
    "set-done",
    { exercise: "goblet-squat", reps: "as asked", load: "as asked", reserve: "not said", ...said },
    { of: { plan: "plan-1", session: at, slot: key, set } },
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

test("of a slot in which two forms were done, each form has its own sets", () => {
  const one = done("a", 1, "base/1/a", { reps: 8 });
  const second = done("b", 2, "base/1/a", { reps: 12, exercise: "body-squat" }, "squat", 1);
  const reps = (exercise: string) =>
    exerciseHistory(log([one, second]), exercise).map(({ sets }) => sets.map((each) => leastOf(each.reps)));
  expect(reps("goblet-squat")).toEqual([[8]]);
  expect(reps("body-squat")).toEqual([[12]]);
});

test("two sets of one form are one session of it", () => {
  const events = [8, 7].map((reps, set) => done(`set-${set}`, set + 1, "base/1/a", { reps }, "squat", set));
  const history = exerciseHistory(log(events), "goblet-squat");
  expect(history.map(({ sets }) => sets.map((each) => leastOf(each.reps)))).toEqual([[8, 7]]);
});

test("a session that no plan knows is left out; one that an older plan knows comes last", () => {
  const gone = done("a", 1, "base/9/z", {});
  expect(log([gone])).toEqual([]);
  const old: Plan = {
    ...PLAN,
    phases: [{ ...PLAN.phases[0]!, key: "before", weeks: [week(1)] }],
  };
  const before = done("b", 1, "before/1/a", {});
  const known = log([before, done("c", 2, "base/1/a", {})], {
    "plan-1": { ...old, phases: [...old.phases, ...PLAN.phases] },
  });
  expect([...new Set(known.map((one) => one.session))]).toEqual(["base/1/a", "before/1/a"]);
});

test("a set that nobody asked for has nothing asked beside it; what was left out and an early end are told", () => {
  const of = { plan: "plan-1", session: "base/1/a", slot: "squat", set: 2 };
  const extra = done("a", 1, "base/1/a", {}, "squat", 2);
  const leftOut = madeUpEvent("b", 2, "set-left-out", {}, { of: { ...of, set: 1 } });
  const end = (early: boolean) =>
    madeUpEvent("c", 3, "session-ended", { early }, { of: { plan: "plan-1", session: "base/1/a" } });
  const [one] = slotHistory(log([extra, leftOut, end(true)]), "squat");
  expect(one).toMatchObject({ phase: "base", week: 1, light: false, leftOut: [1], endedEarly: true });
  expect(one!.sets[0]).not.toHaveProperty("asked");
  expect(slotHistory(log([extra, end(false)]), "squat")[0]).not.toHaveProperty("endedEarly");
  expect(slotHistory(log([extra]), "squat")[0]).not.toHaveProperty("endedEarly");
});

test("a slot of which nothing was done in its session stands there without sets", () => {
  const history = slotHistory(log([done("a", 1, "base/1/a", {}, "other")]), "squat");
  expect(history).toMatchObject([{ sets: [], leftOut: [] }]);
});

test("of one side, nothing is told, whichever it is; a value of 0 is one", () => {
  expect(leastOf({ right: 6 })).toBeUndefined();
  expect(leastOf({ left: 0, right: 6 })).toBe(0);
  expect(leastOf({ both: 0 })).toBe(0);
});
