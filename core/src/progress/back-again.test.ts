import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { SetDone, SetDose } from "../model/index.ts";
import { hold, madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { backAgain } from "./come-back.ts";
import { dosesFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]] });
const pins = [80, 85, 90, 95, 100, 105];
type Did = readonly (readonly [daysOn: number, said: Partial<SetDone>])[];
const stateWith = (did: Did, more: Partial<SlotTrained> = {}) =>
  dosesFor(
    slotTrained({
      exercise: press,
      set: reps({ from: 8, to: 10 }),
      sets: 2,
      load: 90,
      place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins } } },
      did,
      today: did.at(-1)![0] + 1,
      ...more,
    }),
  )[0]!.state;
const at = (on: number, load = 90, count = 8) => [on, { ...setDone(count), load: kg(load) }] as const;
const again = (did: Did, more: Partial<SlotTrained> = {}) => backAgain(stateWith(did, more));

// Three weeks cost nothing: ogasawara2013. Over 60 one does not: nascimento2022. The numbers of sessions are ours.
describe("how many sessions bring the load back", () => {
  test("one up to three weeks, two from a day more", () => {
    expect(again([at(0, 100), at(21)])?.patch).toMatchObject({ load: kg(100) });
    expect(again([at(0, 100), at(22)])).toBeUndefined();
    expect(again([at(0, 100), at(22), at(25)])?.patch).toMatchObject({ load: kg(100) });
  });

  test("two after illness, and over 60", () => {
    expect(again([at(0, 100), at(21)], { sick: [10] })).toBeUndefined();
    expect(again([at(0, 100), at(21), at(24)], { sick: [10] })).toBeDefined();
    const old = { person: { born: day("1960-01-01") } };
    expect(again([at(0, 100), at(21)], old)).toBeUndefined();
    expect(again([at(0, 100), at(21), at(24)], old)).toBeDefined();
  });

  test("the last ones count, up to the fourth after the break", () => {
    expect(again([at(0, 100), at(20, 90, 7), at(23)])?.evidence[0]?.data["sessions"]).toEqual([{ on: "2027-03-24" }]);
    expect(again([at(0, 100), at(20), at(23, 90, 7)])).toBeUndefined();
    expect(again([at(0, 100), at(20), at(23), at(26), at(29)])).toBeDefined();
    expect(again([at(0, 100), at(20), at(23), at(26), at(29), at(32)])).toBeUndefined();
  });

  test("no break, nothing to come back from; one session says nothing of a break", () => {
    expect(again([at(0, 100), at(3), at(6)])).toBeUndefined();
    expect(again([at(0, 100)])).toBeUndefined();
    expect(again([at(20)])).toBeUndefined();
  });
});

describe("what was lifted before", () => {
  test("of two breaks, what was lifted in whole sessions before both", () => {
    const state = stateWith([at(0, 100), at(15, 85), at(30)]);
    const history = state.history.map((session, index) =>
      index === 0 ? session : { ...session, asked: { ...session.asked, dose: { sets: [reps(8)] } } },
    );
    expect(backAgain({ ...state, history })?.evidence[0]?.data["load"]).toEqual(kg(100));
    expect(backAgain(state)).toBeUndefined();
    expect(backAgain({ ...state, history: history.slice(1) })).toBeUndefined();
  });

  test("the load of the last set that names one, before and after", () => {
    const state = stateWith([at(0, 100), at(20)]);
    const [before, after] = state.history;
    const bare = ({ sets, ...session }: NonNullable<typeof before>, ...which: readonly number[]) => ({
      ...session,
      sets: sets.map(({ lifted, ...set }, index) =>
        which.includes(index) || lifted === undefined ? set : { ...set, lifted },
      ),
    });
    const of = (...history: typeof state.history) => backAgain({ ...state, history })?.patch;
    expect(of(bare(before!, 1), bare(after!, 1))).toMatchObject({ load: kg(100) });
    expect(of(bare(before!, 0), bare(after!, 0))).toMatchObject({ load: kg(100) });
    expect(of(bare(before!, 0, 1), after!)).toBeUndefined();
    expect(of(before!, bare(after!, 0, 1))).toBeUndefined();
  });
});

describe("done as asked", () => {
  const state = stateWith([at(0, 100), at(20)]);
  const [before, after] = state.history;
  const of = (sets: NonNullable<typeof after>["sets"]) =>
    backAgain({ ...state, history: [before!, { ...after!, sets }] });

  test("every set, with this form, to the bottom of its range", () => {
    const [first, second] = after!.sets;
    expect(of([first!, second!])).toBeDefined();
    expect(of([first!])).toBeUndefined();
    expect(of([first!, { ...second!, exercise: "other" }])).toBeUndefined();
    expect(of([{ ...first!, reps: { both: 7 } }, second!])).toBeUndefined();
    expect(of([first!, { ...second!, reps: { both: 7 } }])).toBeUndefined();
  });

  test("a set that nobody counted is not done as asked; of one that asked for the most, any count is", () => {
    const [first, second] = after!.sets;
    const { reps: _, ...uncounted } = second!;
    expect(of([first!, uncounted])).toBeUndefined();
    const most: SetDose = { amount: { kind: "most" }, eachSide: false };
    expect(of([first!, { ...second!, asked: most, reps: { both: 1 } }])).toBeDefined();
    expect(of([first!, { ...uncounted, asked: most }])).toBeUndefined();
  });

  test("of what is not asked in repetitions, nothing comes back", () => {
    const { home } = state;
    expect(backAgain({ ...state, home: { sets: home.sets.map(() => hold(30)) } })).toBeUndefined();
    expect(backAgain({ ...state, home: { sets: [] } })).toBeUndefined();
  });
});

test("with help, less of it, and never less than before the break", () => {
  const help = { ...press, loadMeaning: "assist" } as const;
  const did = [at(0, 90), at(20, 100)];
  expect(again(did, { exercise: help, load: 100 })?.patch).toMatchObject({ load: kg(90) });
  expect(again([at(0, 100), at(20, 100)], { exercise: help, load: 100 })).toBeUndefined();
});

test("it is no other step: nothing refused, nothing beside it, no certainty where nothing is forecast", () => {
  const next = again([at(0, 100), at(21)])!;
  expect(next).toMatchObject({ kind: "up", refused: [], others: [] });
  expect(next.since).toBe(stateWith([at(0, 100), at(21)]).history[1]!.n);
  expect(next).not.toHaveProperty("certainty");
});
