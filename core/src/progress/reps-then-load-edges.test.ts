import { describe, expect, test } from "vitest";
import type { Capacity } from "../capacity/index.ts";
import type { SetDone } from "../model/index.ts";
import { madeUpExercise, reps, type SlotTrained, setDone, sets, slotTrained } from "../testing/index.ts";
import type { DoseState } from "./dose-state.ts";
import { dosesFor } from "./index.ts";
import { repsThenLoad } from "./reps-then-load.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const press = madeUpExercise({ id: "press", loadMeaning: "stack", needs: [["leg press"]], muscles: { chest: 1 } });
const pinned = (...pins: readonly number[]) =>
  ({ equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins } } }) as const;
const stateWith = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}): DoseState => ({
  ...dosesFor(
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
  )[0]!.state,
});
const times = (count: number, done: Partial<SetDone>) => Array<Partial<SetDone>>(count).fill(done);
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);
const asking = (state: DoseState, from: number, to: number): DoseState => ({
  ...state,
  slot: { ...state.slot, dose: sets(3, reps({ from, to })) },
});
const UNKNOWN: Capacity = { kind: "unknown", missing: { code: "capacity/few-sessions", data: {} } };

describe("the range that a heavier load goes back to", () => {
  // By epley1985 8 repetitions with 60 kg are ⌈1.2 × 38 − 30⌉ = 16 with 50 kg, and 10 are 18.
  test("is that of the programme, however wide the range has become", () => {
    const far = { place: pinned(50, 60) };
    const wide = asking(stateWith(times(2, setDone(16)), far), 10, 14);
    expect(repsThenLoad(wide).evidence[1]).toEqual({
      code: "progress/step-earned",
      data: { from: kg(50), to: kg(60), percent: 20, most: 10, reps: 16, needed: 16 },
    });
    expect(repsThenLoad({ ...wide, home: sets(3, reps({ from: 10, to: 12 })) }).patch).toMatchObject({
      change: "reps",
    });
  });
});

describe("loads", () => {
  test("a single one that is here is enough for a wider range; none at all leaves all as it is", () => {
    const one = stateWith(times(2, setDone(12)), { place: pinned(50) });
    expect(repsThenLoad(one)).toMatchObject({ kind: "up", patch: { change: "reps" } });
    expect(repsThenLoad({ ...one, loads: [] })).toEqual({ kind: "stay", evidence: [], refused: [], others: [] });
  });

  test("a slot that names no load earns one; one that names a load for each set is not judged", () => {
    const { slot, ...state } = stateWith(times(2, setDone(12)));
    const { load: _, ...bare } = slot;
    expect(repsThenLoad({ ...state, slot: bare }).patch).toMatchObject({ change: "load", load: kg(53) });
    expect(repsThenLoad({ ...state, slot: { ...slot, loads: [kg(50), kg(50), kg(50)] } }).kind).toBe("stay");
  });
});

describe("a step that the record makes unlikely", () => {
  const state = stateWith(times(6, setDone(13, 0)), {
    set: reps({ from: 11, to: 11 }, { reserve: { from: 0, to: 0 } }),
    place: pinned(50, 55),
  });
  const next = repsThenLoad(state);

  test("waits: the wider range is asked, and the load stands beside it", () => {
    expect(next.kind).toBe("up");
    expect(next.patch).toMatchObject({ change: "reps", exercise: "press" });
    expect(codes(next.evidence)).toEqual(["progress/two-for-two", "progress/unlikely"]);
    expect(codes(next.refused)).toEqual(["progress/unlikely"]);
    expect(next.refused[0]!.data).toMatchObject({ exercise: "press", reps: 11, load: kg(55), sessions: 6 });
    expect(Number(next.refused[0]!.data["chance"])).toBeLessThan(75);
    expect(next.others).toEqual([{ slot: "it", change: "load", load: kg(55), exercise: "press" }]);
    expect(next).not.toHaveProperty("certainty");
  });

  test("is taken where nothing is known, with no word on how likely", () => {
    const taken = repsThenLoad({ ...state, capacity: UNKNOWN });
    expect(taken.patch).toMatchObject({ change: "load", load: kg(55) });
    expect(codes(taken.evidence)).toEqual(["progress/two-for-two", "progress/step-fine"]);
  });
});

