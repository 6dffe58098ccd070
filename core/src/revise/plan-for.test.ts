import { describe, expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import type { Limit, Person, Place, Plan, Programme, Window } from "../model/index.ts";
import {
  madeUpPerson,
  madeUpPhase,
  madeUpPlace,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
} from "../testing/index.ts";
import { massOf } from "../units.ts";
import { fitTask, type PlanInput, planFor, sessionsPerWeek } from "./plan-for.ts";

const ON = day("2027-03-01");
const kilos = (...values: readonly number[]) => values.map((value) => ({ value, unit: "kg" as const }));
const at = (weekday: Window["day"]): Window => ({ day: weekday, from: 1080, to: 1140, cost: 0 });
const room = madeUpPlace({
  equipment: { floor: 1, wall: 1, chair: 1, counter: 1, bench: 1, dumbbell: 20 },
  dumbbells: { loads: kilos(2, 4, 6, 8, 10, 12, 14, 16), pairs: true },
});
const squat = (key: string) =>
  madeUpSlot(
    "goblet-squat",
    "squat",
    sets(3, reps({ from: 8, to: 10 }, { reserve: { from: 2, to: 2 } }), { restS: 90 }),
    { slot: key, down: 5 },
  );
const press = (key: string) =>
  madeUpSlot(
    "dumbbell-bench-press",
    "horizontal push",
    sets(3, reps({ from: 8, to: 10 }, { reserve: { from: 2, to: 2 } }), { restS: 90 }),
    { slot: key, down: 5 },
  );
const sessions = (name: string) => [
  madeUpSession("a", 40, [squat(`${name}-squat`), press(`${name}-press`)]),
  madeUpSession("b", 40, [squat(`${name}-squat-b`)]),
];
const programme: Programme = madeUpProgramme([], {
  status: "intermediate",
  phases: [
    madeUpPhase(sessions("one"), { key: "one", title: "One", weeks: 4, light: [4] }),
    madeUpPhase(sessions("two"), { key: "two", title: "Two", weeks: 2 }),
  ],
});
const strong = madeUpPerson({
  status: "intermediate",
  mass: { load: { value: 70, unit: "kg" }, on: ON },
  minutes: 45,
  windows: [at("mon"), at("thu")],
  lifts: [
    { exercise: "goblet-squat", load: { value: 16, unit: "kg" }, reps: 12, reserve: 1, on: addDays(ON, -7) },
    { exercise: "dumbbell-bench-press", load: { value: 16, unit: "kg" }, reps: 12, reserve: 1, on: addDays(ON, -7) },
  ],
});

function inputFor(person: Person, more: Partial<PlanInput> = {}): PlanInput {
  return {
    programme,
    person,
    place: room,
    others: [],
    catalogue: CATALOGUE,
    on: ON,
    made: { engine: "test", catalogue: "test", state: "test", decisions: "none" },
    programmeHash: "abc",
    ...more,
  };
}
const plan = (person: Person, more: Partial<PlanInput> = {}) => planFor(inputFor(person, more));

/** The heaviest load of each phase, in kilograms, counting both hands. */
function heaviest({ phases }: Plan): readonly number[] {
  return phases.map(({ weeks }) =>
    Math.max(
      0,
      ...weeks.flatMap(({ sessions: all }) =>
        all.flatMap(({ blocks }) =>
          blocks.flatMap(({ slots }) =>
            slots.map(({ load, exercise }) => {
              const hands = CATALOGUE.exercises.get(exercise)!.loadMeaning === "per hand" ? 2 : 1;
              return load === undefined ? 0 : (hands * massOf(load)) / massOf({ value: 1, unit: "kg" });
            }),
          ),
        ),
      ),
    ),
  );
}
const codes = ({ notes }: Plan) => notes.map(({ code }) => code);

describe("what a plan is", () => {
  const whole = plan(strong);
  test("every phase with all its weeks, light ones marked, every session of the round in each", () => {
    expect(whole.phases.map(({ key, weeks }) => [key, weeks.map(({ week, light }) => [week, light])])).toEqual([
      [
        "one",
        [
          [1, false],
          [2, false],
          [3, false],
          [4, true],
        ],
      ],
      [
        "two",
        [
          [1, false],
          [2, false],
        ],
      ],
    ]);
    for (const { weeks } of whole.phases) {
      for (const week of weeks) expect(week.sessions.map(({ key }) => key)).toEqual(["a", "b"]);
    }
  });
  test("it names whose it is, what it was made from, and that only the first phase is firm", () => {
    expect(whole).toMatchObject({
      id: "somebody/made-up/1",
      person: "somebody",
      programme: "abc",
      made: { engine: "test" },
      firmTo: { phase: "one" },
      notes: [],
    });
  });
  test("each phase says its points and that they are proven the best", () => {
    for (const { score } of whole.phases) {
      expect(score).toMatchObject({ must: 0, proven: true });
      expect(score.bound).toBe(score.want);
    }
  });
});

describe("a limit of 10 kg in all that does not stand on every day", () => {
  const limit = (from: string, to: string, more: Partial<Limit> = {}): Limit => ({
    kind: "load",
    atMost: { value: 10, unit: "kg" },
    applies: "total",
    side: "both",
    from: day(from),
    to: day(to),
    who: "the surgeon",
    ...more,
  });
  const under = (...limits: readonly Limit[]) => plan({ ...strong, limits });

  test("one that begins in week 3 binds the first phase from its first day on, and it is said once", () => {
    const found = under(limit("2027-03-15", "2027-06-01"));
    expect(heaviest(found)).toEqual([10, 10]);
    expect(found.notes).toEqual([
      {
        code: "offer/limit-throughout",
        data: expect.objectContaining({ from: "2027-03-15", first: "2027-03-01", last: "2027-03-28" }),
      },
    ]);
  });

  test("one that is reviewed in week 3 binds the first phase to its last day, and not the second", () => {
    const found = under(limit("2027-02-08", "2027-03-14", { lifted: { on: day("2027-03-15"), who: "the surgeon" } }));
    expect(heaviest(found)[0]).toBe(10);
    expect(heaviest(found)[1]).toBeGreaterThan(10);
    expect(codes(found)).toEqual(["offer/limit-throughout"]);
  });

  test("of two steps within the phase the stricter binds", () => {
    const milder = limit("2027-03-15", "2027-06-01", { atMost: { value: 16, unit: "kg" } });
    expect(heaviest(under(limit("2027-02-08", "2027-03-14"), milder))).toEqual([10, 16]);
  });

  test("neighbours: one that begins with the second phase leaves the first alone; without any, both are free", () => {
    const later = under(limit("2027-03-29", "2027-06-01"));
    expect(heaviest(later)[0]).toBeGreaterThan(10);
    expect(heaviest(later)[1]).toBe(10);
    expect(later.notes).toEqual([]);
    for (const most of heaviest(plan(strong))) expect(most).toBeGreaterThan(10);
  });
});

describe("the days of a phase", () => {
  const days = (person: Person) =>
    [0, 1].map((index) => fitTask(inputFor(person), index)).map(({ on, to }) => [on - ON, to! - ON]);
  test("go on from those of the one before", () =>
    expect(days(strong)).toEqual([
      [0, 27],
      [28, 41],
    ]));
  test("follow the rota of a person who has one", () => {
    const cycle = { length: 10, anchor: ON, days: [{ day: 1, from: 1080, to: 1140, cost: 0 }] };
    expect(days({ ...strong, cycle })).toEqual([
      [0, 39],
      [40, 59],
    ]);
  });
});

describe("sessions a week", () => {
  const perWeek = (person: Person, place: Place = room) =>
    sessionsPerWeek(inputFor(person, { place }), programme.phases[0]!);
  test("no more than the phase has, than the windows leave, than the person wants", () => {
    expect(perWeek({ ...strong, windows: [at("mon"), at("wed"), at("fri")] })).toBe(2);
    expect(perWeek({ ...strong, windows: [at("mon")] })).toBe(1);
    expect(perWeek({ ...strong, perWeek: 1 })).toBe(1);
    expect(perWeek({ ...strong, windows: [] })).toBe(0);
  });
  test("a day on which the place is shut does not count", () => {
    const shut = { ...room, open: [{ day: "mon" as const, from: 600, to: 1320 }] };
    expect(perWeek(strong, shut)).toBe(1);
  });
  test("fewer days than sessions: they go in turn, and no day at all: it is said with the minutes", () => {
    expect(plan({ ...strong, windows: [at("mon")] }).notes).toEqual([
      { code: "plan/in-turn", data: { days: 1, sessions: 2 } },
    ]);
    expect(plan({ ...strong, windows: [] }).notes).toEqual([{ code: "plan/no-day", data: { minutes: 45 } }]);
  });
});

describe("notes on health come first", () => {
  test("without a screening outcome", () => {
    const { screening: _, ...unasked } = strong;
    expect(codes(plan({ ...unasked, windows: [] }))).toEqual(["offer/no-screening", "plan/no-day"]);
  });
  test("a caution whose re-check is due on the first day asks", () => {
    const cautions = [{ statement: "knee" as const, from: addDays(ON, -30), recheck: ON, who: "the person" }];
    expect(codes(plan({ ...strong, cautions }))).toEqual(["offer/ask-caution"]);
    expect(codes(plan({ ...strong, cautions: [{ ...cautions[0]!, recheck: addDays(ON, 1) }] }))).toEqual([]);
  });
  test("a caution that begins in week 2 is said for the phase", () => {
    const cautions = [
      { statement: "knee" as const, from: addDays(ON, 7), recheck: addDays(ON, 90), who: "the person" },
    ];
    expect(codes(plan({ ...strong, cautions }))).toEqual(["offer/caution-throughout"]);
  });
});

test("equal input gives equal plans", () => expect(JSON.stringify(plan(strong))).toBe(JSON.stringify(plan(strong))));
