import { expect, test } from "vitest";
import type { Phase, Window } from "../model/index.ts";
import {
  madeUpCatalogue,
  madeUpExercise,
  madeUpPerson,
  madeUpPhase,
  madeUpProgramme,
  madeUpSession,
  madeUpSlot,
  reps,
  sets,
  testCheck,
} from "../testing/index.ts";
import { neverHappens } from "./never-happens.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([madeUpExercise({ id: "squat", name: "Squat" })]);
const DAYS = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;
const free = (count: number, perWeek?: number) =>
  madeUpPerson({
    windows: DAYS.slice(0, count).map((day): Window => ({ day, from: 600, to: 660, cost: 0 })),
    ...(perWeek === undefined ? {} : { perWeek }),
  });
/** A phase of so many sessions; each has another dose from these weeks on. */
const doc = (sessions: number, more: Partial<Phase>, changes: readonly number[] = []) => {
  const dose = sets(3, reps(8));
  const slots = Array.from({ length: sessions }, (_, index) =>
    madeUpSlot("squat", "squat", dose, {
      slot: `squat-${index}`,
      ...(changes.length > 0 ? { changes: changes.map((week) => ({ week, dose: sets(4, reps(8)) })) } : {}),
    }),
  );
  const phase = madeUpPhase(
    slots.map((slot, index) => madeUpSession(`s${index}`, 45, [slot])),
    { title: "One", ...more },
  );
  return { programme: madeUpProgramme([], { phases: [phase] }), catalogue };
};

testCheck(neverHappens, {
  fine: {
    "all sessions every week": doc(7, { weeks: 1 }),
    "in turn, all come round": { ...doc(3, { weeks: 2 }), person: free(2) },
    "one light week of two": doc(1, { weeks: 2, light: [2] }),
    "a change in a week in which the session has its turn": { ...doc(2, { weeks: 4 }, [3]), person: free(1) },
    "nobody can train at all: told elsewhere": { ...doc(3, { weeks: 2 }), person: free(0) },
  },
  bad: {
    "only light weeks": {
      doc: doc(1, { weeks: 2, light: [1, 2] }),
      at: [["phases", 0]],
      data: [{ side: "full week", weeks: 2 }],
    },
    "more sessions than days in the only week": {
      doc: doc(9, { weeks: 1 }),
      at: [["phases", 0, "sessions", 7]],
      data: [{ side: "session", sessions: ["Session s7", "Session s8"], perWeek: 7 }],
    },
    "one day a week, three sessions, two weeks": {
      doc: { ...doc(3, { weeks: 2 }), person: free(1) },
      at: [["phases", 0, "sessions", 2]],
      data: [{ sessions: ["Session s2"], perWeek: 1 }],
    },
    "fewer wanted than free": {
      doc: { ...doc(3, { weeks: 2 }), person: free(5, 1) },
      at: [["phases", 0, "sessions", 2]],
      data: [{ perWeek: 1 }],
    },
    "a change in weeks without a turn": {
      doc: { ...doc(2, { weeks: 4 }, [2, 3]), person: free(1) },
      // s0 has weeks 1 and 3, s1 weeks 2 and 4: the change for week 2 alone is nobody's in s0.
      at: [["phases", 0, "sessions", 0, "work", 0, "changes", 0]],
      data: [{ side: "change", slot: "squat-0", fromWeek: 2, last: 2, name: "Squat" }],
    },
  },
});

test("two days a week for three sessions: each week goes on where the last one ended, and so do changes", () => {
  // Turns: a and b in week 1, c and a in week 2, b and c in week 3.
  const found = (changes: readonly number[]) =>
    neverHappens
      .run(lookAt({ ...doc(3, { weeks: 3 }, changes), person: free(2) }))
      .map(({ at, data }) => [at[3], data["fromWeek"], data["last"], data["perWeek"]]);
  expect(found([2])).toEqual([]);
  expect(found([3])).toEqual([[0, 3, 3, 2]]);
  expect(found([2, 3])).toEqual([
    [0, 3, 3, 2],
    [1, 2, 2, 2],
  ]);
});

test("as many days as sessions, and more, leave nothing out; one fewer does", () => {
  const found = (days: number) => neverHappens.run(lookAt({ ...doc(3, { weeks: 1 }), person: free(days) })).length;
  expect([found(3), found(4), found(2)]).toEqual([0, 0, 1]);
});

test("of a session that never has its turn, its changes are not told besides", () => {
  const found = neverHappens.run(lookAt({ ...doc(2, { weeks: 1 }, [1]), person: free(1) }));
  expect(found.map(({ data }) => data["side"])).toEqual(["session"]);
});

test("each light week may be the one that becomes full", () => {
  const cures = neverHappens.run(lookAt(doc(1, { weeks: 3, light: [1, 2, 3] })))[0]!.cures!();
  expect(cures.map(({ data, changes }) => [data["week"], changes[0]!.at])).toEqual(
    [0, 1, 2].map((index) => [index + 1, ["phases", 0, "light", index]]),
  );
});

test("the remedy makes a light week a full one", () => {
  for (const light of [[1], [1, 2]]) {
    const input = doc(1, { weeks: light.length, light });
    const [cure] = neverHappens.run(lookAt(input))[0]!.cures!();
    expect(neverHappens.run(lookAt({ ...input, programme: changed(input.programme, cure!.changes) }))).toEqual([]);
  }
});
