import { expect, test } from "vitest";
import type { Block, SetDose, Status } from "../model/index.ts";
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
import { firstDose } from "./first-dose.ts";
import { changed } from "./run/change.ts";
import { lookAt } from "./run/look.ts";

const catalogue = madeUpCatalogue([
  madeUpExercise({ id: "squat", name: "Squat", muscles: { "front thigh": 1, buttocks: 0.5 } }),
  madeUpExercise({ id: "lunge", name: "Lunge", pattern: "single leg", muscles: { "front thigh": 1 } }),
  madeUpExercise({ id: "row", name: "Row", pattern: "horizontal pull", muscles: { lats: 1 } }),
  madeUpExercise({
    id: "lowered",
    name: "Lowered pull-up",
    pattern: "vertical pull",
    muscles: { lats: 1 },
    lowering: true,
  }),
]);
const easy: Partial<SetDose> = { reserve: { from: 3, to: 4 } };
const slot = (first: string, count: number, more: Partial<SetDose> = easy, amount = 10) =>
  madeUpSlot(first, "squat", sets(count, reps(amount, more)));
const doc = (status: Status, ...work: readonly Block[]) => ({
  programme: madeUpProgramme([madeUpSession("a", 45, work), madeUpSession("b", 45, [slot("row", 6, {})])], { status }),
  catalogue,
});
const AT = ["phases", 0, "sessions", 0];

testCheck(firstDose, {
  fine: {
    "two sets a muscle, three in reserve": doc("novice", slot("squat", 2), slot("row", 2)),
    "sets that only help do not count": doc("novice", slot("squat", 2), slot("row", 2)),
    "an intermediate may begin with five": doc("intermediate", slot("squat", 5, {})),
    "ten sets of ten": doc("advanced", slot("squat", 10, {})),
    "a novice's programme for somebody who is none": {
      ...doc("novice", slot("squat", 4, {})),
      person: madeUpPerson({ status: "intermediate" }),
    },
  },
  bad: {
    "three sets for one muscle, from two slots": {
      doc: doc("novice", slot("squat", 2), slot("lunge", 1)),
      at: [AT],
      data: [{ side: "sets", muscles: [{ muscle: "front thigh", sets: 3 }], most: 2 }],
      severity: ["warn"],
    },
    "two in reserve, and none said": {
      doc: doc("novice", slot("squat", 1, { reserve: { from: 2, to: 4 } }), slot("row", 1, {})),
      at: [AT],
      data: [{ side: "reserve", names: ["Squat", "Row"] }],
    },
    "as many as possible leaves none": {
      doc: doc("novice", madeUpSlot("squat", "squat", sets(1, { amount: { kind: "most" }, eachSide: false }))),
      at: [AT],
      data: [{ side: "reserve" }],
    },
    "lowering only": { doc: doc("novice", slot("lowered", 2)), at: [AT], data: [{ side: "lowering" }] },
    "eleven sets, whoever it is": {
      doc: doc("advanced", slot("squat", 11, {}, 5)),
      at: [AT],
      data: [{ side: "far too much", muscles: [{ muscle: "front thigh", sets: 11, reps: 55 }] }],
      severity: ["stop"],
    },
    "a hundred and one repetitions": {
      doc: doc("advanced", madeUpSlot("squat", "squat", sets(1, reps(51))), slot("lunge", 1, {}, 50)),
      at: [AT],
      data: [{ side: "far too much", muscles: [{ reps: 101 }] }],
    },
  },
});

test("only the very first session is judged", () => {
  const input = doc("novice", slot("squat", 2));
  const twice = {
    ...input.programme,
    phases: [...input.programme.phases, { ...input.programme.phases[0]!, key: "two" }],
  };
  expect(firstDose.run(lookAt({ ...input, programme: twice }))).toEqual([]);
});

test("the remedies: two sets, or one where two slots share a muscle; three in reserve", () => {
  const done = (...work: readonly Block[]) => {
    const input = doc("novice", ...work);
    const cures = firstDose.run(lookAt(input))[0]!.cures!();
    return cures.map(
      (cure) => firstDose.run(lookAt({ ...input, programme: changed(input.programme, cure.changes) })).length,
    );
  };
  expect(done(slot("squat", 4))).toEqual([0, 0]);
  expect(done(slot("squat", 3), slot("lunge", 3))).toEqual([1, 0]);
  expect(done({ pair: [slot("squat", 3), slot("row", 3)] })[0]).toBe(0);
  expect(done(slot("squat", 2, { reserve: { from: 1, to: 5 } }))).toEqual([0]);
});

test("the remedies name every slot that loses sets, those of a pair too, and leave later doses alone", () => {
  const later = { ...slot("squat", 4), changes: [{ week: 2, dose: sets(5, reps(8, easy)) }] };
  const input = doc("novice", later, { pair: [slot("lunge", 3), slot("row", 2)] });
  const cures = firstDose.run(lookAt(input))[0]!.cures!();
  expect(cures.map(({ data }) => data["slots"])).toEqual([
    [
      { slot: "squat", name: "Squat", from: 4, to: 2 },
      { slot: "lunge", name: "Lunge", from: 3, to: 2 },
      { slot: "row", name: "Row", from: 2, to: 2 },
    ],
    [
      { slot: "squat", name: "Squat", from: 4, to: 1 },
      { slot: "lunge", name: "Lunge", from: 3, to: 1 },
      { slot: "row", name: "Row", from: 2, to: 1 },
    ],
  ]);
  const after = changed(input.programme, cures[0]!.changes).phases[0]!.sessions[0]!.work[0];
  expect(after).toMatchObject({ changes: [{ week: 2, dose: sets(5, reps(8, easy)) }] });
});

test("more in reserve: only slots that leave too few, at least three, the upper end kept", () => {
  const input = doc("novice", slot("squat", 2, { reserve: { from: 1, to: 5 } }), slot("row", 2));
  const [cure] = firstDose.run(lookAt(input))[0]!.cures!();
  expect(cure).toMatchObject({ id: "more-in-reserve", data: { reserve: 3, slots: 1 } });
  const work = changed(input.programme, cure!.changes).phases[0]!.sessions[0]!.work;
  expect(work[0]).toMatchObject({ dose: { sets: [{ reserve: { from: 3, to: 5 } }, { reserve: { from: 3, to: 5 } }] } });
  expect(work[1]).toBe(input.programme.phases[0]!.sessions[0]!.work[1]);
  const open = madeUpSlot("squat", "squat", sets(1, { amount: { kind: "most" }, eachSide: false }));
  expect(firstDose.run(lookAt(doc("novice", open)))[0]!.cures!()).toEqual([]);
});

test("a hundred repetitions are not too many, and what only helps counts none", () => {
  const found = (...work: readonly Block[]) => firstDose.run(lookAt(doc("advanced", ...work)));
  expect(found(madeUpSlot("squat", "squat", sets(2, reps(50))))).toEqual([]);
  expect(found(madeUpSlot("squat", "squat", sets(2, reps({ from: 50, to: 51 }))))[0]!.data).toMatchObject({
    muscles: [{ muscle: "front thigh", sets: 2, reps: 102 }],
    mostSets: 10,
    mostReps: 100,
  });
});
