import { describe, expect, test } from "vitest";
import type { SetDone, SetDose } from "../model/index.ts";
import { hold, madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";
import { loadStep } from "./load-step.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]], muscles: { chest: 1 } });
const pinned = (...pins: readonly number[]) =>
  ({ equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins } } }) as const;
const stateWith = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}) =>
  dosesFor(
    slotTrained({
      exercise: press,
      set: reps({ from: 5, to: 6 }),
      sets: 3,
      load: 100,
      way: "load",
      place: pinned(95, 100, 105, 120),
      did: did.map((each, at) => [3 * at, { load: kg(100), ...each }]),
      today: 3 * did.length,
      ...more,
    }),
  )[0]!.state;
const step = (...args: Parameters<typeof stateWith>) => loadStep(stateWith(...args));
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

// Two sessions running and a step of 2 to 10 %: acsm2009.
describe("all sets at the top of what was asked in two sessions running", () => {
  test("the next load that is here, with both sessions, the goal and the size of the step", () => {
    const next = step([setDone(6), setDone(6)]);
    expect(next).toMatchObject({
      kind: "up",
      patch: { slot: "it", change: "load", load: kg(105), exercise: "press" },
      since: 1,
    });
    expect(next.evidence).toEqual([
      {
        code: "progress/all-sets",
        data: { exercise: "press", goal: 6, load: kg(100), sessions: [{ on: "2027-03-01" }, { on: "2027-03-04" }] },
      },
      { code: "progress/step-fine", data: { from: kg(100), to: kg(105), percent: 5, most: 10 } },
    ]);
  });

  test("more than the top earns it too; one session, and the bottom of the range, do not", () => {
    expect(step([setDone(8), setDone(6)]).kind).toBe("up");
    expect(step([setDone(6)]).kind).toBe("stay");
    expect(step([setDone(6), setDone(5)]).kind).toBe("stay");
    expect(step([setDone(5), setDone(6)]).kind).toBe("stay");
    expect(step([setDone(5), setDone(6), setDone(6)]).kind).toBe("up");
  });

  test("every set of both: one that is short, missing or unread earns nothing", () => {
    const state = stateWith([setDone(6), setDone(6)]);
    const [one, two] = state.history;
    const of = (sets: NonNullable<typeof two>["sets"]) => {
      const { slot, exercise, person, today, dayOf, loads } = state;
      return loadStep({ ...state, slot, exercise, person, today, dayOf, loads, history: [one!, { ...two!, sets }] })
        .kind;
    };
    const sets = two!.sets;
    expect(of(sets)).toBe("up");
    expect(of(sets.map((set, at) => (at === 1 ? { ...set, reps: { both: 5 } } : set)))).toBe("stay");
    expect(of(sets.slice(0, 2))).toBe("stay");
    expect(of(sets.map(({ reps: _, ...set }) => set))).toBe("stay");
    expect(of(sets.map(({ lifted: _, ...set }) => set))).toBe("stay");
  });

  test("what is left beyond the reserve asked counts as done, and what is missing of it as not done", () => {
    const set = reps(6, { reserve: { from: 2, to: 2 } });
    expect(step([setDone(5, 3), setDone(5, 3)], { set }).kind).toBe("up");
    expect(step([setDone(6, 1), setDone(6, 1)], { set }).kind).toBe("stay");
    expect(step([setDone(6, 2), setDone(6, 2)], { set }).kind).toBe("up");
  });

  test("with the load that is asked now: with less, and with more, nothing is earned", () => {
    expect(step([setDone(6), { ...setDone(6), load: kg(95) }]).kind).toBe("stay");
    expect(step([setDone(6), setDone(6)], { load: 105 }).kind).toBe("stay");
  });

  test("of holds and of what is counted otherwise there is no such step", () => {
    const most: SetDose = { amount: { kind: "most" }, eachSide: false };
    expect(step([setDone(9), setDone(9)], { set: most }).kind).toBe("stay");
    expect(step([setDone(9), setDone(9)], { set: hold(30) }).kind).toBe("stay");
  });
});

describe("the step is one that exists here, of 10 % at most", () => {
  test("10 % are taken, more are said to be too large and taken in smaller ways", () => {
    expect(step([setDone(6), setDone(6)], { place: pinned(100, 110) })).toMatchObject({
      patch: { change: "load", load: kg(110) },
      evidence: [{}, { data: { percent: 10 } }],
    });
    const large = step([setDone(6), setDone(6)], { place: pinned(100, 111) });
    expect(large.patch).toMatchObject({ change: "reps" });
    expect(codes(large.refused)).toEqual(["progress/step-too-large"]);
    expect(codes(large.evidence)).toEqual(["progress/all-sets", "progress/step-too-large"]);
    expect(large.refused[0]!.data).toEqual({ from: kg(100), to: kg(111), percent: 11, most: 10 });
    expect([large.kind, large.since]).toEqual(["up", 1]);
  });

  test("at the heaviest that is here it says so", () => {
    const full = step([setDone(6), setDone(6)], { place: pinned(95, 100) });
    expect(full).toEqual({
      kind: "stay",
      evidence: [],
      refused: [{ code: "progress/nothing-heavier", data: { load: kg(100) } }],
      others: [],
    });
  });

  test("with help, the next load is less help", () => {
    const help = { ...press, loadMeaning: "assist", bodyShare: { share: 1, source: "ours" } } as const;
    const mass = { mass: { load: kg(80), on: 0 as never } };
    const did = [setDone(6), setDone(6)].map((each) => ({ ...each, load: kg(40) }));
    const next = step(did, { exercise: help, load: 40, place: pinned(36, 40, 45), person: mass });
    expect(next.patch).toMatchObject({ load: kg(36) });
    // 40 kg of 80 are moved with 40 kg of help, 44 with 36: 10 % more.
    expect(next.evidence[1]!.data).toMatchObject({ percent: 10 });
  });

  test("where the body's part of it is not known, the size is not known, and nothing is asked", () => {
    const help = { ...press, loadMeaning: "assist", bodyShare: { share: 1, source: "ours" } } as const;
    const did = [setDone(6), setDone(6)].map((each) => ({ ...each, load: kg(40) }));
    expect(step(did, { exercise: help, load: 40, place: pinned(36, 40, 45) })).toMatchObject({
      kind: "stay",
      refused: [],
    });
  });
});

test("where the record makes it unlikely, it waits and says why; where it knows, it says how sure it is", () => {
  const weak = reps(6, { reserve: { from: 0, to: 0 } });
  const at = (count: number, reserve: number, sessions: number) => Array(sessions).fill(setDone(count, reserve));
  const waits = step(at(6, 0, 6), { set: weak });
  expect([waits.kind, codes(waits.refused)]).toEqual(["stay", ["progress/unlikely"]]);
  const sure = step(at(10, 2, 6), { set: weak });
  expect(codes(sure.evidence)).toEqual(["progress/all-sets", "progress/step-fine", "progress/likely"]);
  expect(sure.certainty?.sessions).toBe(6);
});
