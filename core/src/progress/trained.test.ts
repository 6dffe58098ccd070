import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { DoneSet, SlotSession } from "../measures/index.ts";
import type { Dose, SetDose } from "../model/index.ts";
import { hold, madeUpExercise, reps } from "../testing/index.ts";
import { allAsked, amountDone, floorOf, isAtTop, overAsked, running, topOf } from "./trained.ts";

const holds = (...spans: readonly (readonly [number, number])[]): Dose => ({
  sets: spans.map(([from, to]) => ({ amount: { kind: "hold", span: { from, to } }, eachSide: false })),
});
const held = (set: number, seconds: number, asked: Dose): DoneSet =>
  ({ set, holdS: { both: seconds }, asked: asked.sets[set]! }) as DoneSet;

describe("a hold at the top", () => {
  const now = holds([20, 30], [20, 30]);

  test("is as long as the longest that was asked", () => {
    expect(isAtTop(held(0, 30, now), now)).toBe(true);
    expect(isAtTop(held(0, 29, now), now)).toBe(false);
  });

  test("is not at the top of what is asked since: one step never rests on the sets of the step before", () => {
    expect(isAtTop(held(0, 30, now), holds([25, 35], [25, 35]))).toBe(false);
    expect(isAtTop(held(0, 35, now), holds([25, 35], [25, 35]))).toBe(true);
  });

  test("counts by what was asked then, where that set is asked no more, and is unknown where nobody read it", () => {
    expect(isAtTop(held(1, 30, now), holds([20, 30]))).toBe(true);
    expect(isAtTop({ set: 0, asked: now.sets[0]! } as DoneSet, now)).toBe(false);
  });
});

const START = day("2027-03-01");
const repsAsked = (...sets: readonly SetDose[]): Dose => ({ sets });
const session = (at: number, more: Partial<SlotSession> = {}): SlotSession => ({
  session: `base/${at}/a`,
  phase: "base",
  week: 1,
  light: false,
  at,
  n: at,
  asked: { key: "s", exercise: "row", dose: repsAsked(reps(8), reps(8)), why: [], offer: [] },
  sets: [0, 1].map((set) => ({ set, exercise: "row", asked: reps(8), reps: { both: 8 } })),
  leftOut: [],
  ...more,
});
const row = madeUpExercise({ id: "row" });
const last = (count: number, today: number, ...history: readonly SlotSession[]) =>
  running({ history, exercise: row, today: addDays(START, today), dayOf: (at) => addDays(START, at) }, count)?.map(
    ({ at }) => at,
  );

describe("the last sessions running", () => {
  test("as many as are asked for, the latest last; fewer are none", () => {
    expect(last(2, 8, session(0), session(3), session(6))).toEqual([3, 6]);
    expect(last(1, 8, session(0), session(3))).toEqual([3]);
    expect(last(3, 8, session(0), session(3))).toBeUndefined();
  });

  test("13 days between two are no break, 14 are; so since the last", () => {
    expect(last(2, 14, session(0), session(13))).toEqual([0, 13]);
    expect(last(2, 15, session(0), session(14))).toBeUndefined();
    expect(last(1, 13, session(0))).toEqual([0]);
    expect(last(1, 14, session(0))).toBeUndefined();
    expect(last(1, 15, session(0), session(14))).toEqual([14]);
  });

  test("light weeks and sessions without a set are passed over; another form among the sets ends it", () => {
    const other = session(3, {
      sets: [
        { set: 0, exercise: "row" },
        { set: 1, exercise: "band-row" },
      ],
    });
    expect(last(2, 8, session(0), session(2, { light: true }), session(3, { sets: [] }), session(6))).toEqual([0, 6]);
    expect(last(2, 8, session(0), other)).toBeUndefined();
    expect(last(1, 8, other, session(6))).toEqual([6]);
  });
});

describe("what was read of a set", () => {
  const set = (more: Partial<DoneSet>): DoneSet => ({ set: 0, exercise: "row", ...more });
  test("repetitions, or the seconds of a hold; of two sides the weaker", () => {
    expect(amountDone(set({ asked: reps(8), reps: { both: 7 } }))).toBe(7);
    expect(amountDone(set({ asked: hold(30), holdS: { left: 28, right: 31 }, reps: { both: 1 } }))).toBe(28);
    expect(amountDone(set({ asked: hold(30), reps: { both: 1 } }))).toBeUndefined();
    expect(amountDone(set({ holdS: { both: 20 } }))).toBe(20);
    expect(amountDone(set({ asked: reps(8) }))).toBeUndefined();
  });

  test("what was asked at least and at most; as many as possible has neither", () => {
    const most = { amount: { kind: "most", least: 5 }, eachSide: false } as const;
    const range = set({ asked: reps({ from: 8, to: 12 }) });
    expect([floorOf(range), topOf(range)]).toEqual([8, 12]);
    expect([floorOf(set({ asked: most })), topOf(set({ asked: most }))]).toEqual([undefined, undefined]);
    expect([floorOf(set({})), topOf(set({}))]).toEqual([undefined, undefined]);
  });

  test("all that were asked, in order; one that is missing is not made up for by one too many", () => {
    const [first, second] = session(0).sets;
    expect(allAsked(session(0, { sets: [second!, first!] }))?.map((each) => each.set)).toEqual([0, 1]);
    expect(allAsked(session(0, { sets: [first!, { ...second!, set: 2 }] }))).toBeUndefined();
  });
});

describe("repetitions beyond the goal, with what was left", () => {
  const over = (count: number, reserve?: number, asked: SetDose = reps(8, { reserve: { from: 2, to: 3 } })) =>
    overAsked(
      { set: 0, exercise: "row", asked, reps: { both: count }, ...(reserve === undefined ? {} : { reserve }) },
      8,
    );
  test("more left than asked counts as done, less as not done, between as asked", () => {
    expect([over(8, 2), over(8, 3), over(8, 4), over(8, 5), over(8, 1), over(8, 0)]).toEqual([0, 0, 1, 2, -1, -2]);
  });
  test("where no reserve was asked or said, repetitions alone count", () => {
    expect([over(10), over(7), over(10, 4, reps(8))]).toEqual([2, -1, 2]);
  });
  test("of a hold, and of what nobody read, there are none", () => {
    expect(over(8, 2, hold(30))).toBeUndefined();
    expect(overAsked({ set: 0, exercise: "row", asked: reps(8) }, 8)).toBeUndefined();
    expect(overAsked({ set: 0, exercise: "row", reps: { both: 8 } }, 8)).toBeUndefined();
  });
});

test("repetitions are at the top when every set reached the most of then and of now", () => {
  const done = (count: number): DoneSet => ({
    set: 0,
    exercise: "row",
    asked: reps({ from: 8, to: 10 }),
    reps: { both: count },
  });
  expect([9, 10, 11].map((count) => isAtTop(done(count), repsAsked(reps({ from: 8, to: 10 }))))).toEqual([
    false,
    true,
    true,
  ]);
  expect(isAtTop(done(11), repsAsked(reps({ from: 10, to: 12 })))).toBe(false);
  const most = repsAsked({ amount: { kind: "most" }, eachSide: false });
  expect(isAtTop(done(11), most)).toBe(false);
});
