import { describe, expect, test } from "vitest";
import { capacityOf } from "../capacity/index.ts";
import { addDays } from "../day.ts";
import { slotHistory } from "../measures/index.ts";
import type { Caution, Patch } from "../model/index.ts";
import { setDone as done, madeUpExercise, reps, SLOT_START as START, slotTrained } from "../testing/index.ts";
import { painOn, proposalsFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const range = (from: number, to: number) => reps({ from, to });

describe("pr-01: lateral raise with 5 kg dumbbells, 10–15 repetitions, and the next pair is 7.5 kg", () => {
  const raise = madeUpExercise({
    id: "lateral-raise",
    loadMeaning: "per hand",
    needs: [["dumbbell"]],
    muscles: { "side shoulder": 1 },
  });
  const women = (pairs: readonly number[], count: number, reserve?: number) =>
    slotTrained({
      exercise: raise,
      set: range(10, 15),
      sets: 3,
      load: 5,
      place: { equipment: { dumbbell: 4 }, dumbbells: { loads: pairs.map(kg), pairs: true } },
      did: [
        [0, done(count, reserve)],
        [3, done(count, reserve)],
      ],
      today: 5,
    });

  test("15, 15, 15 twice with 2 left does not go up", () => {
    expect(proposalsFor(women([5, 7.5], 15, 2))).toEqual([]);
  });

  test("17 twice: the step of 50 % is said and is too large; the range is widened to 25 first", () => {
    const [item] = proposalsFor(women([5, 7.5], 17));
    expect(item!.proposal.patch).toMatchObject({
      change: "reps",
      dose: { sets: Array(3).fill({ amount: { kind: "reps", span: { from: 15, to: 25 } } }) },
    });
    expect(item!.proposal.evidence).toContainEqual({
      code: "progress/step-too-large",
      data: { from: kg(5), to: kg(7.5), percent: 50, most: 10 },
    });
    expect(item!.others.at(-1)).toEqual({ slot: "it", change: "load", load: kg(7.5), exercise: "lateral-raise" });
  });

  test("then, in order: lower slowly, a set more, one set of 6–8 with 7.5 kg while the others stay at 5 kg", () => {
    const [item] = proposalsFor(women([5, 7.5], 17));
    const [slow, more, tried] = item!.others as Extract<Patch, { change: "reps" }>[];
    expect(slow!.dose.tempo?.[0]).toBeGreaterThanOrEqual(3);
    expect(more!.dose.sets).toHaveLength(4);
    expect(tried!.dose.sets.map(({ load }) => load)).toEqual([kg(7.5), kg(5), kg(5)]);
    expect(tried!.dose.sets[0]!.amount).toEqual({ kind: "reps", span: { from: 6, to: 8 } });
  });

  test("its neighbour with a pair of 5.5 kg goes up", () => {
    const [item] = proposalsFor(women([5, 5.5, 7.5], 17));
    expect(item!.proposal.patch).toMatchObject({ change: "load", load: kg(5.5) });
    expect(item!.proposal.evidence.at(-1)).toMatchObject({ code: "progress/step-fine", data: { percent: 10 } });
  });

  test("at the top of the widened range the heavier pair comes with what to expect: about 8 repetitions", () => {
    const { exercise, place, did, today } = {
      exercise: raise,
      place: { equipment: { dumbbell: 4 }, dumbbells: { loads: [5, 7.5].map(kg), pairs: true } },
      did: [
        [0, done(27)],
        [3, done(27)],
      ] as const,
      today: 5,
    };
    const [item] = proposalsFor(slotTrained({ exercise, set: range(15, 25), sets: 3, load: 5, place, did, today }));
    expect(item!.proposal.patch).toMatchObject({ change: "load", load: kg(7.5) });
    expect(item!.proposal.evidence).toContainEqual({ code: "progress/expect", data: { load: kg(7.5), reps: 8 } });
  });
});

describe("pr-05: squat 5 × 5 at 100 kg, then two weeks of flu", () => {
  const squat = madeUpExercise({ id: "back-squat", loadMeaning: "total", needs: [["barbell"], ["plates"]] });
  const on = (today: number) =>
    proposalsFor(
      slotTrained({
        exercise: squat,
        set: range(5, 5),
        sets: 5,
        load: 100,
        place: {
          equipment: { barbell: 1, plates: 1 },
          bars: [kg(20)],
          plates: [20, 10, 5, 1.25].map((value) => ({ load: kg(value), pairs: 4 })),
        },
        did: [
          [0, done(7)],
          [3, done(7)],
        ],
        today,
      }),
    );

  test("today's squat is neither 102.5 kg nor a restart: 80 to 90 % with half to two thirds of the sets, rule named", () => {
    const [item] = on(17);
    const { patch, evidence } = item!.proposal;
    if (patch.change !== "reps") throw new Error(patch.change);
    const load = patch.dose.sets[0]!.load!.value;
    expect(load).toBeGreaterThanOrEqual(80);
    expect(load).toBeLessThanOrEqual(90);
    expect(patch.dose.sets).toHaveLength(3);
    expect(patch.dose.sets.every(({ reserve }) => (reserve?.from ?? 0) >= 2)).toBe(true);
    expect(evidence).toMatchObject([{ code: "progress/comeback", data: { days: 14, rule: "gentle" } }]);
    expect(item!.others).toMatchObject([{ change: "reps", dose: { sets: Array(3).fill({ load: kg(50) }) } }]);
  });
  test("its neighbour, three days after, is offered 102.5 kg", () => {
    expect(on(6).map(({ proposal }) => proposal.patch)).toMatchObject([{ change: "load", load: kg(102.5) }]);
  });
});

describe("pr-09: a sore knee at the leg press, 3 and then 4 of 10", () => {
  const press = madeUpExercise({
    id: "leg-press",
    loadMeaning: "stack",
    needs: [["leg press"]],
    stress: { knee_deep: 2 },
  });
  const watched: Caution = {
    tag: "knee_deep",
    ceiling: 3,
    from: START,
    recheck: addDays(START, 60),
    who: "physiotherapist",
  };
  const pained = (howMuch: number, cautions: readonly Caution[]) =>
    slotTrained({
      exercise: press,
      set: range(8, 10),
      sets: 3,
      load: 45,
      place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [40, 45, 49, 55] } } },
      person: { cautions },
      did: [
        [0, done(12)],
        [3, done(12)],
      ],
      hurts: { 1: { where: "knee", howMuch } },
      today: 5,
    });
  const waits = (howMuch: number, cautions: readonly Caution[]) =>
    painOn(pained(howMuch, cautions), "it", press).map((pain) => pain.waits);

  test("a knee that is known and watched may go on at 3 and at 4; without the morning's answer the load is held", () => {
    expect([waits(3, [watched]), waits(4, [watched])]).toEqual([[false], [false]]);
    expect(proposalsFor(pained(4, [watched]))).toEqual([]);
  });

  test("its neighbours: over 5 it waits; a knee that nobody knew of waits from 3 on; at 2 the load goes up", () => {
    expect(waits(6, [watched])).toEqual([true]);
    expect(waits(3, [])).toEqual([true]);
    expect(proposalsFor(pained(2, [watched])).map(({ proposal }) => proposal.patch)).toMatchObject([
      { change: "load", load: kg(49) },
    ]);
  });
});

