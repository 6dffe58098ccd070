import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, day, WEEKDAYS } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import {
  type Caution,
  type Lift,
  OUTCOMES,
  type Person,
  type Plan,
  STATEMENTS,
  STATUSES,
  STRESS_TAGS,
} from "../model/index.ts";
import { planFor } from "../revise/index.ts";
import {
  LOOP_PLACE,
  LOOP_PROGRAMME,
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
import { type Seen, seer } from "./seer.ts";

const on = day("2027-03-01");
const kg = (value: number) => ({ value, unit: "kg" }) as const;
const hut = madeUpPlace({
  id: "hut",
  equipment: { floor: 1, chair: 1, dumbbell: 2 },
  dumbbells: { loads: [kg(4), kg(8)], pairs: true },
  open: WEEKDAYS.slice(0, 3).map((weekday) => ({ day: weekday, from: 600, to: 900 })),
});
const places = [LOOP_PLACE, hut];

/** Two phases of one session, one with a pin's slot in it; short, so that many people can be planned. */
const SHORT = madeUpProgramme([], {
  phases: ["ground", "build"].map((key) =>
    madeUpPhase(
      [
        madeUpSession(`${key}-a`, 40, [
          madeUpSlot("goblet-squat", "squat", sets(2, reps({ from: 8, to: 10 }), { restS: 90 }), {
            slot: `${key}-squat`,
          }),
          madeUpSlot("push-up", "horizontal push", sets(2, reps({ from: 5, to: 8 }), { restS: 60 }), {
            slot: `${key}-push`,
          }),
        ]),
      ],
      { key, title: key, weeks: 2 },
    ),
  ),
});

function planOf(person: Person, programme = SHORT, perWeek?: Seen["perWeek"]): Plan {
  const place = places.find(({ id }) => id === person.place)!;
  const made = { engine: "test", catalogue: "test", state: "test", decisions: "test" };
  const input = { programme, person, place, others: places, catalogue: CATALOGUE, on, made, programmeHash: "test" };
  return planFor(perWeek === undefined ? input : { ...input, perWeek });
}

/** The plan of what is seen, in the name of the person. */
function planSeen({ person, perWeek }: Seen, as: Person, programme = SHORT): Plan {
  const plan = planOf(person, programme, perWeek);
  return { ...plan, id: `${as.id}${plan.id}`, person: as.id };
}

const dayNear = fc.integer({ min: -400, max: 60 }).map((days) => addDays(on, days));
const form = fc.constantFrom(...CATALOGUE.exercises.keys());
const nearForm = fc.constantFrom(
  "goblet-squat",
  "push-up",
  "back-squat",
  "body-squat",
  "wall-push-up",
  "leg-press-mid",
);
const caution = fc
  .tuple(fc.constantFrom(...STATEMENTS), dayNear, fc.integer({ min: 0, max: 90 }), fc.constantFrom("A", "B"))
  .map(([statement, from, days, who]): Caution => ({ statement, from, recheck: addDays(from, days), who }));
const lift = fc
  .tuple(fc.oneof(form, nearForm), fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 60 }), dayNear)
  .map(
    ([exercise, count, load, when]): Lift => ({
      exercise,
      reps: count,
      ...(load === 0 ? {} : { load: kg(load) }),
      on: when,
    }),
  );
const rungs = fc
  .array(fc.constantFrom(...CATALOGUE.ladders), { maxLength: 6 })
  .chain((ladders) =>
    fc.tuple(
      ...ladders.map(({ id, start, steps }) =>
        fc.constantFrom(start, ...steps.map(({ to }) => to)).map((to) => [id, to] as const),
      ),
    ),
  )
  .map((each) => Object.fromEntries(each));
