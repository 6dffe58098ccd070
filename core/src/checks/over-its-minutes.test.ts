import { expect, test } from "vitest";
import type { Block, Dose } from "../model/index.ts";
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
import { overItsMinutes } from "./over-its-minutes.ts";
import { lookAt } from "./run/look.ts";

/** One repetition takes a minute, so that doses can be read as minutes. */
const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "minute", name: "Minute", secondsPerRep: 60, muscles: { "front thigh": 1 } }),
  madeUpExercise({ id: "other", name: "Other", secondsPerRep: 60, pattern: "vertical pull", muscles: { lats: 1 } }),
]);
const slot = (first: string, dose: Dose, changes?: readonly { week: number; dose: Dose }[]) =>
  madeUpSlot(first, "squat", dose, changes === undefined ? {} : { changes });
const doc = (minutes: number, ...work: readonly Block[]) => ({
  programme: madeUpProgramme([madeUpSession("a", minutes, work)]),
  catalogue,
});
const AT = ["phases", 0, "sessions", 0, "minutes"];

testCheck(overItsMinutes, {
  fine: {
    "the upper estimate is just within": doc(50, slot("minute", sets(1, reps(40)))),
    "no work": doc(30),
  },
  bad: {
    "the upper estimate is over: warn": {
      doc: doc(49, slot("minute", sets(1, reps(40)))),
      at: [AT],
      data: [{ session: "a", minutes: 49, side: "over", lowS: 2160, typicalS: 2400, highS: 3000, overS: 60, week: 1 }],
      severity: ["warn"],
    },
    "the lower estimate is just within: still warn": {
      doc: doc(36, slot("minute", sets(1, reps(40)))),
      at: [AT],
      data: [{ lowS: 2160 }],
      severity: ["warn"],
    },
    "even the lower estimate is over: stop": {
      doc: doc(35, slot("minute", sets(1, reps(40)))),
      at: [AT],
      data: [{ parts: { work: 2400, rest: 0, warmUp: 0 } }],
      severity: ["stop"],
    },
    "the week that asks for most counts": {
      doc: doc(50, slot("minute", sets(1, reps(10)), [{ week: 2, dose: sets(1, reps(45)) }])),
      at: [AT],
      data: [{ week: 2, typicalS: 2700 }],
    },
    "a person who has fewer minutes than the session": {
      doc: { ...doc(60, slot("minute", sets(1, reps(40)))), person: madeUpPerson({ minutes: 45 }) },
      at: [AT],
      data: [{ minutes: 45, of: "person" }],
    },
    "what had to be taken is said": {
      doc: doc(30, slot("minute", sets(2, reps(15)))),
      at: [AT],
      data: [{ assumed: [{ exercise: "minute", what: "rest" }] }],
    },
    "an exercise that nobody knows: cannot judge": {
      doc: doc(50, slot("minute", sets(1, reps(20))), slot("moonwalk", sets(3, reps(8)))),
      at: [AT],
      data: [{ side: "cannot judge", unknown: ["moonwalk"], typicalS: 1200 }],
      severity: ["note"],
    },
    "already over without the one nobody knows": {
      doc: doc(20, slot("minute", sets(1, reps(20))), slot("moonwalk", sets(3, reps(8)))),
      at: [AT],
      data: [{ side: "over", unknown: ["moonwalk"] }],
    },
  },
});

test("the last remedy gives the session its time, in whole fives", () => {
  const cures = overItsMinutes.run(lookAt(doc(40, slot("minute", sets(1, reps(41))))))[0]?.cures?.() ?? [];
  expect(cures.map((cure) => [cure.id, cure.data])).toEqual([["longer-session", { from: 40, to: 55 }]]);
});

test("a person's own minutes are not the programme's to lengthen", () => {
  const input = { ...doc(60, slot("minute", sets(1, reps(40)))), person: madeUpPerson({ minutes: 45 }) };
  expect(overItsMinutes.run(lookAt(input))[0]?.cures?.()).toEqual([]);
});

test("cuts that fit come before cuts that only help, and each says what is left", () => {
  const input = doc(
    40,
    slot("minute", sets(3, reps(5), { restS: 300 })),
    slot("other", sets(3, reps(5), { restS: 300 })),
  );
  const cures = overItsMinutes.run(lookAt(input))[0]?.cures?.() ?? [];
  expect(
    cures.map(({ id, data, partly, group }) => [
      id,
      data["highS"] ?? null,
      data["overS"] ?? null,
      partly ?? group,
      data["restS"] ?? null,
    ]),
  ).toEqual([
    ["shorten", 2250, 0, "fits", null],
    ["shorten", 1725, 0, "fits", 90],
    ["shorten", 1615, 0, "fits in pairs", 90],
    ["shorten", 2700, 300, true, 90],
    ["shorten", 2475, 75, true, 90],
    ["longer-session", null, null, undefined, null],
  ]);
});

test("a cut names its pairs, and the sets that are fewer of each slot", () => {
  const input = doc(
    40,
    slot("minute", sets(4, reps(5), { restS: 300 })),
    slot("other", sets(4, reps(5), { restS: 300 })),
  );
  const cures = overItsMinutes.run(lookAt(input))[0]?.cures?.() ?? [];
  const cut = cures.map(({ data }) => [data["pairs"], data["fewer"]]);
  expect(cut).toContainEqual([[["Minute", "Other"]], []]);
  expect(cut).toContainEqual([
    [],
    [
      { slot: "minute", name: "Minute", from: 4, to: 3 },
      { slot: "other", name: "Other", from: 4, to: 3 },
    ],
  ]);
});

test("what nobody knows is named as it is written", () => {
  const known = slot("minute", sets(4, reps(5), { restS: 300 }));
  const cures = overItsMinutes.run(lookAt(doc(15, known, slot("moonwalk", sets(4, reps(5))))))[0]!.cures!();
  const fewer = cures.flatMap(({ data }) => (data["fewer"] ?? []) as readonly { readonly name: string }[]);
  expect(fewer.map(({ name }) => name)).toContain("moonwalk");
});

test("no session is made longer than its file takes: 240 minutes", () => {
  const last = (reps: number) =>
    overItsMinutes.run(
      lookAt(
        doc(60, slot("minute", sets(1, { amount: { kind: "reps", span: { from: reps, to: reps } }, eachSide: false }))),
      ),
    )[0]!.cures!();
  expect(last(192).map(({ data }) => data)).toEqual([{ from: 60, to: 240 }]);
  expect(last(193)).toEqual([]);
});

test("of equal weeks the first is told", () => {
  const twice = slot("minute", sets(1, reps(50)), [{ week: 3, dose: sets(1, reps(50)) }]);
  expect(overItsMinutes.run(lookAt(doc(50, twice)))[0]!.data).toMatchObject({ week: 1 });
});
