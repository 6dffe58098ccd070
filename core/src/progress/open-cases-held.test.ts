import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { Caution } from "../model/index.ts";
import {
  setDone as done,
  madeUpExercise,
  reps,
  type SlotTrained,
  SLOT_START as START,
  slotTrained,
} from "../testing/index.ts";
import { proposalsFor } from "./index.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const range = (from: number, to: number) => reps({ from, to });

describe("pr-09: the morning after", () => {
  const press = madeUpExercise({
    id: "leg-press",
    loadMeaning: "stack",
    needs: [["leg press"]],
    stress: { knee_deep: 2 },
  });
  const caution: Caution = {
    tag: "knee_deep",
    ceiling: 3,
    from: START,
    recheck: addDays(START, 60),
    who: "physiotherapist",
  };
  const log = (mornings: SlotTrained["mornings"], loads = [40, 45, 50]) =>
    proposalsFor(
      slotTrained({
        exercise: press,
        set: range(8, 10),
        sets: 3,
        load: loads.at(-1)!,
        place: { equipment: { "leg press": 1 }, stacks: { "leg press": { unit: "kg", pins: [40, 45, 49, 50, 55] } } },
        person: { cautions: [caution] },
        did: loads.map((load, index) => [index * 3, { ...done(12), load: kg(load) }] as const),
        hurts: { 0: { where: "knee", howMuch: 3 }, 1: { where: "knee", howMuch: 4 }, 2: { where: "knee", howMuch: 4 } },
        ...(mornings === undefined ? {} : { mornings }),
        today: 8,
      }),
    );
  const first = { 0: [2, 1], 1: [2, 1] } as const;

  test("above usual the morning after the third session: back from 50 kg", () => {
    const [item] = log({ ...first, 2: [5, 1] });
    expect(item!.proposal.patch).toMatchObject({ change: "load", load: kg(49) });
    expect(item!.proposal.evidence.map(({ code }) => code)).toContain("progress/morning-above");
    expect(item!.stop).toBe(false);
  });

  test("its neighbours: a normal morning lets it rise; none, or one three days late, holds it", () => {
    expect(log({ ...first, 2: [2, 1] }, [45, 45, 45]).map(({ proposal }) => proposal.patch)).toMatchObject([
      { change: "load", load: kg(49) },
    ]);
    expect(log(first, [45, 45, 45])).toEqual([]);
    expect(log({ ...first, 2: [2, 3] }, [45, 45, 45])).toEqual([]);
  });

  test("rising from morning to morning takes it down, though each is only one more", () => {
    const [item] = log({ 0: [2, 1], 1: [3, 1], 2: [4, 1] });
    expect(item!.proposal.evidence).toContainEqual(
      expect.objectContaining({ code: "progress/morning-above", data: expect.objectContaining({ rising: true }) }),
    );
  });
});

describe("pr-07: a boy of 16 whose goblet squat goes from 8 to 28 kg in two weeks", () => {
  const goblet = madeUpExercise({ id: "goblet-squat", loadMeaning: "one implement", needs: [["kettlebell"]] });
  const bells = [8, 12, 16, 20, 24, 28, 32];
  const squats = (loads: readonly number[], lostFrom: number, more: Partial<SlotTrained> = {}) =>
    proposalsFor(
      slotTrained({
        exercise: goblet,
        set: range(8, 10),
        sets: 3,
        load: loads.at(-1)!,
        place: { equipment: { kettlebell: 7 }, kettlebells: bells.map(kg) },
        person: { born: day("2011-01-10"), status: "novice" },
        did: loads.map(
          (load, index) =>
            [
              [0, 2, 4, 7, 9, 11, 14, 16][index]!,
              { ...done(12), load: kg(load), technique: index >= lostFrom ? "lost" : "kept" },
            ] as const,
        ),
        today: 17,
        ...more,
      }),
    );
  const rise = [8, 12, 16, 20, 24, 28];

  test("heels lift from the fifth session on: back to 20 kg, the last clean load, and not up", () => {
    const [item] = squats(rise, 4, { today: 12 });
    expect(item!.proposal.patch).toMatchObject({ change: "load", load: kg(20) });
    expect(item!.proposal.evidence.map(({ code }) => code)).toEqual(["progress/technique-lost", "progress/last-clean"]);
  });

  test("the rate alone, from 8 to 28 kg in eleven days, asks for a look before more", () => {
    expect(squats(rise, 9, { today: 12 })).toEqual([]);
  });

  test("its neighbours: at a usual rate, kept and seen, 20 kg may come after 18; unseen under 18 it may not", () => {
    const place = {
      equipment: { kettlebell: 7 },
      kettlebells: [18, 19, 20].map(kg),
    };
    const steady = [18, 18, 18, 18];
    expect(squats(steady, 9, { place, today: 9 }).map(({ proposal }) => proposal.patch)).toMatchObject([
      { change: "load", load: kg(19) },
    ]);
    const unseen = steady.map((load, index) => [index * 2, { ...done(12), load: kg(load) }] as const);
    expect(squats(steady, 9, { place, today: 9, did: unseen })).toEqual([]);
    expect(squats(steady, 9, { place, today: 9, did: unseen, person: {} })).toHaveLength(1);
  });
});