const screening = fc.record(
  {
    outcome: fc.constantFrom(...OUTCOMES),
    on: dayNear,
    until: dayNear,
    by: fc.constantFrom("A", "B"),
    agreed: fc.record({ on: dayNear, who: fc.constantFrom("A", "B") }),
    effort: fc.constantFrom("light", "moderate", "vigorous"),
  } as const,
  { requiredKeys: ["outcome", "on", "until", "by"] },
);
const people = fc.record(
  {
    born: fc.constantFrom(day("1950-02-02"), day("1990-12-31"), day("2009-03-10"), day("2012-06-06")),
    mass: fc.integer({ min: 50, max: 120 }).map((value) => ({ load: kg(value), on })),
    status: fc.constantFrom(...STATUSES),
    units: fc.constantFrom("kg", "lb"),
    place: fc.constantFrom(...places.map(({ id }) => id)),
    windows: fc.subarray([...WEEKDAYS]).map((days) => days.map((each) => ({ day: each, from: 500, to: 640, cost: 1 }))),
    minutes: fc.integer({ min: 10, max: 90 }),
    perWeek: fc.integer({ min: 1, max: 3 }),
    cycle: fc.constantFrom({ length: 8, anchor: day("2027-01-04"), days: [{ day: 2, from: 500, to: 700, cost: 0 }] }),
    rungs,
    lifts: fc.array(lift, { maxLength: 4 }),
    limits: fc.array(
      fc.tuple(dayNear, fc.integer({ min: 0, max: 40 }), fc.constantFrom("A", "B")).map(([from, days, who]) => ({
        kind: "load" as const,
        atMost: kg(10),
        applies: "total" as const,
        side: "both" as const,
        from,
        to: addDays(from, days),
        who,
      })),
      { maxLength: 2 },
    ),
    cautions: fc.array(caution, { maxLength: 3 }),
    cannot: fc.subarray([...STRESS_TAGS], { maxLength: 2 }),
    likes: fc.array(fc.oneof(form, nearForm), { maxLength: 3 }),
    dislikes: fc.array(fc.oneof(form, nearForm), { maxLength: 3 }),
    pins: fc.subarray([
      { slot: "ground-squat", exercise: "leg-press-mid" },
      { slot: "build-push", sets: 4 },
      { slot: "elsewhere", exercise: "back-squat" },
    ]),
    away: fc.constantFrom([], [{ from: on, to: addDays(on, 9) }], [{ from: on, to: addDays(on, 9), waits: true }]),
    screening,
    note: fc.constant("Likes the sea."),
  } as const,
  { requiredKeys: ["born", "status", "place"] },
);
// An optional part is there or it is not.
const somebody = people.map((said) => madeUpPerson({ id: "x", name: "Ann", ...(said as unknown as Partial<Person>) }));

describe("what a programme sees of somebody", () => {
  const see = seer({ programme: SHORT, places, catalogue: CATALOGUE, on });

  test("gives the plan of that very person", () => {
    fc.assert(
      fc.property(somebody, (person) => {
        expect(planSeen(see(person), person)).toEqual(planOf(person));
      }),
      { numRuns: 120, seed: 21 },
    );
  });

  test("seen again is the same", () => {
    fc.assert(
      fc.property(somebody, (person) => {
        const seen = see(person);
        const windows = WEEKDAYS.map((weekday) => ({ day: weekday, from: 0, to: 1440, cost: 0 }));
        fc.pre(seen.perWeek.every((count) => count === 1) && seen.person.cycle === undefined);
        expect(see({ ...seen.person, windows })).toEqual(seen);
      }),
      { numRuns: 300, seed: 22 },
    );
  });
});

