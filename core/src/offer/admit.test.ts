import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Caution, Exercise, Ladder, Person, Place } from "../model/index.ts";
import { STATEMENTS } from "../model/index.ts";
import {
  FULL_ROOM,
  hold,
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPlace,
  PRINTED_MOVEMENTS,
  reps,
  sets,
  timeOf,
} from "../testing/index.ts";
import { kg } from "../units.ts";
import { type Admission, admitter } from "./admit.ts";
import { clearanceOf } from "./clearance.ts";

const ON = day("2027-03-01");
const LADDER: Ladder = {
  id: "main",
  name: "Main",
  start: "easy",
  steps: [{ from: "easy", to: "hard", branch: "main" }],
};
const easy = madeUpExercise({ id: "easy" });
const hard = madeUpExercise({ id: "hard" });
const plank = madeUpExercise({ id: "plank", mode: "hold", amounts: "hold", hold: { from: 10, to: 60, step: 5 } });
const ride = madeUpExercise({ id: "ride", mode: "cyclic", amounts: "time", pattern: "locomotion" });
const catalogue = madeUpCatalogue([easy, hard, plank, ride], [LADDER]);
const plain = reps(8, { percent: 60, reserve: { from: 4, to: 4 } });

function stating(...statements: Caution["statement"][]): Caution[] {
  return statements.map((statement) => ({
    statement: statement!,
    from: day("2027-01-01"),
    recheck: day("2028-01-01"),
    who: "them",
  }));
}
function door(person: Partial<Person> = {}, place: Partial<Place> = {}, byHand = false) {
  return admitter({
    person: madeUpPerson(person),
    place: madeUpPlace({ equipment: FULL_ROOM, ...place }),
    catalogue,
    on: ON,
    byHand,
  });
}
const codes = (admission: Admission) => (admission.ok ? [] : admission.why.map(({ code }) => code));

test("with nothing in the way the asked dose comes back as it was", () => {
  const dose = { ...sets(3, plain), restS: 90 };
  expect(door()(easy, dose)).toEqual({ ok: true, dose, watch: [], cap: {}, notes: [] });
});

test("every reason is given, not only the first", () => {
  const everything = madeUpExercise({
    id: "hard",
    coachOnly: true,
    armsUsed: true,
    lowering: true,
    mode: "hold",
    amounts: "hold",
    hold: { from: 40, to: 60, step: 5 },
    loadMeaning: "band",
    needs: [["sled"], ["leg press"]],
    stress: { floor: 3, impact: 2 },
  });
  const from = day("2027-01-01");
  const to = day("2028-01-01");
  const order = { side: "both", from, to, who: "Dr A" } as const;
  const person: Partial<Person> = {
    cautions: stating("surgery-leg", "surgery-arm", "larger"),
    cannot: ["floor"],
    limits: [
      { ...order, kind: "rest", part: "leg" },
      { ...order, kind: "movement", movement: "squat" },
      { ...order, kind: "load", atMost: { value: 5, unit: "kg" } },
    ],
  };
  const place: Partial<Place> = {
    equipment: { "leg press": 1 },
    outages: [{ what: "leg press", from: "2027-02-01", to: "2027-03-05" }],
  };
  expect(codes(door(person, place)(everything, sets(3, hold(60))))).toEqual([
    "offer/equipment",
    "offer/out-of-order",
    "offer/coach-only",
    "offer/above-rung",
    "offer/lane-withheld",
    "offer/seated-only",
    "offer/arms-used",
    "offer/lowering-only",
    "offer/ceiling",
    "offer/cannot",
    "offer/ceiling",
    "offer/rest-order",
    "offer/forbidden",
    "offer/load-unknown",
    "offer/hold-range",
  ]);
  expect(codes(door()(everything, sets(3, reps(8)))).at(-1)).toBe("offer/amount");
});

