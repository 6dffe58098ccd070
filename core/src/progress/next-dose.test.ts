import { describe, expect, test } from "vitest";
import type { Patch, SetDone, SetDose } from "../model/index.ts";
import { madeUpExercise, reps, type SlotTrained, setDone, slotTrained } from "../testing/index.ts";
import { dosesFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const squat = madeUpExercise({ id: "back-squat", loadMeaning: "total", needs: [["barbell"], ["plates"]] });
const rack = {
  equipment: { barbell: 1, plates: 1 },
  bars: [kg(20)],
  plates: [20, 10, 5, 1.25].map((value) => ({ load: kg(value), pairs: 4 })),
};
/** Five to seven, two in reserve, three times, with 100 kg; every three days. */
const BASE: Omit<SlotTrained, "did"> = {
  exercise: squat,
  set: reps({ from: 5, to: 7 }, { reserve: { from: 2, to: 2 } }),
  sets: 3,
  load: 100,
  place: rack,
  today: 0,
};
const next = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}, every = 3) => {
  const days = did.map((each, at) => [at * every, { load: kg(100), ...each }] as const);
  const input = slotTrained({ ...BASE, did: days, today: (did.length - 1) * every + 1, ...more });
  return dosesFor(input)[0]!.next;
};
const times = (count: number, done: Partial<SetDone>) => Array<Partial<SetDone>>(count).fill(done);
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);
const asked = (patch: Patch | undefined) => {
  if (patch?.change !== "reps") throw new Error(String(patch?.change));
  return patch.dose;
};

describe("reps then load", () => {
  test("check value 29: goal 7, last sets of 9 and 9 raise, 9 and 8 hold, nor do 9, 7, 9 (haffTriplett2016)", () => {
    expect(next([setDone(9), setDone(9)])).toMatchObject({ kind: "up", patch: { change: "load", load: kg(102.5) } });
    expect(next([setDone(9), setDone(8)]).kind).toBe("stay");
    expect(next([setDone(9), setDone(7), setDone(9)]).kind).toBe("stay");
  });

  test("sure by the record, it comes before the rule: the bottom of the range twice, and how sure that is", () => {
    const { kind, patch, certainty, evidence } = next(times(5, setDone(7, 3)));
    expect([kind, patch]).toMatchObject(["up", { change: "load", load: kg(102.5) }]);
    expect(certainty!.sessions).toBe(5);
    expect(certainty!.chance).toBeGreaterThanOrEqual(0.9);
    expect(codes(evidence)).toEqual(["progress/bottom-reached", "progress/step-fine", "progress/likely"]);
  });

  test("its neighbours: three sessions are too few to go by, a set under the bottom, no sureness", () => {
    expect(next(times(3, setDone(7, 3))).kind).toBe("stay");
    expect(next([...times(4, setDone(7, 3)), setDone(4, 3)]).kind).toBe("stay");
    expect(next(times(5, setDone(5, 1))).kind).toBe("stay");
  });

  test("unlikely by the record, the rule's step waits and the range is widened", () => {
    const { patch, refused, others } = next([...times(8, setDone(3, 4)), setDone(8), setDone(8)], {
      set: reps({ from: 4, to: 6 }, { reserve: { from: 4, to: 4 } }),
      place: { ...rack, plates: [20, 10, 5].map((value) => ({ load: kg(value), pairs: 4 })) },
    });
    expect(patch).toMatchObject({ change: "reps" });
    expect(codes(refused)).toEqual(["progress/unlikely"]);
    expect(others).toMatchObject([{ change: "load", load: kg(110) }]);
  });
});

