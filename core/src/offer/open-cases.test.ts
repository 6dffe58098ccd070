import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { Dose, Exercise, ExerciseId, Limit, Person, Place, Screening } from "../model/index.ts";
import { FULL_ROOM, hold, madeUpPerson, madeUpPlace, reps, sets, timeOf } from "../testing/index.ts";
import { kg, type Load, lb } from "../units.ts";
import { type Admission, admitter } from "./admit.ts";
import { clearanceOf } from "./clearance.ts";
import { mayPrint } from "./screening.ts";

const kilos = (...values: number[]): Load[] => values.map((value) => ({ value, unit: "kg" }));

/** A dose in the terms of the form, easy enough that only what the case is about can refuse it. */
function easyDose(exercise: Exercise, load?: Load): Dose {
  const reserve = { from: 4, to: 4 };
  const loaded = load === undefined ? {} : { load };
  switch (exercise.amounts) {
    case "hold":
      return sets(2, hold(exercise.hold!.from));
    case "time":
      return sets(1, timeOf(300));
    case "reps":
      return sets(2, reps(10, { reserve, ...loaded }));
    default:
      return sets(2, {
        amount: { kind: exercise.amounts, span: { from: 10, to: 10 } },
        eachSide: false,
        reserve,
        ...loaded,
      });
  }
}

function entry(id: ExerciseId): Exercise {
  const found = CATALOGUE.exercises.get(id);
  if (found === undefined) throw new Error(`The catalogue has no ${id}`);
  return found;
}

function asker(person: Person, place: Place, on: string) {
  const admit = admitter({ person, place, catalogue: CATALOGUE, on: day(on) });
  return (id: ExerciseId, load?: Load): Admission => admit(entry(id), easyDose(entry(id), load), "steady");
}
const codes = (admission: Admission) => (admission.ok ? [] : admission.why.map(({ code }) => code));

/** Ids of the whole catalogue that are admitted. */
function offered(ask: (id: ExerciseId) => Admission): ExerciseId[] {
  return [...CATALOGUE.exercises.keys()].filter((id) => ask(id).ok);
}

describe("pf-01 left forearm in a cast, no operation", () => {
  const gym = madeUpPlace({ equipment: FULL_ROOM });
  const cast: Limit = {
    kind: "rest",
    part: "arm",
    side: "left",
    from: day("2027-03-01"),
    to: day("2027-04-05"),
    who: "the coach, until the letter is here",
  };
  const doctorFirst: Screening = {
    outcome: "ask a doctor first",
    on: day("2027-03-01"),
    until: day("2027-12-31"),
    by: "the coach",
  };
  const player = madeUpPerson({
    born: day("1998-01-10"),
    mass: { load: { value: 81, unit: "kg" }, on: day("2027-03-01") },
    status: "intermediate",
    limits: [cast],
    screening: doctorFirst,
  });
  const hurt = asker(player, gym, "2027-03-07");
  const neighbour = asker({ ...player, limits: [] }, gym, "2027-03-07");

  test("pf-01 nothing is printed before the clinician has written; with the agreement it is", () => {
    expect(mayPrint(player, day("2027-03-07"))).toMatchObject({ ok: false, reason: { code: "offer/ask-doctor" } });
    const agreed = { ...doctorFirst, agreed: { on: day("2027-03-07"), who: "Dr A" } };
    expect(mayPrint({ ...player, screening: agreed }, day("2027-03-07"))).toEqual({ ok: true });
  });

  test.each(["leg-press-mid", "one-leg-press", "leg-curl", "leg-extension", "cycle-upright", "body-squat", "dead-bug"])(
    "pf-01 %s stays, for both legs and the trunk",
    (id) => {
      expect(hurt(id)).toMatchObject({ ok: true });
      expect(hurt(id)).not.toHaveProperty("side");
    },
  );

  test.each([
    "back-squat",
    "barbell-bench-press",
    "barbell-deadlift",
    "carry-two-hand",
    "dead-hang",
    "pull-up",
    "floor-push-up",
    "counter-push-up",
    "bench-plank",
    "rowing-machine",
    "run",
    "one-arm-row",
  ])("pf-01 %s goes, and only because of the arm", (id) => {
    expect(codes(hurt(id))).toEqual(["offer/rest-order"]);
    expect(neighbour(id)).toMatchObject({ ok: true });
  });

  test("pf-01 the right arm may be trained alone; both arms without the order", () => {
    expect(hurt("one-arm-chest-press")).toMatchObject({ ok: true, side: "right" });
    expect(neighbour("one-arm-chest-press")).not.toHaveProperty("side");
  });

  test("pf-01 after five weeks the order stays and asks", () => {
    const later = asker(player, gym, "2027-04-06");
    expect(codes(later("back-squat"))).toEqual(["offer/rest-order"]);
    expect(clearanceOf(player, day("2027-04-06")).asks.map(({ code }) => code)).toEqual(["offer/ask-limit"]);
    expect(clearanceOf(player, day("2027-04-05")).asks).toEqual([]);
  });
});