describe("a step before the rule asks for it", () => {
  const set = reps({ from: 5, to: 7 }, { reserve: { from: 2, to: 2 } });
  const state = stateWith(times(6, setDone(7, 3)), { set, place: pinned(45, 50, 51) });

  test("needs to be sure now and nearly so a session before", () => {
    expect(repsThenLoad(state).kind).toBe("up");
    expect(repsThenLoad({ ...state, capacityBefore: UNKNOWN }).kind).toBe("stay");
    expect(repsThenLoad({ ...state, capacity: UNKNOWN }).kind).toBe("stay");
  });

  test("is none where nothing heavier is here: the range is not widened for what did not pass its top", () => {
    expect(repsThenLoad({ ...state, loads: [kg(45), kg(50)] }).kind).toBe("stay");
  });

  test("exactly the bottom in every set is reached, one under it is not; a form in between is not this one", () => {
    const last = state.history.at(-1)!;
    const withLast = (count: number) =>
      repsThenLoad({
        ...state,
        history: [
          ...state.history.slice(0, -1),
          { ...last, sets: last.sets.map((each, at) => (at === 0 ? { ...each, reps: { both: count } } : each)) },
        ],
      }).kind;
    expect([5, 4].map(withLast)).toEqual(["up", "stay"]);
  });

  test("tells what the last set did, of both sessions", () => {
    const history = state.history.map((session) => ({
      ...session,
      sets: session.sets.map((each, at) => (at === 2 ? { ...each, reps: { both: 6 }, reserve: 4 } : each)),
    }));
    const { sessions } = repsThenLoad({ ...state, history }).evidence[0]!.data;
    expect(sessions).toMatchObject([
      { reps: 6, reserve: 4 },
      { reps: 6, reserve: 4 },
    ]);
  });

  test("goes out from the easier of the loads that were lifted", () => {
    const last = state.history.at(-1)!;
    const lighter = last.sets.map((each, at) => (at === 1 ? { ...each, lifted: kg(45) } : each));
    const { load: _, ...slot } = state.slot;
    const next = repsThenLoad({ ...state, slot, history: [...state.history.slice(0, -1), { ...last, sets: lighter }] });
    expect(next.patch).toMatchObject({ change: "load", load: kg(50) });
    expect(next.evidence[0]!.data["load"]).toEqual(kg(45));
  });

  test("is taken though it is large, where the record makes it sure", () => {
    const large = reps({ from: 6, to: 10 }, { reserve: { from: 0, to: 3 } });
    const next = repsThenLoad(stateWith(times(6, setDone(8, 3)), { set: large, place: pinned(50, 56) }));
    expect(next.patch).toMatchObject({ change: "load", load: kg(56) });
    expect(codes(next.evidence)).toEqual(["progress/bottom-reached", "progress/step-large-sure", "progress/likely"]);
    expect(next.evidence[1]!.data).toEqual({ from: kg(50), to: kg(56), percent: 12, most: 10 });
    expect(next.certainty).toMatchObject({ sessions: 6 });
    expect(next.certainty!.chance).toBeGreaterThanOrEqual(0.9);
  });
});

// The book's table of shares: haffTriplett2016. Steps of at most 10 %: acsm2009.
describe("where limits allow a share of a best that nobody knows", () => {
  const small = stateWith(times(2, setDone(12)), { place: pinned(50, 53) });
  const large = stateWith(times(2, setDone(12)), { place: pinned(50, 60) });

  test("the range is widened, and it says what share, what load and how many are left", () => {
    const next = repsThenLoad({ ...small, shareAtMost: 70 });
    expect(next.patch).toMatchObject({ change: "reps" });
    // 12 with 50 kg are ⌊42 / 1.06 − 30⌋ = 9 with 53 kg: a load of 77 %.
    expect(next.evidence.slice(1)).toEqual([
      { code: "progress/share-unknown", data: { most: 70, to: kg(53), reps: 9 } },
    ]);
    expect(codes(next.refused)).toEqual(["progress/share-unknown"]);
    expect(next.others.some(({ change }) => change === "load")).toBe(false);
  });

  test("a share that is surely kept leaves the step; its edge is that share itself", () => {
    const changeAt = (shareAtMost: number) => repsThenLoad({ ...small, shareAtMost }).patch?.change;
    expect([76, 77, 78].map(changeAt)).toEqual(["reps", "load", "load"]);
  });

  test("of a large step both are said; with the range at its widest it stays", () => {
    expect(codes(repsThenLoad({ ...large, shareAtMost: 70 }).refused)).toEqual([
      "progress/step-too-large",
      "progress/share-unknown",
    ]);
    const widest = stateWith(times(2, setDone(27)), { place: pinned(50, 53), set: reps({ from: 20, to: 25 }) });
    const stays = repsThenLoad({ ...widest, shareAtMost: 40 });
    expect([stays.kind, codes(stays.refused)]).toEqual(["stay", ["progress/share-unknown"]]);
  });
});

describe("how large a step is", () => {
  test("10 % is fine, a tenth of a per cent more is large", () => {
    const of = (to: number) =>
      repsThenLoad(stateWith(times(2, setDone(12)), { set: reps(10), place: pinned(50, to) })).evidence[1];
    expect(of(55)).toMatchObject({ code: "progress/step-fine", data: { percent: 10 } });
    expect(of(55.1)).toMatchObject({ code: "progress/step-too-large", data: { percent: 10.2 } });
  });
});