describe("load", () => {
  const load = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}) =>
    next(did, { way: "load", set: reps(5), ...more });

  test("every set done as asked in two sessions running earns the next load (acsm2009)", () => {
    const { kind, patch, evidence } = load([setDone(5), setDone(5)]);
    expect([kind, patch]).toMatchObject(["up", { change: "load", load: kg(102.5) }]);
    expect(codes(evidence)).toEqual(["progress/all-sets", "progress/step-fine"]);
  });

  test("its neighbours: once, a set short, with less, after a break, nothing heavier", () => {
    expect(load([setDone(5)]).kind).toBe("stay");
    expect(load([setDone(5), setDone(4)]).kind).toBe("stay");
    expect(load([setDone(5), { ...setDone(5), load: kg(95) }]).kind).toBe("stay");
    expect(load([setDone(5), setDone(5)], { today: 18 }).kind).toBe("down");
    const full = load([setDone(5), setDone(5)], {
      load: 165,
      place: { ...rack, plates: [{ load: kg(20), pairs: 2 }] },
    });
    expect(full.kind).toBe("stay");
  });

  test("a large step is taken in smaller ways: slower first, then one set tried", () => {
    const place = { ...rack, plates: [{ load: kg(20), pairs: 4 }] };
    const { patch, refused, others } = load([setDone(5), setDone(5)], { place });
    expect(asked(patch).tempo).toEqual([4, 1, 1, 0]);
    expect(refused).toMatchObject([{ code: "progress/step-too-large", data: { percent: 40, most: 10 } }]);
    expect(others.map((each) => asked(each).sets.map((set) => set.load?.value))).toEqual([[140, 100, 100]]);
  });
});

describe("reserve", () => {
  const guided = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}) =>
    next(did, { way: "reserve", ...more });

  test("more left than asked in every set of two sessions running: the next load", () => {
    const { patch, evidence } = guided([setDone(5, 3), setDone(5, 4)]);
    expect(patch).toMatchObject({ change: "load", load: kg(102.5) });
    expect(evidence[0]).toMatchObject({
      code: "progress/more-in-reserve",
      data: { sessions: [{ reserve: 3 }, { reserve: 4 }] },
    });
  });

  test("less left than asked in two sessions running: one load back", () => {
    const { kind, patch } = guided([setDone(5, 1), setDone(5, 0)]);
    expect([kind, patch]).toMatchObject(["down", { change: "load", load: kg(97.5) }]);
  });

  test("its neighbours: as asked, once, too few repetitions, and a reserve that was not said", () => {
    expect(guided([setDone(5, 2), setDone(5, 2)]).kind).toBe("stay");
    expect(guided([setDone(5, 2), setDone(5, 4)]).kind).toBe("stay");
    expect(guided([setDone(5, 2), setDone(5, 0)]).kind).toBe("stay");
    expect(guided([setDone(4, 4), setDone(5, 4)]).kind).toBe("stay");
    const unsaid = guided([setDone(6), setDone(6)]);
    expect(unsaid.kind).toBe("unknown");
    expect(codes(unsaid.evidence)).toEqual(["progress/reserve-missing"]);
  });
});

describe("hold time", () => {
  const plank = madeUpExercise({ id: "plank", amounts: "hold", mode: "hold", hold: { from: 10, to: 60, step: 5 } });
  const longer = madeUpExercise({
    id: "long-plank",
    amounts: "hold",
    mode: "hold",
    hold: { from: 10, to: 30, step: 5 },
  });
  const held = (asked: number, did: readonly number[], more: Partial<SlotTrained> = {}) =>
    next(
      did.map((holdS) => ({ holdS, reps: "as asked", load: "none" })),
      { exercise: plank, set: hold(asked), place: {}, ...more },
      5,
    );
  const hold = (seconds: number): SetDose => ({
    amount: { kind: "hold", span: { from: seconds, to: seconds } },
    eachSide: false,
  });

  test("all of it twice: one usual raise of the form", () => {
    const { patch, evidence } = held(30, [30, 32]);
    expect(asked(patch).sets.map(({ amount }) => amount)).toEqual(
      Array(3).fill({ kind: "hold", span: { from: 35, to: 35 } }),
    );
    expect(evidence[0]).toMatchObject({ code: "progress/held", data: { seconds: 30 } });
  });

  test("never past the top of its range; at the top the harder form comes, gate met", () => {
    expect(asked(held(58, [58, 60]).patch).sets[0]!.amount).toEqual({ kind: "hold", span: { from: 60, to: 60 } });
    const { patch, evidence } = held(60, [60, 60], { harder: [longer] });
    expect(patch).toEqual({ slot: "it", change: "exercise", exercise: "long-plank" });
    expect(codes(evidence).slice(0, 2)).toEqual(["progress/held", "progress/hold-full"]);
  });

  test("its neighbours: once, and short", () => {
    expect(held(30, [30]).kind).toBe("stay");
    expect(held(30, [30, 28]).kind).toBe("stay");
  });
});