describe("form and dose are judged together", () => {
  const squat = madeUpExercise({ id: "easy", stress: { pressor: 1, sp_axial: 2 } });
  test("a heavy dose is cut to the limit first, then graded: what would pass the ceiling then stands on it", () => {
    const heavy = sets(3, reps(5, { percent: 85, reserve: { from: 1, to: 1 } }));
    expect(door({ cautions: stating("pressure") })(squat, heavy)).toEqual({
      ok: true,
      dose: sets(3, reps(5, { percent: 70, reserve: { from: 2, to: 2 } })),
      watch: ["pressor"],
      cap: { percent: 70 },
      notes: [
        { code: "offer/percent-cut", data: { asked: 85, limit: 70, from: ["pressure"] } },
        { code: "offer/reserve-raised", data: { asked: 1, limit: 2, from: ["pressure"] } },
      ],
    });
  });
  test("a ceiling without dose limits refuses the heavy dose and lets the middle one pass", () => {
    const own: Caution = {
      tag: "pressor",
      ceiling: 1,
      from: day("2027-01-01"),
      recheck: day("2028-01-01"),
      who: "Dr A",
    };
    const ask = door({ cautions: [own] });
    expect(codes(ask(squat, sets(3, reps(5, { percent: 85, reserve: { from: 2, to: 2 } }))))).toEqual([
      "offer/ceiling",
    ]);
    expect(ask(squat, sets(3, plain))).toMatchObject({ ok: true, watch: ["pressor"] });
  });
  test("hard conditioning comes back steady", () => {
    const asked = sets(1, timeOf(600));
    expect(door({ cautions: stating("pressure") })(ride, asked, "hard")).toMatchObject({ ok: true, effort: "steady" });
    expect(door()(ride, asked, "hard")).toMatchObject({ ok: true, effort: "hard" });
    expect(door()(ride, asked)).not.toHaveProperty("effort");
  });
  test("a hold that its limit cuts below its floor is refused", () => {
    const long = madeUpExercise({ ...plank, hold: { from: 15, to: 60, step: 5 } });
    expect(codes(door({ cautions: stating("flare") })(long, sets(2, hold(20))))).toEqual(["offer/hold-range"]);
    expect(door({ cautions: stating("flare") })(plank, sets(2, hold(20)))).toMatchObject({
      ok: true,
      dose: sets(2, hold(10)),
    });
  });
  test("the best hold is the longest of the latest day", () => {
    const held = (holdS: number, on: string) => ({ exercise: "plank", holdS, on: day(on) });
    const lifts = [
      held(60, "2026-12-01"),
      held(20, "2027-02-01"),
      held(16, "2027-02-01"),
      { ...held(8, "2027-02-20"), exercise: "easy" },
    ];
    const cut = door({ lifts, cautions: stating("pressure") })(plank, sets(1, hold(20)));
    expect(cut).toMatchObject({ ok: true, dose: sets(1, hold(15)) });
  });
});

describe("the coach's own hand", () => {
  const only = madeUpExercise({ id: "hard", coachOnly: true, stress: { floor: 3 } });
  test("makes notes of what only keeps a form from being offered", () => {
    expect(door({}, {}, true)(only, sets(1, plain))).toMatchObject({
      ok: true,
      notes: [
        { code: "offer/coach-only", data: {} },
        { code: "offer/above-rung", data: { ladder: "main", stands: "easy", assessed: false } },
      ],
    });
  });
  test("passes no limit", () => {
    expect(codes(door({ cannot: ["floor"] }, {}, true)(only, sets(1, plain)))).toEqual(["offer/cannot"]);
    expect(
      codes(door({}, { equipment: {} }, true)(madeUpExercise({ id: "x", needs: [["rack"]] }), sets(1, plain))),
    ).toEqual(["offer/equipment"]);
  });
});

test("body mass that nobody knows is a note, where the form moves a share of it", () => {
  const push = madeUpExercise({ id: "easy", bodyShare: { share: 0.64, source: "ebben2011" } });
  expect(door()(push, sets(1, plain))).toMatchObject({ notes: [{ code: "offer/body-mass-unknown", data: {} }] });
  const mass = { load: { value: 70, unit: "kg" }, on: ON } as const;
  expect(door({ mass })(push, sets(1, plain))).toMatchObject({ notes: [] });
});