describe("people whom a programme cannot tell apart", () => {
  const see = seer({ programme: LOOP_PROGRAMME, places, catalogue: CATALOGUE, on });
  const ann = madeUpPerson({
    windows: WEEKDAYS.map((weekday) => ({ day: weekday, from: 600, to: 800, cost: 0 })),
    minutes: 75,
    lifts: [{ exercise: "back-squat", load: kg(60), reps: 5, on }],
    cautions: [
      { statement: "back", from: addDays(on, -30), recheck: addDays(on, 9), who: "Dr B" },
      { statement: "knee", from: addDays(on, -9), recheck: addDays(on, 60), who: "Dr B" },
    ],
  });
  const alike: readonly (readonly [string, Partial<Person>])[] = [
    ["name, note and programme", { id: "bo", name: "Bo", note: "Tall.", programme: "other" }],
    ["the birthday of a grown-up", { born: day("1955-05-05") }],
    ["hours, where the number of sessions is the same", { windows: ann.windows.slice(2), perWeek: 2 }],
    ["minutes beyond the longest session", { minutes: 120 }],
    ["likes of forms that no slot can think of", { likes: ["rowing-machine"] }],
    ["rungs of ladders that no slot is on", { rungs: { "front-trunk": "forearm-plank" } }],
    [
      "records of forms that no slot can think of",
      { lifts: [...ann.lifts, { exercise: "forearm-plank", holdS: 30, on }] },
    ],
    ["the order of cautions", { cautions: ann.cautions.toReversed() }],
    [
      "who screened, and when",
      { screening: { ...ann.screening!, by: "Else", on: addDays(on, -1), until: addDays(on, 99) } },
    ],
  ];
  test.each(alike)("%s", (_, said) => {
    expect(see({ ...ann, ...said })).toEqual(see(ann));
  });

  const apart: readonly (readonly [string, Partial<Person>])[] = [
    ["a birthday under 18", { born: day("2010-05-05") }],
    ["fewer minutes than the longest session", { minutes: 40 }],
    ["another place", { place: "hut" }],
    ["fewer days", { perWeek: 1 }],
    ["a record of a form that stands in a slot", { lifts: [] }],
    ["a caution less", { cautions: ann.cautions.slice(1) }],
    ["a caution that is due", { cautions: [{ ...ann.cautions[0]!, recheck: on }, ann.cautions[1]!] }],
    ["a screening that has run out", { screening: { ...ann.screening!, until: addDays(on, -1) } }],
    ["another status", { status: "advanced" }],
    ["something that cannot be done", { cannot: ["floor"] }],
    ["a liked form of a slot", { likes: ["goblet-squat"] }],
    ["the coach's hand on a slot", { pins: [{ slot: "row", sets: 2 }] }],
    ["a limit", { limits: [{ kind: "rest", part: "arm", side: "left", from: on, to: addDays(on, 9), who: "Dr B" }] }],
  ];
  test.each(apart)("and whom it can: %s", (_, said) => {
    expect(see({ ...ann, ...said })).not.toEqual(see(ann));
  });
});

test("somebody whose place is not there is no person of these places", () => {
  const see = seer({ programme: SHORT, places: [hut], catalogue: CATALOGUE, on });
  expect(() => see(madeUpPerson({ place: "room" }))).toThrow("somebody trains at a place that is not among the places");
});

describe("the pulse for conditioning", () => {
  const easy = { conditioning: [{ do: "march-in-place", dose: sets(1, timeOf(300)), effort: "easy" as const }] };
  const runs = madeUpProgramme([madeUpSession("a", 40, SHORT.phases[0]!.sessions[0]!.work, easy)]);
  const pulse = { rest: 60, slowed: false, on: day("2027-01-01") };
  const somebody = (said: Partial<Person>) => madeUpPerson({ place: "hut", ...said });
  const seenBy = (programme: typeof runs, person: Person) =>
    seer({ programme, places, catalogue: CATALOGUE, on })(person);

  test("what is seen gives the plan of the person, beats and all", () => {
    for (const said of [
      { pulse },
      { pulse: { ...pulse, highest: 170 } },
      { pulse: { ...pulse, slowed: true } },
      { pulse: { ...pulse, slowed: true, highest: 120 } },
    ]) {
      const person = somebody(said);
      expect(planSeen(seenBy(runs, person), person, runs)).toEqual(planOf(person, runs));
    }
  });

  test("by the equation two ages are two people; with a measured highest, or slowed, they are one", () => {
    const same = (said: Partial<Person>, programme = runs) => {
      const [one, other] = ["1987-03-01", "1970-03-01"].map((born) => somebody({ ...said, born: day(born) }));
      return JSON.stringify(seenBy(programme, one!)) === JSON.stringify(seenBy(programme, other!));
    };
    expect(same({ pulse })).toBe(false);
    expect(same({ pulse: { ...pulse, highest: 170 } })).toBe(true);
    expect(same({ pulse: { ...pulse, slowed: true } })).toBe(true);
    expect(same({ pulse }, SHORT)).toBe(true);
  });
});
