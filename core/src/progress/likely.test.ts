import { describe, expect, test } from "vitest";
import type { LoadMeaning } from "../model/index.ts";
import { hold, madeUpExercise, madeUpPerson, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";
import { kgMoved, likely, likelyHold } from "./likely.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]] });
/** So many sessions of 8 with 50 kg, two left. */
const stateOf = (sessions: number, more: Partial<SlotTrained> = {}) =>
  dosesFor(
    slotTrained({
      exercise: press,
      set: reps(8, { reserve: { from: 2, to: 2 } }),
      sets: 2,
      load: 50,
      place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [50, 55] } } },
      did: Array.from({ length: sessions }, (_, at) => [3 * at, { ...setDone(8, 2), load: kg(50) }] as const),
      today: 3 * sessions,
      ...more,
    }),
  )[0]!.state;
const chance = (load: number, reps: number, reserve = 2) =>
  likely(stateOf(6), { load: kg(load), reps, reserve })!.chance;

describe("how likely a set is", () => {
  test("what was done before is likely; the chance falls with load, repetitions and what is to be left", () => {
    expect(chance(50, 6)).toBeGreaterThan(0.9);
    expect(chance(60, 8)).toBeLessThan(chance(50, 8));
    expect(chance(50, 10)).toBeLessThan(chance(50, 8));
    expect(chance(50, 8, 4)).toBeLessThan(chance(50, 8, 2));
  });

  test("what it is the chance of is told, in whole per cent, and never as certain", () => {
    const told = likely(stateOf(6), { load: kg(52), reps: 8, reserve: 2 })!;
    expect(told.because).toEqual({
      code: "progress/likely",
      data: {
        exercise: "press",
        chance: Math.round(told.chance * 100),
        reps: 8,
        load: kg(52),
        reserve: 2,
        sessions: 6,
        carried: null,
      },
    });
    const percent = (load: number, reps: number) =>
      likely(stateOf(6), { load: kg(load), reps, reserve: 0 })!.because.data["chance"];
    expect([percent(20, 1), percent(200, 12)]).toEqual([99, 1]);
  });

  test("who always did far more than was asked: no low figure is said, a high one is", () => {
    const state = stateOf(6, {
      did: Array.from({ length: 6 }, (_, at) => [3 * at, { ...setDone(14, 2), load: kg(50) }] as const),
    });
    expect(likely(state, { load: kg(60), reps: 8, reserve: 2 })).toBeUndefined();
    expect(likely(state, { load: kg(45), reps: 6, reserve: 2 })!.chance).toBeGreaterThan(0.9);
  });

  // The published rule (two or more over the goal in two sessions running: Haff and Triplett, 2016) is then what counts.
  test("who always did far more than was asked goes up", () => {
    const did = Array.from({ length: 6 }, (_, at) => [3 * at, { ...setDone(14, 2), load: kg(50) }] as const);
    const [next] = dosesFor(
      slotTrained({
        exercise: press,
        set: reps({ from: 6, to: 8 }, { reserve: { from: 2, to: 2 } }),
        sets: 2,
        load: 50,
        place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [50, 55] } } },
        did,
        today: 18,
      }),
    );
    expect(next!.next).toMatchObject({ kind: "up", patch: { change: "load", load: kg(55) } });
    expect(next!.next.certainty).toBeUndefined();
  });

  test("from four sessions on it may speak for a step; of another kind of set it may not", () => {
    const founded = (sessions: number, reps = 8) =>
      likely(stateOf(sessions), { load: kg(50), reps, reserve: 2 })?.founded;
    expect([founded(3), founded(4), founded(5)]).toEqual([false, true, true]);
    const far = likely(stateOf(6), { load: kg(50), reps: 25, reserve: 2 })!;
    expect([far.founded, far.because.data["carried"] === null]).toEqual([false, false]);
  });

  test("nothing is told of too little, or of a load that is not said", () => {
    expect(likely(stateOf(1), { load: kg(50), reps: 8, reserve: 2 })).toBeUndefined();
    expect(likely(stateOf(6), { load: undefined, reps: 8, reserve: 2 })).toBeUndefined();
  });
});

describe("how likely a hold is", () => {
  const plank = madeUpExercise({ id: "plank", amounts: "hold", mode: "hold", hold: { from: 10, to: 60, step: 5 } });
  const held = (sessions: number) =>
    stateOf(0, {
      exercise: plank,
      // What ends under the time that was asked is what could be held.
      set: hold(45),
      place: {},
      did: Array.from(
        { length: sessions },
        (_, at) => [3 * at, { reps: "as asked", holdS: 40, load: "none" }] as const,
      ),
      today: 3 * sessions + 1,
    });

  test("shorter is likelier, with the sessions behind it", () => {
    const told = (seconds: number) => likelyHold(held(5), seconds)!;
    expect(told(20).chance).toBeGreaterThan(told(45).chance);
    expect(told(30)).toMatchObject({ sessions: 5, founded: true });
    expect(told(30).because).toEqual({
      code: "progress/likely-hold",
      data: {
        exercise: "plank",
        chance: Math.min(99, Math.round(told(30).chance * 100)),
        seconds: 30,
        sessions: 5,
      },
    });
    expect(likelyHold(held(3), 30)?.founded).toBe(false);
  });

  test("repetitions tell nothing of seconds", () => {
    expect(likelyHold(stateOf(6), 30)).toBeUndefined();
    expect(likelyHold(held(0), 30)).toBeUndefined();
  });
});

describe("what a capacity is counted in", () => {
  const moved = (loadMeaning: LoadMeaning, load: number | undefined, mass?: number) => {
    const exercise = madeUpExercise({ id: "x", loadMeaning, bodyShare: { share: 1, source: "ours" } });
    const person = madeUpPerson(mass === undefined ? {} : { mass: { load: kg(mass), on: 0 as never } });
    return kgMoved(exercise, person, load === undefined ? undefined : kg(load));
  };
  test("kilograms moved; of one hand where loads are said per hand", () => {
    expect([moved("total", 60), moved("stack", 40), moved("per hand", 20)]).toEqual([60, 40, 20]);
  });
  test("1 for the body alone, for heights and for nothing", () => {
    expect([moved("body only", undefined), moved("height", 20), moved("none", undefined)]).toEqual([1, 1, 1]);
  });
  test("with the body where the load is added to it or helps it", () => {
    expect([moved("added to body", 10, 70), moved("assist", 30, 70)]).toEqual([80, 40]);
    expect(moved("added to body", 10)).toBeUndefined();
  });
  test("nothing that weighs nothing, and nothing that is not said", () => {
    expect([moved("total", 0), moved("total", undefined), moved("assist", 70, 70)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});
