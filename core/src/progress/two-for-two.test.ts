import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, type Day, day } from "../day.ts";
import type { DoneSet, SlotSession } from "../measures/index.ts";
import type { SetDose } from "../model/index.ts";
import { published, reps, sets } from "../testing/index.ts";
import { twoForTwo } from "./two-for-two.ts";

const START = day("2027-03-01");
const TEN: SetDose = reps(10);
const clock = { today: addDays(START, 8), dayOf: (at: number) => (START + at) as Day };

/** Three sets of ten on so many days after the start; the last set as said. */
function session(at: number, last: Partial<DoneSet> | undefined, more: Partial<SlotSession> = {}): SlotSession {
  const dose = sets(3, TEN);
  const done = (set: number, said: Partial<DoneSet>): DoneSet => ({
    set,
    exercise: "row",
    asked: dose.sets[set]!,
    lifted: { value: 20, unit: "kg" },
    ...said,
  });
  return {
    session: `base/${at}/a`,
    phase: "base",
    week: 1,
    light: false,
    at,
    n: at,
    asked: { key: "row", exercise: "row", dose, why: [], offer: [] },
    sets: [done(0, {}), done(1, {}), ...(last === undefined ? [] : [done(2, last)])],
    leftOut: [],
    ...more,
  };
}
const did = (count: number, reserve?: number): Partial<DoneSet> => ({
  reps: { both: count },
  ...(reserve === undefined ? {} : { reserve }),
});
const raises = (...history: readonly SlotSession[]) => (twoForTwo(history, "row", 10, clock) === undefined ? 0 : 1);
const last =
  (...counts: readonly number[]) =>
  () =>
    raises(...counts.map((count, at) => session(at * 3, did(count))));

published("haffTriplett2016", "raise (1) or hold (0), goal 3 × 10, last sets", [
  ["worked", "strength.md 5: 12, 12", last(12, 12), 1, 0],
  ["worked", "strength.md 5: 12, 11", last(12, 11), 0, 0],
  ["worked", "strength.md 5: 12, 10, 12", last(12, 10, 12), 0, 0],
  ["worked", "strength.md, part 2, 7: 11, 11, where another rule raises", last(11, 11), 0, 0],
  ["worked", "strength.md, part 2, 7: 12, 10", last(12, 10), 0, 0],
]);

describe("what breaks the run", () => {
  const passed = session(0, did(12));
  test.each([
    ["one session alone", [passed]],
    ["repetitions that nobody entered", [passed, session(3, {})]],
    ["a last set that was not done", [passed, session(3, undefined)]],
    ["one side that nobody entered", [passed, session(3, { reps: { left: 12 } })]],
    ["the weaker side", [passed, session(3, { reps: { left: 13, right: 11 } })]],
    ["another form in the slot", [passed, session(3, { ...did(12), exercise: "band-row" })]],
    ["a load that is not known", [passed, session(3, { ...did(12), lifted: undefined as never })]],
    ["a break of 14 days between them", [session(-11, did(12)), session(3, did(12))]],
  ])("%s", (_, history) => expect(raises(...history)).toBe(0));

  test("14 days since the last session", () => {
    const history = [session(0, did(12)), session(3, did(12))];
    const on = (days: number) => twoForTwo(history, "row", 10, { ...clock, today: addDays(START, days) });
    expect(on(16)).toBeDefined();
    expect(on(17)).toBeUndefined();
  });
});

describe("what does not", () => {
  test("a light week between, and a session in which the slot was left out", () => {
    const light = session(2, did(5), { light: true });
    const out = session(3, undefined, { sets: [], leftOut: [0, 1, 2] });
    expect(raises(session(0, did(12)), light, out, session(5, did(12)))).toBe(1);
  });
});

describe("reserve, where it was asked and said", () => {
  const asked = { asked: reps(10, { reserve: { from: 2, to: 3 } }) };
  const twice = (count: number, reserve?: number) =>
    raises(session(0, { ...did(count, reserve), ...asked }), session(3, { ...did(count, reserve), ...asked }));
  test.each([
    [10, 5, 1],
    [10, 4, 0],
    [12, 2, 1],
    [12, 3, 1],
    [12, 1, 0],
    [13, 1, 1],
    [12, undefined, 1],
    [11, 4, 1],
  ])("%i repetitions with %s left: %i", (count, reserve, wanted) => expect(twice(count, reserve)).toBe(wanted));
});

test("the load is the easier one of the two sessions", () => {
  const heavy = session(0, { ...did(12), lifted: { value: 22.5, unit: "kg" } });
  expect(twoForTwo([heavy, session(3, did(12))], "row", 10, clock)!.load).toEqual({ value: 20, unit: "kg" });
});

test("more repetitions never turn a raise into a hold", () => {
  fc.assert(
    fc.property(fc.nat(20), fc.nat(20), fc.nat(5), (a, b, more) => {
      const before = last(a, b)();
      expect(last(a + more, b + more)()).toBeGreaterThanOrEqual(before);
    }),
  );
});

test("what was passed is told session by session: the day, repetitions, reserve where said, how far over, its place", () => {
  const asked = { asked: reps(10, { reserve: { from: 2, to: 2 } }) };
  const found = twoForTwo(
    [session(0, { ...did(12, 3), ...asked }), session(3, { ...did(13), ...asked })],
    "row",
    10,
    clock,
  );
  expect(found).toEqual({
    goal: 10,
    load: { value: 20, unit: "kg" },
    passed: [
      { session: "base/0/a", on: START, reps: 12, reserve: 3, over: 3, n: 0 },
      { session: "base/3/a", on: addDays(START, 3), reps: 13, over: 3, n: 3 },
    ],
  });
});

test("the body alone has no load, in both sessions; only the last two sessions count", () => {
  const bare = { ...did(12), lifted: undefined as never };
  const found = twoForTwo([session(0, bare), session(3, bare)], "row", 10, clock);
  expect(found).toBeDefined();
  expect(found).not.toHaveProperty("load");
  expect(raises(session(-30, did(5)), session(0, did(12)), session(3, did(12)))).toBe(1);
});

test("a set more than was asked is not the last set", () => {
  const more = (at: number, count: number) => {
    const base = session(at, did(count));
    return { ...base, sets: [...base.sets, { ...base.sets[2]!, set: 3, reps: { both: 20 } }] };
  };
  expect(raises(more(0, 10), more(3, 10))).toBe(0);
  expect(raises(more(0, 12), more(3, 12))).toBe(1);
});

test("of two loads the easier, whichever came first", () => {
  const heavy = (at: number) => session(at, { ...did(12), lifted: { value: 22.5, unit: "kg" } });
  expect(twoForTwo([session(0, did(12)), heavy(3)], "row", 10, clock)!.load).toEqual({ value: 20, unit: "kg" });
});