describe("pf-03 cannot get to the floor", () => {
  const flat = madeUpPlace({
    equipment: {
      floor: 1,
      wall: 1,
      chair: 1,
      "high seat": 1,
      counter: 1,
      step: 1,
      rail: 1,
      towel: 1,
      band: 3,
      dumbbell: 6,
    },
    dumbbells: { loads: kilos(1, 2, 3), pairs: true },
    bands: ["A", "B"],
  });
  const woman = madeUpPerson({
    born: day("1949-02-01"),
    mass: { load: { value: 59, unit: "kg" }, on: day("2027-03-01") },
    cannot: ["floor"],
    rungs: { calf: "calf-raise-wall" },
  });
  const ask = asker(woman, flat, "2027-03-01");
  const neighbour = asker({ ...woman, cannot: [] }, flat, "2027-03-01");

  test("pf-03 no form of the catalogue that is offered starts or ends on the floor, warm-up and cool-down included", () => {
    const onFloor = [...CATALOGUE.exercises.values()].filter(({ stress }) => (stress.floor ?? 0) >= 2);
    expect(onFloor.length).toBeGreaterThan(5);
    for (const { id } of onFloor) expect(codes(ask(id))).toContain("offer/cannot");
    for (const id of offered(ask)) expect(entry(id).stress.floor ?? 0).toBeLessThanOrEqual(1);
  });

  test.each([
    "sit-to-stand-high",
    "wall-push-up",
    "band-row-seated",
    "calf-raise-wall",
    "step-up-low",
    "wall-side-plank",
  ])("pf-03 %s is offered", (id) => expect(ask(id)).toMatchObject({ ok: true }));

  test("pf-03 her neighbour who can get down has all she has, and besides only forms done on the floor", () => {
    const more = offered(neighbour).filter((id) => !offered(ask).includes(id));
    expect(offered(neighbour)).toEqual(expect.arrayContaining(offered(ask)));
    expect(more).toContain("floor-bridge");
    for (const id of more) expect(codes(ask(id))).toEqual(["offer/cannot"]);
  });
});

