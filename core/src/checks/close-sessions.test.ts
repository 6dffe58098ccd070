import { expect, test } from "vitest";
import { day } from "../day.ts";
import type { Block, SetDose, Window } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { closeSessions } from "./close-sessions.ts";
import { changed } from "./run/change.ts";
import type { CheckInput } from "./run/check.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", name: "Squat", muscles: { "front thigh": 1 } }),
  madeUpExercise({ id: "bench", name: "Bench", pattern: "horizontal push", muscles: { chest: 1, triceps: 0.5 } }),
  madeUpExercise({ id: "press-down", name: "Press-down", pattern: "upper isolation", muscles: { triceps: 1 } }),
  madeUpExercise({ id: "calf", name: "Calf", pattern: "lower isolation", muscles: { calf: 1 } }),
]);
const hard: Partial<SetDose> = { reserve: { from: 2, to: 3 } };
/** Sessions by what they do, each in so many sets. */
const week = (...sessions: readonly (readonly [first: string, count: number, more?: Partial<SetDose>])[]) => ({
  programme: madeUpProgramme(
    sessions.map(([first, count, more = hard], index) => {
      const key = "abcdefg"[index]!;
      return madeUpSession(key, 60, [
        madeUpSlot(first, "squat", sets(count, reps(10, more)), { slot: `${first}-${key}` }),
      ]);
    }),
  ),
  catalogue,
});
const on = (input: CheckInput, ...days: readonly Window["day"][]) => ({
  ...input,
  person: madeUpPerson({ windows: days.map((weekday) => ({ day: weekday, from: 600, to: 660, cost: 0 })) }),
});
const AT = (index: number) => ["phases", 0, "sessions", index];

testCheck(closeSessions, {
  fine: {
    "three a week on any days": week(["squat", 3], ["squat", 3], ["squat", 3]),
    "four a week of two kinds": week(["squat", 3], ["bench", 3], ["squat", 3], ["bench", 3]),
    "two sets are not hard": week(["squat", 2], ["squat", 2], ["squat", 2], ["squat", 2]),
    "four in reserve are not hard": week(...Array(4).fill(["squat", 3, { reserve: { from: 4, to: 4 } }])),
    "calves work every day": week(...Array(4).fill(["calf", 3])),
    "exactly 48 h, Monday and Wednesday": on(week(["squat", 3], ["squat", 3]), "mon", "wed"),
    "fewer days than sessions: they go in turn": on(week(["squat", 3], ["squat", 3]), "mon"),
    "a rota has no week": {
      ...week(["squat", 3], ["squat", 3], ["squat", 3], ["squat", 3]),
      person: madeUpPerson({
        cycle: { length: 8, anchor: day("2027-03-01"), days: [{ day: 1, from: 600, to: 660, cost: 0 }] },
      }),
    },
  },
  bad: {
    "four hard sessions of one kind: two stand on days next to each other": {
      doc: week(["squat", 3], ["squat", 3], ["squat", 3], ["squat", 3]),
      // Any two may be the close ones; of equal ways the first is told.
      at: [AT(1)],
      data: [{ hours: 24, wanted: 48, muscles: ["front thigh"], helping: false, days: null }],
      severity: ["warn"],
    },
    "Monday and Tuesday are all there is": {
      doc: on(week(["squat", 3], ["squat", 3]), "mon", "tue"),
      at: [AT(1)],
      data: [{ before: "Session a", title: "Session b", hours: 24, days: 2 }],
      severity: ["warn"],
    },
    "Sunday and the Monday after": {
      doc: on(week(["squat", 3], ["squat", 3]), "mon", "sun"),
      at: [AT(0)],
      data: [{ before: "Session b", hours: 24 }],
    },
    "a muscle that only helps in one of them: a note": {
      doc: on(week(["bench", 3], ["press-down", 3]), "mon", "tue"),
      at: [AT(1)],
      data: [{ muscles: ["triceps"], helping: true }],
      severity: ["note"],
    },
    "sets that say no reserve are hard": {
      doc: on(week(["squat", 3, {}], ["squat", 3, {}]), "mon", "tue"),
      at: [AT(1)],
      data: [{ hours: 24 }],
    },
  },
});

