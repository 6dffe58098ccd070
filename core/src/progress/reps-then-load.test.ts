import { describe, expect, test } from "vitest";
import type { SetDone, SetDose } from "../model/index.ts";
import { hold, madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";
import { repsThenLoad } from "./reps-then-load.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]], muscles: { chest: 1 } });
const pinned = (...pins: readonly number[]) =>
  ({ equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins } } }) as const;
/** Eight to ten with 50 kg, three times; the next load as said. */
const stateWith = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}) =>
  dosesFor(
    slotTrained({
      exercise: press,
      set: reps({ from: 8, to: 10 }),
      sets: 3,
      load: 50,
      place: pinned(45, 50, 53),
      did: did.map((each, at) => [3 * at, { load: kg(50), ...each }]),
      today: 3 * did.length,
      ...more,
    }),
  )[0]!.state;
const next = (...args: Parameters<typeof stateWith>) => repsThenLoad(stateWith(...args));
const twice = (count: number, reserve?: number) => [setDone(count, reserve), setDone(count, reserve)];
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);
const spanOf = (patch: unknown) =>
  (patch as { dose: { sets: readonly { amount: { span: unknown } }[] } }).dose.sets[0]!.amount.span;

// Two over the goal in the last set of two sessions running: haffTriplett2016. Steps of at most 10 %: acsm2009.
describe("passed by two, twice running", () => {
  test("the next load that is here, with what was done, and how large the step is", () => {
    const step = next(twice(12));
    expect(step).toMatchObject({
      kind: "up",
      patch: { slot: "it", change: "load", load: kg(53) },
      since: 1,
      refused: [],
    });
    expect(step.evidence).toEqual([
      {
        code: "progress/two-for-two",
        data: {
          exercise: "press",
          goal: 10,
          over: 2,
          load: kg(50),
          sessions: [
            { on: "2027-03-01", reps: 12, reserve: null },
            { on: "2027-03-04", reps: 12, reserve: null },
          ],
        },
      },
      { code: "progress/step-fine", data: { from: kg(50), to: kg(53), percent: 6, most: 10 } },
    ]);
    expect(step).not.toHaveProperty("certainty");
  });

  test("the range one wider stands beside it", () => {
    const { others } = next(twice(12));
    expect(others.map(spanOf)).toEqual([{ from: 10, to: 11 }]);
  });

  test("one over, once, and with less than is asked now: nothing", () => {
    expect(next(twice(11)).kind).toBe("stay");
    expect(next([setDone(12)]).kind).toBe("stay");
    expect(next(twice(12), { load: 53 }).kind).toBe("stay");
    expect(next(twice(12), { load: 45 }).patch).toMatchObject({ load: kg(53) });
  });

  test("with help, less help; with more help than is asked now, nothing", () => {
    const help = { ...press, loadMeaning: "assist", bodyShare: { share: 1, source: "ours" } } as const;
    const person = { mass: { load: kg(100), on: 0 as never } };
    const of = (load: number) => next(twice(12), { exercise: help, person, load, place: pinned(47, 50, 55) });
    expect(of(50).patch).toMatchObject({ load: kg(47) });
    expect(of(47).kind).toBe("stay");
    expect(next(twice(12), { exercise: help, load: 50, place: pinned(47, 50) }).kind).toBe("stay");
  });

  test("of holds and of as many as possible there is no range", () => {
    const most: SetDose = { amount: { kind: "most" }, eachSide: false };
    expect(next(twice(30), { set: most }).kind).toBe("stay");
    expect(next(twice(30), { set: hold(30) }).kind).toBe("stay");
  });
});

describe("a step over 10 %", () => {
  const far = { place: pinned(45, 50, 60) };

  test("the range is widened to what earns it, from the old top; smaller ways and the load stand beside it", () => {
    const step = next(twice(12), far);
    // 8 are left with 60 kg after 16 with 50 kg by epley1985: the goal of a rise by two is 14.
    expect(spanOf(step.patch)).toEqual({ from: 10, to: 14 });
    expect(codes(step.evidence)).toEqual(["progress/two-for-two", "progress/step-too-large", "progress/expect"]);
    expect(step.evidence[1]!.data).toEqual({ from: kg(50), to: kg(60), percent: 20, most: 10 });
    expect(step.evidence[2]!.data).toEqual({ load: kg(60), reps: 5 });
    expect(codes(step.refused)).toEqual(["progress/step-too-large", "progress/expect"]);
    expect(step.others.at(-1)).toEqual({ slot: "it", change: "load", load: kg(60), exercise: "press" });
    expect(step.others.length).toBeGreaterThan(1);
  });

  test("so many repetitions as leave the bottom of the range earn it", () => {
    const set = reps({ from: 10, to: 14 });
    const earned = next(twice(18), { ...far, set });
    // 10 with 60 kg are 18 with 50 kg.
    expect(earned.patch).toMatchObject({ change: "load", load: kg(60) });
    expect(earned.evidence.slice(1)).toEqual([
      {
        code: "progress/step-earned",
        data: { from: kg(50), to: kg(60), percent: 20, most: 10, reps: 18, needed: 18 },
      },
      { code: "progress/expect", data: { load: kg(60), reps: 10 } },
    ]);
    expect(next(twice(17), { ...far, set }).patch).toMatchObject({ change: "reps" });
  });

  test("the worse of the two sessions is what was shown", () => {
    const set = reps({ from: 10, to: 14 });
    expect(next([setDone(25), setDone(17)], { ...far, set }).patch).toMatchObject({ change: "reps" });
    expect(next([setDone(17), setDone(25)], { ...far, set }).patch).toMatchObject({ change: "reps" });
  });

  test("at 25 the range is as wide as it gets, and the load comes with what to expect", () => {
    const set = reps({ from: 20, to: 25 });
    const wide = next(twice(27), { place: pinned(50, 75), set });
    expect(wide.patch).toMatchObject({ change: "load", load: kg(75) });
    expect(codes(wide.evidence)).toEqual(["progress/two-for-two", "progress/step-too-large", "progress/expect"]);
    expect(wide.others).toEqual([]);
  });

  test("it is not widened past 25", () => {
    const set = reps({ from: 15, to: 20 });
    expect(spanOf(next(twice(22), { place: pinned(50, 75), set }).patch)).toEqual({ from: 20, to: 25 });
  });
});

