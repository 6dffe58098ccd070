import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { type FitInput, fitPhase } from "../fit/index.ts";
import { sessionSeconds } from "../measures/index.ts";
import type { Limit, Pattern, Person, Phase, PlanSession, PlanSlot, PlanWeek, Session } from "../model/index.ts";
import {
  madeUpPerson,
  madeUpPhase,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  timeOf,
} from "../testing/index.ts";
import { massOf } from "../units.ts";
import { planWeek } from "./plan-week.ts";

const on = day("2027-03-01");
const kgs = (...values: readonly number[]) => values.map((value) => ({ value, unit: "kg" as const }));
const room = madeUpPlace({
  equipment: {
    floor: 1,
    wall: 1,
    chair: 1,
    counter: 1,
    bench: 1,
    rack: 1,
    barbell: 1,
    plates: 8,
    dumbbell: 20,
    cycle: 1,
  },
  bars: kgs(20),
  plates: kgs(20, 10, 5, 2.5).map((load) => ({ load, pairs: 2 })),
  dumbbells: { loads: kgs(4, 6, 8, 10, 12, 14, 16), pairs: true },
});
const person = madeUpPerson({
  status: "intermediate",
  mass: { load: { value: 70, unit: "kg" }, on },
  minutes: 60,
  lifts: [{ exercise: "back-squat", load: { value: 100, unit: "kg" }, reps: 1, on: day("2027-02-20") }],
});
const two = { from: 2, to: 2 };
const squat = madeUpSlot("back-squat", "squat", sets(4, reps(6, { percent: 70, reserve: two }), { restS: 120 }), {
  slot: "squat",
  changes: [{ week: 2, dose: sets(4, reps(5, { percent: 75, reserve: two }), { restS: 120 }) }],
});
const press = madeUpSlot("floor-push-up", "horizontal push", sets(3, reps(10, { reserve: two })), { slot: "press" });
const row = madeUpSlot("one-arm-row", "horizontal pull", sets(3, reps(10, { reserve: two })), { slot: "row" });
const session = madeUpSession("a", 60, [squat, { pair: [press, row], restS: 60 }], {
  warmup: [
    { do: "cycle-upright", dose: sets(1, timeOf(300)) },
    { ramp: "squat", sets: 2 },
  ],
  conditioning: [{ do: "cycle-upright", dose: sets(1, timeOf(360)), effort: "easy" }],
});

function inputFor(
  one: Session,
  more: { person?: Person; phase?: Partial<Phase>; place?: FitInput["place"] } = {},
): FitInput {
  const phase = madeUpPhase([one], { weeks: 4, light: [4], ...more.phase });
  const programme = madeUpProgramme([], { status: "intermediate", phases: [phase] });
  return {
    programme,
    phase,
    person: more.person ?? person,
    place: more.place ?? room,
    catalogue: CATALOGUE,
    on,
    perWeek: 1,
  };
}
function week(number: number, one: Session = session, more: Parameters<typeof inputFor>[1] = {}): PlanWeek {
  const input = inputFor(one, more);
  return planWeek(input, fitPhase(input), number);
}
function forbid(movement: Pattern): Limit {
  return { kind: "movement", movement, side: "both", from: on, to: day("2027-06-01"), who: "Dr A" };
}
const only = ({ sessions }: PlanWeek): PlanSession => sessions[0]!;
const slotIn = (found: PlanWeek, key: string): PlanSlot =>
  only(found)
    .blocks.flatMap(({ slots }) => slots)
    .find((slot) => slot.key === key)!;

describe("doses", () => {
  test("follow the coach's changes, and their loads with them", () => {
    const [first, second] = [week(1), week(2)].map((found) => slotIn(found, "squat"));
    expect([first!.dose.sets[0]!.percent, first!.load]).toEqual([70, kgs(70)[0]]);
    expect([second!.dose.sets[0]!.percent, second!.load]).toEqual([75, kgs(75)[0]]);
    expect(slotIn(week(3), "squat").dose).toEqual(second!.dose);
  });
  test("a light week has half the sets, one more in reserve and the same load", () => {
    const [full, light] = [week(3), week(4)];
    expect([full.light, light.light]).toEqual([false, true]);
    for (const key of ["squat", "press", "row"]) {
      const [before, after] = [slotIn(full, key), slotIn(light, key)];
      expect(after.dose.sets).toHaveLength(Math.ceil(before.dose.sets.length / 2));
      for (const set of after.dose.sets) expect(set.reserve).toEqual({ from: 3, to: 3 });
      expect(after.load).toEqual(before.load);
    }
  });
  test("loads that differ from set to set are cut with their sets", () => {
    const top = {
      ...squat,
      dose: {
        sets: [...sets(1, reps(3, { percent: 85 })).sets, ...sets(3, reps(6, { percent: 70 })).sets],
        restS: 120,
      },
    };
    const { changes: _, ...plain } = top;
    const one = madeUpSession("a", 60, [plain]);
    const full = slotIn(week(1, one), "squat");
    expect(full.loads).toHaveLength(full.dose.sets.length);
    const light = slotIn(week(4, one), "squat");
    expect(light.loads).toEqual(full.loads!.slice(0, light.dose.sets.length));
  });
});

