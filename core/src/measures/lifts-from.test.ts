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