describe("pf-05 the surgeon's letter after a hernia repair", () => {
  const gym = madeUpPlace({
    equipment: FULL_ROOM,
    dumbbells: { loads: kilos(2, 4, 5, 6, 8, 10, 11, 12), pairs: true },
    kettlebells: kilos(8, 12, 16),
    stacks: { "leg press": { unit: "kg", pins: [10, 20] }, "chest press machine": { unit: "kg", pins: [5] } },
    bands: ["A"],
  });
  const letter = (value: number, from: string, to: string): Limit => ({
    kind: "load",
    atMost: { value, unit: "lb" },
    applies: "total",
    side: "both",
    from: day(from),
    to: day(to),
    who: "the surgeon",
  });
  const steps = [letter(10, "2027-02-08", "2027-03-08"), letter(25, "2027-03-09", "2027-03-22")];
  const man = madeUpPerson({
    born: day("1980-06-01"),
    mass: { load: { value: 88, unit: "kg" }, on: day("2027-03-01") },
    status: "intermediate",
    limits: steps,
  });
  const on = (date: string, person = man) => asker(person, gym, date);
  const [pair, goblet] = ["dumbbell-rdl", "goblet-squat"];
  const twelve = { value: 12, unit: "kg" } as const;
  const six = { value: 6, unit: "kg" } as const;
  const five = { value: 5, unit: "kg" } as const;

  test("pf-05 on 10 March: 12 kg in one and 2 × 6 kg are over 25 lb, 2 × 5 kg are not", () => {
    const ask = on("2027-03-10");
    expect(codes(ask(goblet, twelve))).toEqual(["offer/over-limit"]);
    expect(codes(ask(pair, six))).toEqual(["offer/over-limit"]);
    expect(ask(pair, five)).toMatchObject({ ok: true, cap: { total: lb(25) } });
  });
  test("pf-05 the same man without the letter may lift all three", () => {
    const ask = on("2027-03-10", { ...man, limits: [] });
    for (const [id, load] of [
      [goblet, twelve],
      [pair, six],
      [pair, five],
    ] as const) {
      expect(ask(id, load)).toMatchObject({ ok: true, cap: {} });
    }
  });
  test("pf-05 a letter that counts each hand lets 2 × 6 kg and 2 × 11 kg through", () => {
    const perHand = man.limits.map((limit) => ({ ...limit, applies: "hand" as const }));
    const ask = on("2027-03-10", { ...man, limits: perHand });
    expect(ask(pair, six)).toMatchObject({ ok: true, cap: { hand: lb(25) } });
    expect(ask(pair, { value: 11, unit: "kg" })).toMatchObject({ ok: true });
    expect(codes(ask(pair, twelve))).toEqual(["offer/over-limit"]);
  });
  test("pf-05 before 8 March the limit is 10 lb: 2 × 2 kg may, 5 kg may not", () => {
    const ask = on("2027-03-08");
    expect(ask(pair, { value: 2, unit: "kg" })).toMatchObject({ ok: true, cap: { total: lb(10) } });
    expect(codes(ask(goblet, five))).toEqual(["offer/over-limit"]);
  });
  test("pf-05 after 22 March nothing opens by itself; a recorded review opens it", () => {
    expect(codes(on("2027-05-01")(goblet, twelve))).toEqual(["offer/over-limit"]);
    expect(clearanceOf(man, day("2027-05-01")).asks.map(({ code }) => code)).toEqual(["offer/ask-limit"]);
    const reviewed = {
      ...man,
      limits: [steps[0]!, { ...steps[1]!, lifted: { on: day("2027-03-24"), who: "the surgeon" } }],
    };
    expect(on("2027-05-01", reviewed)(goblet, twelve)).toMatchObject({ ok: true, cap: {} });
    expect(clearanceOf(reviewed, day("2027-05-01")).asks).toEqual([]);
  });
  test("pf-05 a machine or band whose true load nobody knows is not under the limit", () => {
    for (const id of ["leg-press-mid", "chest-press-machine", "band-row-seated"]) {
      expect(codes(on("2027-03-10")(id))).toEqual(["offer/load-unknown"]);
      expect(on("2027-03-10", { ...man, limits: [] })(id)).toMatchObject({ ok: true });
    }
  });
  test("pf-05 the limit is exact: 25 lb are 11.33980925 kg, so 11.339 kg pass and 11.34 kg do not", () => {
    const ask = on("2027-03-10");
    expect(ask(goblet, { value: 11.339, unit: "kg" })).toMatchObject({ ok: true });
    expect(codes(ask(goblet, { value: 11.34, unit: "kg" }))).toEqual(["offer/over-limit"]);
    expect(lb(25)).toBeLessThan(kg(11.34));
  });
});
