import type { Day } from "../day.ts";
import { addDays, day } from "../day.ts";
import type { Catalogue, Person, Place, Plan, Programme, SetDose, StaveEvent } from "../model/index.ts";
import { reps, sets } from "./made-up-exercise.ts";
import { madeUpPerson, madeUpPlace } from "./made-up-person.ts";
import { madeUpPhase, madeUpProgramme, madeUpSession, madeUpSlot } from "./made-up-programme.ts";

/** First day of the plans of these tests, a Monday. */
export const PLAN_START: Day = day("2027-03-01");
const DAY_MS = 86_400_000;

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const asked = (from: number, to: number, more: Partial<SetDose> = {}) =>
  sets(3, reps({ from, to }, { reserve: { from: 2, to: 2 }, ...more }), { restS: 90 });

/** Two sessions a week for four weeks: a squat and a row; a press, and a carry that goes up by other ways. */
export const LOOP_PROGRAMME: Programme = madeUpProgramme([], {
  phases: [
    madeUpPhase(
      [
        madeUpSession("a", 60, [
          madeUpSlot("back-squat", "squat", asked(5, 8, { load: kg(60) }), { slot: "squat" }),
          madeUpSlot("one-arm-row", "horizontal pull", asked(8, 10), { slot: "row" }),
        ]),
        madeUpSession("b", 60, [
          madeUpSlot("barbell-overhead-press", "vertical push", asked(5, 8), { slot: "press" }),
          madeUpSlot("goblet-squat", "squat", asked(8, 10), { slot: "goblet" }),
        ]),
      ],
      { key: "base", title: "Base" },
    ),
  ],
});

/** A room with bars, small plates and dumbbells far apart. */
export const LOOP_PLACE: Place = madeUpPlace({
  equipment: { rack: 1, barbell: 1, plates: 1, dumbbell: 2, kettlebell: 1, bench: 1, "adjustable bench": 1, box: 1 },
  bars: [kg(20)],
  plates: [20, 10, 5, 2.5, 1.25].map((value) => ({ load: kg(value), pairs: 2 })),
  dumbbells: { loads: [10, 12.5, 15, 17.5, 20, 25, 30].map(kg), pairs: true },
  kettlebells: [8, 12, 16, 20, 24].map(kg),
});

export const LOOP_PERSON: Person = madeUpPerson({
  id: "ana",
  name: "Ana",
  mass: { load: kg(70), on: day("2027-02-20") },
  minutes: 60,
  windows: (["mon", "thu"] as const).map((weekday) => ({ day: weekday, from: 1080, to: 1200, cost: 1 })),
  rungs: { squat: "back-squat", overhead: "barbell-overhead-press" },
  lifts: [
    { exercise: "back-squat", load: kg(60), reps: 8, reserve: 2, on: day("2027-02-20") },
    { exercise: "one-arm-row", load: kg(15), reps: 10, reserve: 2, on: day("2027-02-20") },
    { exercise: "barbell-overhead-press", load: kg(30), reps: 8, reserve: 2, on: day("2027-02-20") },
    { exercise: "goblet-squat", load: kg(16), reps: 8, reserve: 2, on: day("2027-02-20") },
  ],
  pins: [
    { slot: "squat", exercise: "back-squat" },
    { slot: "row", exercise: "one-arm-row" },
    { slot: "press", exercise: "barbell-overhead-press" },
    { slot: "goblet", exercise: "goblet-squat" },
  ],
});

/** Names contents plainly: good enough to tell them apart in a test. */
export function plainHash(text: string): string {
  let [a, b] = [0x811c9dc5, 0x1b873593];
  for (let at = 0; at < text.length; at++) {
    a = Math.imul(a ^ text.charCodeAt(at), 0x01000193);
    b = Math.imul(b + text.charCodeAt(at), 0x85ebca6b) ^ (b >>> 13);
  }
  return [a, b, a ^ b, Math.imul(a, b)].map((word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}

/** Facts of a plan that begins on PLAN_START, on a day so many days later. */
export function madeUpSituation(catalogue: Catalogue, events: readonly StaveEvent[] = [], daysOn = 0) {
  const revisions = new Map<string, Plan>();
  return {
    programme: LOOP_PROGRAMME,
    programmeHash: "programme",
    person: LOOP_PERSON,
    place: LOOP_PLACE,
    others: [] as readonly Place[],
    catalogue,
    on: PLAN_START,
    today: addDays(PLAN_START, daysOn),
    dayOf: (at: number) => Math.floor(at / DAY_MS) as Day,
    events,
    revisionOf: (id: string) => revisions.get(id),
    revisions,
    engine: "1",
    catalogueHash: "catalogue",
    hash: plainHash,
  };
}

/** Noon of a day, so many days after the start of the plan. */
export function noonOf(daysOn: number): number {
  return (PLAN_START + daysOn) * DAY_MS + DAY_MS / 2;
}