test("the programme's own hours count", () => {
  const three = week(["squat", 3], ["squat", 3], ["squat", 3]);
  const wanting = (gap: number) => ({ ...three, programme: { ...three.programme, weekly: { gap } } });
  expect(closeSessions.run(lookAt(wanting(48)))).toEqual([]);
  expect(closeSessions.run(lookAt(wanting(72))).length).toBeGreaterThan(0);
  expect(closeSessions.run(lookAt(on({ ...wanting(24) }, "mon", "tue", "wed")))).toEqual([]);
});

test("the remedy leaves the later session two sets, and nothing is found any more", () => {
  const input = on(week(["squat", 4], ["squat", 4]), "mon", "tue");
  const [cure] = closeSessions.run(lookAt(input))[0]!.cures!();
  expect(cure!.data["slots"]).toEqual([{ slot: "squat-b", name: "Squat", from: 4, to: 2 }]);
  expect(closeSessions.run(lookAt({ ...input, programme: changed(input.programme, cure!.changes) }))).toEqual([]);
});

test("two slots for one muscle leave one set each", () => {
  const two = madeUpSession("b", 60, [
    madeUpSlot("squat", "squat", sets(3, reps(10, hard)), { slot: "squat-b" }),
    madeUpSlot("squat", "squat", sets(3, reps(10, hard)), { slot: "squat-c" }),
  ]);
  const [one] = week(["squat", 3]).programme.phases[0]!.sessions;
  const input = on({ programme: madeUpProgramme([one!, two]), catalogue }, "mon", "tue");
  const [cure] = closeSessions.run(lookAt(input))[0]!.cures!();
  expect(cure!.data["slots"]).toMatchObject([
    { slot: "squat-b", to: 1 },
    { slot: "squat-c", to: 1 },
  ]);
  expect(closeSessions.run(lookAt({ ...input, programme: changed(input.programme, cure!.changes) }))).toEqual([]);
});

test("no sets are taken from pairs, nor where doses change within the phase", () => {
  const first = madeUpSession("a", 60, [madeUpSlot("squat", "squat", sets(3, reps(10, hard)))]);
  const curesWith = (block: Block) => {
    const programme = madeUpProgramme([first, madeUpSession("b", 60, [block])]);
    return closeSessions.run(lookAt(on({ programme, catalogue }, "mon", "tue")))[0]!.cures!();
  };
  const slot = madeUpSlot("squat", "squat", sets(3, reps(10, hard)), { slot: "squat-b" });
  expect(curesWith(slot)).toHaveLength(1);
  expect(curesWith({ pair: [slot, madeUpSlot("calf", "lower isolation", sets(3, reps(10, hard)))] })).toEqual([]);
  expect(curesWith({ ...slot, changes: [{ week: 2, dose: sets(4, reps(10, hard)) }] })).toEqual([]);
});

test("a slot that has few sets already keeps them", () => {
  const two = madeUpSession("b", 60, [
    madeUpSlot("squat", "squat", sets(2, reps(10, hard)), { slot: "squat-b" }),
    madeUpSlot("squat", "squat", sets(1, reps(10, hard)), { slot: "squat-c" }),
  ]);
  const [one] = week(["squat", 3]).programme.phases[0]!.sessions;
  const input = on({ programme: madeUpProgramme([one!, two]), catalogue }, "mon", "tue");
  const [cure] = closeSessions.run(lookAt(input))[0]!.cures!();
  expect(cure!.data["slots"]).toEqual([{ slot: "squat-b", name: "Squat", from: 2, to: 1 }]);
});

test("one session a week is never too close to itself; light weeks are not judged", () => {
  expect(closeSessions.run(lookAt(on(week(["squat", 5]), "mon")))).toEqual([]);
  const two = on(week(["squat", 3], ["squat", 3]), "mon", "tue");
  const [phase] = two.programme.phases;
  const light = { ...two.programme, phases: [{ ...phase!, weeks: 2, light: [1, 2] }] };
  expect(closeSessions.run(lookAt({ ...two, programme: light }))).toEqual([]);
});
