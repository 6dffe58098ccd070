import { describe, expect, test } from "vitest";
import type { SetDone } from "../model/index.ts";
import { hold, madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";
import { reserveGuided } from "./reserve-guided.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]] });
const pinned = (...pins: readonly number[]) =>
  ({ equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins } } }) as const;
/** Six to eight, two to three in reserve, twice, with 100 kg. */
const stateWith = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}) =>
  dosesFor(
    slotTrained({
      exercise: press,
      set: reps({ from: 6, to: 8 }, { reserve: { from: 2, to: 3 } }),
      sets: 2,
      load: 100,
      way: "reserve",
      place: pinned(90, 95, 100, 105, 110),
      did: did.map((each, at) => [3 * at, { load: kg(100), ...each }]),
      today: 3 * did.length,
      ...more,
    }),
  )[0]!.state;
const guided = (...args: Parameters<typeof stateWith>) => reserveGuided(stateWith(...args));
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

// What people say they have left is about one repetition off (hackett2017), so one session never decides.
describe("more left than asked in two sessions running", () => {
  test("the next load, with the least that was left in each session", () => {
    const next = guided([setDone(7, 4), setDone(8, 5)]);
    expect(next).toMatchObject({ kind: "up", patch: { slot: "it", change: "load", load: kg(105) }, since: 1 });
    expect(next.evidence.slice(0, 2)).toEqual([
      {
        code: "progress/more-in-reserve",
        data: {
          exercise: "press",
          asked: { from: 2, to: 3 },
          load: kg(100),
          sessions: [
            { on: "2027-03-01", reserve: 4 },
            { on: "2027-03-04", reserve: 5 },
          ],
        },
      },
      { code: "progress/step-fine", data: { from: kg(100), to: kg(105), percent: 5, most: 10 } },
    ]);
  });

  test("what lies within what was asked is as asked; once more is not twice", () => {
    expect(guided([setDone(7, 3), setDone(7, 3)]).kind).toBe("stay");
    expect(guided([setDone(7, 4), setDone(7, 3)]).kind).toBe("stay");
    expect(guided([setDone(7, 4)]).kind).toBe("stay");
  });

  test("with the repetitions done: at the bottom of the range, and not under it", () => {
    expect(guided([setDone(6, 4), setDone(6, 4)]).kind).toBe("up");
    expect(guided([setDone(6, 4), setDone(5, 6)]).kind).toBe("stay");
  });

  test("a larger step than 10 %, and none at all, are said", () => {
    const more = [setDone(7, 4), setDone(7, 4)];
    expect(guided(more, { place: pinned(100, 110) }).kind).toBe("up");
    const large = guided(more, { place: pinned(100, 111) });
    expect([large.kind, codes(large.refused)]).toEqual(["stay", ["progress/step-too-large"]]);
    expect(large.refused[0]!.data).toEqual({ from: kg(100), to: kg(111), percent: 11, most: 10 });
    const full = guided(more, { place: pinned(95, 100) });
    expect(full.refused).toEqual([{ code: "progress/nothing-heavier", data: { load: kg(100) } }]);
  });

  test("with another load than the one that is asked now, nothing is earned", () => {
    expect(guided([setDone(7, 4), { ...setDone(7, 4), load: kg(95) }]).kind).toBe("stay");
    expect(guided([setDone(7, 4), setDone(7, 4)], { load: 105 }).kind).toBe("stay");
  });
});

describe("less left than asked in two sessions running", () => {
  test("one load back, the next easier that is here", () => {
    const next = guided([setDone(6, 1), setDone(6, 0)]);
    expect(next).toMatchObject({ kind: "down", patch: { change: "load", load: kg(95) }, since: 1 });
    expect(next.evidence).toMatchObject([
      { code: "progress/less-in-reserve", data: { sessions: [{ reserve: 1 }, { reserve: 0 }] } },
    ]);
  });

  test("repetitions over the bottom of the range make up for it", () => {
    expect(guided([setDone(7, 1), setDone(7, 1)]).kind).toBe("stay");
    expect(guided([setDone(6, 2), setDone(6, 1)]).kind).toBe("stay");
    expect(guided([setDone(6, 1)]).kind).toBe("stay");
  });

  test("with help, back is more help; at the easiest that is here it stays", () => {
    const help = { ...press, loadMeaning: "assist" } as const;
    expect(guided([setDone(6, 1), setDone(6, 1)], { exercise: help }).patch).toMatchObject({ load: kg(105) });
    expect(guided([setDone(6, 1), setDone(6, 1)], { place: pinned(100, 105) }).kind).toBe("stay");
  });
});

describe("a reserve that was not said is no reserve", () => {
  test("in both sessions: it cannot be judged, and what is missing is told", () => {
    expect(guided([setDone(8), setDone(8)])).toEqual({
      kind: "unknown",
      evidence: [{ code: "progress/reserve-missing", data: { exercise: "press", sessions: 2 } }],
      refused: [],
      others: [],
    });
  });

  test("in one of them, the other is not enough to take a step back", () => {
    expect(guided([setDone(6, 0), setDone(6)]).kind).toBe("stay");
  });

  test("nothing is judged where none is asked, of holds, or without the load that was lifted", () => {
    expect(guided([setDone(7, 4), setDone(7, 4)], { set: reps({ from: 6, to: 8 }) }).kind).toBe("stay");
    expect(guided([setDone(7, 4), setDone(7, 4)], { set: hold(30, { reserve: { from: 2, to: 3 } }) }).kind).toBe(
      "stay",
    );
    expect(guided([{ ...setDone(7, 4), load: "none" }, setDone(7, 4)]).kind).toBe("stay");
  });
});

test("one set under the bottom of the range in either session, and nothing is earned; one set with no more left neither", () => {
  const state = stateWith([setDone(7, 4), setDone(7, 4)]);
  const [one, two] = state.history;
  const { slot, exercise, person, loads, today, dayOf, capacity } = state;
  const of = (...history: NonNullable<typeof one>[]) =>
    reserveGuided({ slot, exercise, person, loads, today, dayOf, capacity, history } as never).kind;
  const second = (session: typeof one, more: object) => ({
    ...session!,
    sets: session!.sets.map((set, at) => (at === 1 ? { ...set, ...more } : set)),
  });
  expect(of(one!, two!)).toBe("up");
  expect(of(one!, second(two, { reps: { both: 5 } }))).toBe("stay");
  expect(of(second(one, { reps: { both: 5 } }), two!)).toBe("stay");
  expect(of(one!, second(two, { reserve: 3 }))).toBe("stay");
  expect(of(second(one, { reserve: 3 }), two!)).toBe("stay");
});

test("less left in one set of each session is enough to go back", () => {
  const state = stateWith([setDone(6, 2), setDone(6, 2)]);
  const { slot, exercise, person, loads, today, dayOf, capacity } = state;
  const history = state.history.map((session) => ({
    ...session,
    sets: session.sets.map((set, at) => (at === 1 ? { ...set, reserve: 0 } : set)),
  }));
  const next = reserveGuided({ slot, exercise, person, loads, today, dayOf, capacity, history } as never);
  expect(next).toMatchObject({ kind: "down", evidence: [{ data: { sessions: [{ reserve: 0 }, { reserve: 0 }] } }] });
});