describe("ladder", () => {
  const push = madeUpExercise({ id: "incline-push-up", loadMeaning: "body only" });
  const floor = madeUpExercise({
    id: "floor-push-up",
    loadMeaning: "body only",
    need: { conditions: ["hands flat without pain"] },
  });
  const climbed = (did: readonly Partial<SetDone>[], more: Partial<SlotTrained> = {}, every = 5) =>
    next(
      did.map((each) => ({ ...each, load: "none" })),
      { exercise: push, harder: [floor], way: "ladder", set: reps({ from: 8, to: 12 }), place: {}, ...more },
      every,
    );

  test("3 × 12 with two in reserve in two sessions five days apart: the next form, tried first, its conditions shown", () => {
    const { patch, evidence } = climbed([setDone(12, 2), setDone(12, 3)]);
    expect(patch).toEqual({ slot: "it", change: "exercise", exercise: "floor-push-up" });
    expect(codes(evidence)).toEqual(["progress/gate-met", "progress/gate-conditions", "progress/try-first"]);
    expect(evidence[1]!.data["conditions"]).toEqual(["hands flat without pain"]);
  });

  test("its neighbours: once, eleven, one left, reserve not said, too close together", () => {
    expect(climbed([setDone(12, 2)]).kind).toBe("stay");
    expect(climbed([setDone(12, 2), setDone(11, 2)]).kind).toBe("stay");
    expect(climbed([setDone(12, 2), setDone(12, 1)]).kind).toBe("stay");
    expect(climbed([setDone(12), setDone(12)]).kind).toBe("stay");
    const close = climbed([setDone(12, 2), setDone(12, 2)], {}, 4);
    expect([close.kind, codes(close.refused)]).toEqual(["stay", ["progress/gate-too-soon"]]);
  });

  test("a form that this person may not do is none", () => {
    const hard = { ...floor, stress: { wr_ext: 3 } as const };
    const cannot = climbed([setDone(12, 2), setDone(12, 3)], { harder: [hard], person: { cannot: ["wr_ext"] } });
    expect(cannot.kind).toBe("stay");
  });
});

describe("contacts", () => {
  const jump = madeUpExercise({ id: "jump", amounts: "contacts", mode: "ballistic", loadMeaning: "none" });
  const contacts = (count: number): SetDose => ({
    amount: { kind: "contacts", span: { from: count, to: count } },
    eachSide: false,
  });
  const jumped = (asked: number, did: readonly number[], more: Partial<SlotTrained> = {}) =>
    next(
      did.map((count) => ({ reps: count, load: "none" })),
      { exercise: jump, set: contacts(asked), way: "contacts", place: {}, ...more },
    );

  test("all done twice: a tenth more, at most one in each set", () => {
    const sets = asked(jumped(10, [10, 10]).patch).sets.map(({ amount }) => amount);
    expect(sets.map((each) => (each.kind === "contacts" ? each.span.to : 0))).toEqual([11, 11, 11]);
    const few = asked(jumped(5, [5, 5]).patch).sets.map(({ amount }) => amount);
    expect(few.map((each) => (each.kind === "contacts" ? each.span.to : 0))).toEqual([6, 5, 5]);
  });

  test("at 60 no more of them; one short, and nothing rises", () => {
    expect(jumped(20, [20, 20]).kind).toBe("stay");
    expect(jumped(10, [10, 9]).kind).toBe("stay");
  });
});

test("stay stays", () => {
  expect(next([setDone(9), setDone(9)], { way: "stay" })).toEqual({
    kind: "stay",
    evidence: [],
    refused: [],
    others: [],
  });
});