describe("pr-11: a plank that got longer every week", () => {
  const plank = madeUpExercise({ id: "plank", amounts: "hold", mode: "hold", hold: { from: 10, to: 60, step: 5 } });
  const held = slotTrained({
    exercise: plank,
    set: { amount: { kind: "hold", span: { from: 60, to: 60 } }, eachSide: false },
    sets: 1,
    place: {},
    did: [60, 75, 90, 105, 120, 135].map((holdS, week) => [
      week * 7,
      { holdS, reps: undefined as never, load: "none" },
    ]),
    today: 37,
  });

  test("it is not lengthened past its range: short holds come instead, where no harder form is there", () => {
    const [item] = proposalsFor(held);
    expect(item!.proposal.patch).toMatchObject({ change: "reps" });
    const { dose } = item!.proposal.patch as Extract<Patch, { change: "reps" }>;
    expect(dose.sets.every(({ amount }) => amount.kind === "hold" && amount.span.to === 10)).toBe(true);
    expect(item!.proposal.evidence.map(({ code }) => code)).toContain("progress/hold-full");
  });

  test("seconds are no kilograms: no maximum is told", () => {
    const { once } = capacityOf(plank, slotHistory(held.log, "it"), { ...held, on: addDays(START, 37) });
    expect(once).toMatchObject({ kind: "unknown" });
  });

  test("its neighbour, repetitions with a bar, is told", () => {
    const squat = madeUpExercise({ id: "back-squat", loadMeaning: "total" });
    const lifted = slotTrained({
      exercise: squat,
      set: range(5, 5),
      sets: 1,
      load: 60,
      place: {},
      did: [
        [0, done(5, 0)],
        [3, done(5, 0)],
      ],
      today: 4,
    });
    const { once } = capacityOf(squat, slotHistory(lifted.log, "it"), { ...lifted, on: addDays(START, 4) });
    expect(once.kind).toBe("known");
  });
});