test("side, cap and notes of the written orders come along", () => {
  const press = madeUpExercise({
    id: "easy",
    hands: "one",
    limb: "one arm",
    eachSide: true,
    loadMeaning: "one implement",
  });
  const order = { from: day("2027-02-01"), to: day("2027-04-01"), who: "Dr A" };
  const limits: Person["limits"] = [
    { ...order, kind: "rest", part: "arm", side: "left" },
    { ...order, kind: "load", atMost: { value: 4, unit: "kg" }, side: "both" },
  ];
  expect(door({ limits })(press, sets(1, plain))).toMatchObject({
    ok: true,
    side: "right",
    cap: { total: kg(4) },
    notes: [{ code: "offer/one-side" }],
  });
});

test("a clearance that is already known is used as it stands", () => {
  const person = madeUpPerson({ cautions: stating("larger") });
  const known = clearanceOf(madeUpPerson(), ON);
  const lying = madeUpExercise({ id: "easy", stress: { floor: 3 } });
  const context = { person, place: madeUpPlace(), catalogue, on: ON };
  expect(admitter(context)(lying, sets(1, plain)).ok).toBe(false);
  expect(admitter({ ...context, clearance: known })(lying, sets(1, plain)).ok).toBe(true);
});

const ASKED = fc.record({
  percent: fc.integer({ min: 30, max: 100 }),
  left: fc.integer({ min: 0, max: 6 }),
  seconds: fc.integer({ min: 5, max: 90 }),
});
function doseOf(exercise: Exercise, { percent, left, seconds }: { percent: number; left: number; seconds: number }) {
  if (exercise.amounts === "hold")
    return sets(2, hold(Math.min(exercise.hold!.to, Math.max(exercise.hold!.from, seconds))));
  return exercise.amounts === "time"
    ? sets(1, timeOf(300))
    : sets(3, reps(8, { percent, reserve: { from: left, to: left } }));
}

test("what two statements let through together, each lets through alone, at the same dose", () => {
  const movement = fc.constantFrom(...PRINTED_MOVEMENTS.filter(({ needs }) => needs.length === 0));
  const statement = fc.constantFrom(...STATEMENTS);
  fc.assert(
    fc.property(movement, statement, statement, ASKED, (exercise, one, other, asked) => {
      const both = door({ cautions: stating(one, other) }, {}, true)(exercise, doseOf(exercise, asked), "hard");
      const turned = door({ cautions: stating(other, one) }, {}, true)(exercise, doseOf(exercise, asked), "hard");
      expect(turned).toEqual(both);
      if (!both.ok) return;
      for (const each of [one, other]) {
        const alone = door({ cautions: stating(each) }, {}, true)(exercise, both.dose, both.effort);
        expect(alone).toMatchObject({ ok: true, dose: both.dose });
      }
    }),
    { numRuns: 3000 },
  );
});

test("no admission ever asks for more than was asked", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...PRINTED_MOVEMENTS),
      fc.constantFrom(...STATEMENTS),
      ASKED,
      (exercise, statement, asked) => {
        const dose = doseOf(exercise, asked);
        const admission = door({ cautions: stating(statement) }, {}, true)(exercise, dose);
        if (!admission.ok) return;
        for (const [index, set] of admission.dose.sets.entries()) {
          const before = dose.sets[index]!;
          expect(set.percent ?? 0).toBeLessThanOrEqual(before.percent ?? 0);
          expect(set.reserve?.from ?? 0).toBeGreaterThanOrEqual(before.reserve?.from ?? 0);
          if (set.amount.kind === "hold" && before.amount.kind === "hold") {
            expect(set.amount.span.to).toBeLessThanOrEqual(before.amount.span.to);
          }
        }
      },
    ),
  );
});
