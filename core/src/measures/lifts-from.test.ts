import { describe, expect, test } from "vitest";
import { type Day, day } from "../day.ts";
import { madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import { type DoneSet, liftsFrom, type SlotSession } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const START = day("2027-03-01");
const facts = {
  dayOf: (at: number) => (START + at) as Day,
  catalogue: madeUpCatalogue([
    madeUpExercise({ id: "squat", loadMeaning: "total" }),
    madeUpExercise({ id: "push-up" }),
  ]),
};
const session = (at: number, ...done: readonly Partial<DoneSet>[]): SlotSession => ({
  session: `base/${at}/a`,
  phase: "base",
  week: 1,
  light: false,
  at,
  n: at,
  asked: { key: "s", exercise: "squat", dose: sets(3, reps(5)), why: [], offer: [] },
  sets: done.map((each, set) => ({ set, exercise: "squat", ...each })),
  leftOut: [],
});
const lifts = (...log: readonly SlotSession[]) => liftsFrom(log, facts, (START + 10) as Day);

describe("what was done as lifts", () => {
  test("one for each session: the heaviest set, then the one with most repetitions", () => {
    const sets = [
      { lifted: kg(60), reps: { both: 5 } },
      { lifted: kg(70), reps: { both: 3 }, reserve: 1 },
      { lifted: kg(70), reps: { both: 2 } },
    ];
    expect(lifts(session(1, ...sets), session(2, { lifted: kg(60), reps: { left: 6, right: 4 } }))).toEqual([
      { exercise: "squat", load: kg(70), reps: 3, reserve: 1, on: START + 1 },
      { exercise: "squat", load: kg(60), reps: 4, on: START + 2 },
    ]);
  });

  test("nothing that nobody entered, nothing whose load is not known, nothing from the day on", () => {
    expect(lifts(session(1, { lifted: kg(60) }))).toEqual([]);
    expect(lifts(session(1, { reps: { both: 5 } }))).toEqual([]);
    expect(lifts(session(10, { lifted: kg(60), reps: { both: 5 } }))).toEqual([]);
  });

  test("the body alone, where the form takes no load or it was said so; seconds as seconds", () => {
    expect(lifts(session(1, { exercise: "push-up", reps: { both: 12 } }))).toEqual([
      { exercise: "push-up", reps: 12, on: START + 1 },
    ]);
    expect(lifts(session(1, { load: "none", reps: { both: 12 } }))).toEqual([
      { exercise: "squat", reps: 12, on: START + 1 },
    ]);
    expect(lifts(session(1, { exercise: "push-up", holdS: { both: 30 } }))).toEqual([
      { exercise: "push-up", holdS: 30, on: START + 1 },
    ]);
  });
});

describe("of the sets of one session and form, the one that says most", () => {
  const best = (...sets: readonly Partial<DoneSet>[]) => lifts(session(1, ...sets))[0];
  test("a heavier one before one of many repetitions, whichever comes first", () => {
    const heavy = { lifted: kg(61), reps: { both: 1 } };
    const long = { lifted: kg(60), reps: { both: 40 } };
    expect(best(heavy, long)).toMatchObject({ load: kg(61) });
    expect(best(long, heavy)).toMatchObject({ load: kg(61) });
  });
  test("of one load, repetitions and those left together; the first of equals", () => {
    expect(
      best({ lifted: kg(60), reps: { both: 8 } }, { lifted: kg(60), reps: { both: 6 }, reserve: 3 }),
    ).toMatchObject({
      reps: 6,
      reserve: 3,
    });
    expect(best({ lifted: kg(60), reps: { both: 8 } }, { lifted: kg(60), reps: { both: 6 }, reserve: 2 })).toEqual({
      exercise: "squat",
      load: kg(60),
      reps: 8,
      on: START + 1,
    });
  });
  test("two forms of one session are two lifts; the day before the last day still counts", () => {
    expect(
      lifts(session(9, { lifted: kg(60), reps: { both: 5 } }, { exercise: "push-up", reps: { both: 9 } })),
    ).toHaveLength(2);
  });
  test("a set of no repetitions was one all the same", () => {
    expect(best({ lifted: kg(60), reps: { both: 0 } })).toMatchObject({ reps: 0 });
  });
});
