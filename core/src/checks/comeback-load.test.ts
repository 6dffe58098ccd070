import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { Lift, SetDose } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  testCheck,
} from "../testing/index.ts";
import type { Load } from "../units.ts";
import { comebackLoad } from "./comeback-load.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const ON = day("2027-03-01");
const kg = (value: number): Load => ({ value, unit: "kg" });
const lift = (value: number, on: string): Lift => ({ exercise: "bench", load: kg(value), reps: 8, on: day(on) });
const doc = (asked: readonly SetDose[], daysOff = 14, lifts = [lift(60, "2026-12-01"), lift(100, "2027-02-01")]) => ({
  programme: madeUpProgramme([
    madeUpSession("a", 60, [
      madeUpSlot("bench", "horizontal push", { sets: asked }, { changes: [{ week: 2, dose: { sets: [heavy(100)] } }] }),
    ]),
  ]),
  catalogue: madeUpCatalogue([madeUpExercise({ id: "bench", name: "Bench", loadMeaning: "total" })]),
  person: madeUpPerson({ lifts, recent: [{ week: addDays(ON, -daysOff - 7), sets: { chest: 8 } }] }),
  on: ON,
});
const heavy = (value: number) => reps(8, { load: kg(value) });
const AT = [["phases", 0, "sessions", 0, "work", 0, "dose"]];

// After 2–3 weeks off about 90 % of the load: common practice, no source.
testCheck(comebackLoad, {
  fine: {
    "nine tenths": doc([heavy(90)]),
    "all of it after thirteen days": doc([heavy(100)], 13),
    "in a later phase": {
      ...doc([reps(8)]),
      programme: madeUpProgramme([], {
        phases: [
          madeUpPhase([madeUpSession("a", 60, [])]),
          madeUpPhase([madeUpSession("a", 60, [madeUpSlot("bench", "horizontal push", { sets: [heavy(100)] })])], {
            key: "two",
          }),
        ],
      }),
    },
    "a record without a load": doc([heavy(100)], 14, [{ exercise: "bench", reps: 8, on: day("2027-02-01") }]),
    "no load is written": doc([reps(8)]),
    "no record of it": doc([heavy(100)], 14, [{ ...lift(100, "2027-02-01"), exercise: "row" }]),
    "a record of the first day itself is not before it": doc([heavy(100)], 14, [lift(100, "2027-03-01")]),
    "nobody named": { ...doc([heavy(100)]), person: undefined as never },
    "no day": { ...doc([heavy(100)]), on: undefined as never },
  },
  bad: {
    "more, of the last load and not of an older one": {
      doc: doc([heavy(80), heavy(92)]),
      at: AT,
      data: [
        {
          name: "Bench",
          exercise: "bench",
          daysOff: 14,
          percent: 92,
          most: 90,
          asked: { value: 92 },
          before: { value: 100 },
        },
      ],
    },
    "in pounds": {
      doc: doc([reps(8, { load: { value: 220, unit: "lb" } })]),
      at: AT,
      data: [{ percent: 100 }],
    },
  },
});

test("the remedy writes nine tenths, in halves, and leaves lighter sets alone", () => {
  const input = doc([heavy(80), heavy(99)], 14, [lift(97, "2027-02-01")]);
  const [cure] = comebackLoad.run(lookAt(input))[0]!.cures!();
  const after = changed(input.programme, cure!.changes);
  expect(after.phases[0]!.sessions[0]!.work[0]).toMatchObject({ dose: { sets: [{ load: kg(80) }, { load: kg(87) }] } });
  expect(comebackLoad.run(lookAt({ ...input, programme: after }))).toEqual([]);
});

test("in the unit in which it is written, and never over nine tenths", () => {
  const input = doc([reps(8, { load: { value: 225, unit: "lb" } })], 14, [lift(100, "2027-02-01")]);
  const [cure] = comebackLoad.run(lookAt(input))[0]!.cures!();
  // 90 kg are 198.4 lb.
  expect(changed(input.programme, cure!.changes).phases[0]!.sessions[0]!.work[0]).toMatchObject({
    dose: { sets: [{ load: { value: 198, unit: "lb" } }] },
  });
});
