import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { conditioningDose } from "../measures/index.ts";
import { type Conditioning, type Dose, type Exercise, type Person, type Place, printDose } from "../model/index.ts";
import {
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPhase,
  madeUpPlace,
  reps,
  sets,
  timeOf,
} from "../testing/index.ts";
import { admitFor } from "./candidates.ts";
import { conditioningDoses, easyItem, easyWarmUp } from "./easy-work.ts";

const walk = madeUpExercise({ id: "walk", pattern: "locomotion", amounts: "time", mode: "cyclic" });
const bike = { ...walk, id: "bike", needs: [["cycle"]] } as const satisfies Exercise;
const row = {
  ...walk,
  id: "row",
  needs: [["rowing machine"]],
  stress: { sp_flex: 2, pressor: 1 },
} as const satisfies Exercise;
const march = { ...walk, id: "march", stress: { impact: 1 } } as const satisfies Exercise;
const skips = { ...walk, id: "skips", amounts: "contacts" } as const satisfies Exercise;
const squat = madeUpExercise({ id: "squat" });
const all: readonly Exercise[] = [row, bike, march, skips, squat, walk];

function ask(asked: Parameters<typeof easyItem>[2], said: { person?: Partial<Person>; place?: Partial<Place> } = {}) {
  const context = {
    phase: madeUpPhase([]),
    person: madeUpPerson(said.person),
    place: madeUpPlace(said.place),
    catalogue: madeUpCatalogue(all),
    on: day("2027-03-01"),
  };
  return easyItem(context, admitFor(context), asked);
}
const five = sets(1, timeOf(300));

describe("an easy item", () => {
  test("is the coach's own where it may be done, without a reason", () => {
    expect(ask({ do: "bike", dose: five }, { place: { equipment: { cycle: 1 } } })).toMatchObject({
      exercise: { id: "bike" },
      dose: five,
      why: [],
    });
  });

  test("is the first of the coach's alternatives that may be done, and says what stood against the first", () => {
    const found = ask({ do: "bike", dose: five, or: ["no-such", "row", "march", "walk"] });
    expect(found?.exercise.id).toBe("march");
    expect(found?.why[0]).toMatchObject({
      code: "fit/instead",
      data: { first: "bike", exercise: "march", why: [{ code: "offer/equipment", data: { groups: [["cycle"]] } }] },
    });
  });

  test("is else the form of its pattern, counted alike, with the fewest stresses, of equals the first by name", () => {
    const place = { equipment: { "rowing machine": 1 } };
    // walk has no stress, march 1, row 3; skips counts contacts; squat is of another pattern.
    expect(ask({ do: "bike", dose: five }, { place })?.exercise.id).toBe("walk");
    const twins = [
      { ...walk, id: "z" },
      { ...walk, id: "a" },
    ];
    const context = {
      phase: madeUpPhase([]),
      person: madeUpPerson(),
      place: madeUpPlace(),
      catalogue: madeUpCatalogue([bike, ...twins]),
      on: day("2027-03-01"),
    };
    expect(easyItem(context, admitFor(context), { do: "bike", dose: five })?.exercise.id).toBe("a");
  });

  test("is nothing when none may be done, or the catalogue does not know it", () => {
    expect(ask({ do: "no-such", dose: five })).toBeUndefined();
    const context = {
      phase: madeUpPhase([]),
      person: madeUpPerson(),
      place: madeUpPlace(),
      catalogue: madeUpCatalogue([bike]),
      on: day("2027-03-01"),
    };
    expect(easyItem(context, admitFor(context), { do: "bike", dose: five })).toBeUndefined();
  });

  test("of a warm-up are all but the ramps, and what cannot be done is left out", () => {
    const context = {
      phase: madeUpPhase([]),
      person: madeUpPerson(),
      place: madeUpPlace(),
      catalogue: madeUpCatalogue(all),
      on: day("2027-03-01"),
    };
    const items = [
      { do: "walk", dose: five },
      { ramp: "squat", sets: 2 },
      { do: "no-such", dose: five },
    ];
    expect(easyWarmUp(context, admitFor(context), items).map(({ exercise }) => exercise.id)).toEqual(["walk"]);
    expect(easyWarmUp(context, admitFor(context), undefined)).toEqual([]);
  });
});

describe("how much of a conditioning block may be given", () => {
  test("of running and walking in turn all bouts, half of them, or none", () => {
    const run: Conditioning = { slot: "run", runWalk: 3, do: "run", effort: "steady" };
    const dose = conditioningDose(run);
    expect(conditioningDoses(run, dose).map((each) => each.dose?.sets.length)).toEqual([7, 4, undefined]);
    const last: Conditioning = { ...run, runWalk: 9 };
    expect(conditioningDoses(last, conditioningDose(last)).map((each) => each.dose && printDose(each.dose))).toEqual([
      "1 × 30 min",
      "1 × 15 min",
      undefined,
    ]);
  });

  const item = (dose: Dose): Conditioning => ({ do: "walk", dose, effort: "easy" });
  const parts = (dose: Dose) => conditioningDoses(item(dose), dose);

  test("all, half of its time, or none", () => {
    const dose = sets(1, timeOf({ from: 600, to: 900 }));
    expect(parts(dose)).toEqual([
      { part: "all", dose },
      { part: "half", dose: sets(1, timeOf({ from: 300, to: 480 })) },
      { part: "none" },
    ]);
  });

  test("half is in whole minutes, rounded up, and 1 min at least", () => {
    const half = (seconds: number) => parts(sets(1, timeOf(seconds)))[1]?.dose?.sets[0]?.amount;
    expect(half(60)).toEqual({ kind: "time", span: { from: 60, to: 60 } });
    expect(half(180)).toEqual({ kind: "time", span: { from: 120, to: 120 } });
    expect(half(1200)).toEqual({ kind: "time", span: { from: 600, to: 600 } });
  });

  test("work that is counted is given whole or not; beside timed work it stays as it is", () => {
    expect(parts(sets(3, reps(10))).map(({ part }) => part)).toEqual(["all", "none"]);
    const mixed = { sets: [timeOf(600), hold(20)] };
    expect(parts(mixed)[1]).toEqual({ part: "half", dose: { sets: [timeOf(300), hold(20)] } });
  });
});