describe("warm-up", () => {
  test("lighter sets lead up to the working load of the week, rising and below it", () => {
    for (const number of [1, 2, 4]) {
      const found = week(number);
      const ramp = only(found).warmup.filter((item) => item.for === "squat");
      const loads = ramp.map(({ load }) => massOf(load!));
      expect(loads).toHaveLength(2);
      expect(loads).toEqual(loads.toSorted((a, b) => a - b));
      expect(loads.at(-1)).toBeLessThan(massOf(slotIn(found, "squat").load!));
    }
  });
  test("where the load is still to be found, so many lighter sets without one", () => {
    const found = week(1, session, { person: { ...person, lifts: [] } });
    const [item, ...more] = only(found).warmup.filter(({ for: slot }) => slot === "squat");
    expect([item!.dose.sets.length, item!.load, more]).toEqual([2, undefined, []]);
  });
  test("nothing leads up to a movement without a load, or to a slot that stays open", () => {
    const one = madeUpSession("a", 60, [press], { warmup: [{ ramp: "press", sets: 2 }] });
    expect(only(week(1, one)).warmup).toEqual([]);
    const forbidden = (["squat", "single leg", "lower isolation"] as const).map((movement) => forbid(movement));
    const none = madeUpSession("a", 60, [squat], { warmup: [{ ramp: "squat", sets: 2 }] });
    const found = only(week(1, none, { person: { ...person, limits: forbidden } }));
    expect(found.open.map(({ key }) => key)).toEqual(["squat"]);
    expect(found.warmup).toEqual([]);
  });
});

describe("blocks", () => {
  test("a pair stays a pair with its rest, in its order", () => {
    expect(only(week(1)).blocks.map(({ kind, restS, slots }) => [kind, restS, slots.map(({ key }) => key)])).toEqual([
      ["straight", undefined, ["squat"]],
      ["pair", 60, ["press", "row"]],
    ]);
  });
  test("a slot that nobody can fill is open with its reasons, and what is left of its pair stands alone", () => {
    const pull = madeUpSlot("lat-pull-down", "vertical pull", sets(3, reps(10)), { slot: "pull" });
    const limits = [forbid("vertical pull"), forbid("horizontal pull")];
    const one = madeUpSession("a", 60, [{ pair: [press, pull], restS: 60 }]);
    const found = only(week(1, one, { person: { ...person, limits } }));
    expect(found.blocks.map(({ kind, slots }) => [kind, slots.map(({ key }) => key)])).toEqual([
      ["straight", ["press"]],
    ]);
    expect(found.open.map(({ key, why }) => [key, why[0]!.code])).toEqual([["pull", "fit/nothing-fits"]]);
  });
  test("other forms are offered, best first, at most twelve, never the chosen one", () => {
    for (const { slots } of only(week(1)).blocks) {
      for (const { exercise, offer } of slots) {
        expect(offer.length).toBeGreaterThan(0);
        expect(offer.length).toBeLessThanOrEqual(12);
        expect(offer).not.toContain(exercise);
        expect(new Set(offer).size).toBe(offer.length);
      }
    }
  });
});

test("minutes are those of the measure for just this week, whole, and a light week is shorter", () => {
  const length = (found: PlanSession) => sessionSeconds(found, (id) => CATALOGUE.exercises.get(id));
  for (const number of [1, 4]) {
    const found = only(week(number));
    const { low, high } = length(found);
    expect(found.minutes).toEqual({ low: Math.floor(low / 60), high: Math.ceil(high / 60) });
  }
  expect(only(week(4)).minutes.high).toBeLessThan(only(week(3)).minutes.high);
});

test("conditioning carries the person's pulse for its effort; with a medicine that slows the heart it does not", () => {
  const planned = (slowed: boolean) => {
    return only(week(1, session, { person: { ...person, pulse: { rest: 60, slowed, on } } })).conditioning[0];
  };
  // 208 − 0.7 × 40 = 180 at 40; 30 to 40 % of 120 over 60 are 96 to 108, and 40 % of 10 beats are 4.
  expect(planned(false)?.pulse).toEqual({ from: 96, to: 108, miss: 4 });
  expect(planned(true)).toEqual({ exercise: "cycle-upright", dose: sets(1, timeOf(360)), effort: "easy" });
});

test("conditioning keeps its effort and stands after the work", () => {
  expect(only(week(1)).conditioning).toEqual([
    { exercise: "cycle-upright", dose: sets(1, timeOf(360)), effort: "easy" },
  ]);
});