describe("nothing heavier is here", () => {
  const top = { place: pinned(45, 50) };
  test("the range is widened by five, up to 25, and it says so", () => {
    const step = next(twice(12), top);
    expect(spanOf(step.patch)).toEqual({ from: 10, to: 15 });
    expect(step.evidence[1]).toEqual({ code: "progress/nothing-heavier", data: { load: kg(50) } });
    expect(spanOf(next(twice(25), { ...top, set: reps({ from: 18, to: 23 }) }).patch)).toEqual({ from: 23, to: 25 });
    expect(next(twice(27), { ...top, set: reps({ from: 20, to: 25 }) }).kind).toBe("stay");
  });
  test("of sets that ask for another thing, only repetitions are widened", () => {
    const state = stateWith(twice(12), top);
    const most: SetDose = { amount: { kind: "most" }, eachSide: false };
    const dose = { sets: [state.slot.dose.sets[0]!, most] };
    const loads = state.loads;
    const step = repsThenLoad({
      ...state,
      loads,
      home: dose,
      slot: { ...state.slot, dose },
      exercise: state.exercise,
      history: state.history,
    });
    expect(step.kind).toBe("up");
    expect((step.patch as { dose: { sets: unknown } }).dose.sets).toEqual([
      { amount: { kind: "reps", span: { from: 10, to: 15 } }, eachSide: false },
      most,
    ]);
  });
});

describe("what the record says", () => {
  const set = reps({ from: 5, to: 7 }, { reserve: { from: 2, to: 2 } });
  const place = pinned(45, 50, 51);
  const times = (count: number, done: Partial<SetDone>) => Array<Partial<SetDone>>(count).fill(done);

  test("sure that the bottom is done with the next load: it comes before the top is passed, with how sure", () => {
    const early = next(times(6, setDone(7, 3)), { set, place });
    expect(early.patch).toMatchObject({ change: "load", load: kg(51) });
    expect(codes(early.evidence)).toEqual(["progress/bottom-reached", "progress/step-fine", "progress/likely"]);
    expect(early.evidence[0]!.data).toMatchObject({
      goal: 5,
      load: kg(50),
      sessions: [
        { on: "2027-03-13", reps: 7, reserve: 3 },
        { on: "2027-03-16", reps: 7, reserve: 3 },
      ],
    });
    expect(early.certainty).toMatchObject({ sessions: 6 });
    expect(early.since).toBe(stateWith(times(6, setDone(7, 3)), { set, place }).history[4]!.n);
  });

  test("every set of both sessions must have reached the bottom, with the load told", () => {
    const state = stateWith(times(6, setDone(7, 3)), { set, place });
    const last = state.history.at(-1)!;
    const with0 = (sets: typeof last.sets) => {
      const history = [...state.history.slice(0, -1), { ...last, sets }];
      const { loads, capacity, exercise, slot, home, shareAtMost, oneMoreSet } = state;
      return repsThenLoad({ ...state, loads, capacity, exercise, slot, home, shareAtMost, oneMoreSet, history }).kind;
    };
    expect(with0(last.sets)).toBe("up");
    expect(with0(last.sets.map((each, at) => (at === 1 ? { ...each, reps: { both: 4 } } : each)))).toBe("stay");
    expect(with0(last.sets.slice(0, 2))).toBe("stay");
    expect(with0(last.sets.map(({ lifted: _, ...each }) => each))).toBe("stay");
  });

  test("not sure, it waits for the rule", () => {
    expect(next(times(6, setDone(5, 1)), { set, place }).kind).toBe("stay");
    expect(next(times(3, setDone(7, 3)), { set, place }).kind).toBe("stay");
  });
});
