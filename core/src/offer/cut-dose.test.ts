import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { type SetDose, STATEMENTS } from "../model/index.ts";
import { hold, madeUpExercise, madeUpPerson, reps, sets, timeOf } from "../testing/index.ts";
import { clearanceOf } from "./clearance.ts";
import { cutDose, type DoseBounds } from "./cut-dose.ts";
import { doseWords } from "./dose-words.ts";

const lift = madeUpExercise({ id: "lift" });
const still = madeUpExercise({ id: "still", mode: "hold", amounts: "hold" });
const ride = madeUpExercise({ id: "ride", mode: "cyclic", amounts: "time", pattern: "locomotion" });
const reach = madeUpExercise({ id: "reach", pattern: "mobility" });

const BOUNDS: DoseBounds = {
  percent: { value: 70, from: ["pregnant"] },
  reserve: { value: 3, from: ["pregnant", "screening"] },
  holdS: { value: 30, from: ["pregnant"] },
};
const left = (from: number, to = from) => ({ reserve: { from, to } });

function cut(exercise: typeof lift, set: SetDose, bestHoldS?: number) {
  const all = cutDose(exercise, sets(3, set), BOUNDS, bestHoldS === undefined ? {} : { bestHoldS });
  return { set: all.dose.sets[0], notes: all.notes };
}

describe("load and repetitions left", () => {
  test("82 % with 2 left becomes 70 % with 3 left, said once for three sets", () => {
    expect(cut(lift, reps(6, { percent: 82, ...left(2) }))).toEqual({
      set: reps(6, { percent: 70, ...left(3) }),
      notes: [
        { code: "offer/percent-cut", data: { asked: 82, limit: 70, from: ["pregnant"] } },
        { code: "offer/reserve-raised", data: { asked: 2, limit: 3, from: ["pregnant", "screening"] } },
      ],
    });
  });
  test("a dose inside the limits is left alone, and a light one is never made heavier", () => {
    expect(cut(lift, reps(12, { percent: 50, ...left(4, 6) }))).toEqual({
      set: reps(12, { percent: 50, ...left(4, 6) }),
      notes: [],
    });
  });
  test("a dose that stands on the limits is left alone", () => {
    expect(cut(lift, reps(8, { percent: 70, ...left(3) })).notes).toEqual([]);
  });
  test("a range of reserve keeps its upper end where it can", () => {
    expect(cut(lift, reps(8, left(1, 4))).set).toEqual(reps(8, left(3, 4)));
  });
  test("a set that says nothing of reserve gets the limit, and its share stays unwritten", () => {
    expect(cut(lift, reps(8))).toEqual({
      set: reps(8, left(3)),
      notes: [{ code: "offer/reserve-raised", data: { asked: null, limit: 3, from: ["pregnant", "screening"] } }],
    });
  });
  test("as many as possible keeps repetitions in hand", () => {
    const set = cut(lift, { amount: { kind: "most", least: 5 }, eachSide: true }).set;
    expect(set).toEqual({ amount: { kind: "most", least: 5 }, eachSide: true, ...left(3) });
  });
});

describe("holds", () => {
  test("seconds come down to the limit, and of an unknown best the share is said", () => {
    expect(cut(still, hold({ from: 40, to: 60 }))).toEqual({
      set: hold({ from: 30, to: 30 }),
      notes: [
        { code: "offer/hold-cut", data: { asked: 60, limit: 30, from: ["pregnant"] } },
        { code: "offer/hold-short-of-best", data: { limit: 75, from: ["pregnant", "screening"] } },
      ],
    });
  });
  test("a known best of 32 s allows 24", () => {
    expect(cut(still, hold(30), 32).set).toEqual(hold(24));
  });
  test("a share of the best shrinks with the seconds and is at most 75 %", () => {
    expect(cut(still, hold(60, { percent: 90 })).set).toEqual(hold(30, { percent: 45 }));
    expect(cut(still, hold(20, { percent: 90 })).set).toEqual(hold(20, { percent: 75 }));
  });
  test("as long as possible ends at the limit", () => {
    expect(cut(still, { amount: { kind: "most" }, eachSide: false }).set).toEqual(hold(30));
  });
  test("no repetitions left are written beside seconds", () => {
    expect(cut(still, hold(20)).set).toEqual(hold(20));
  });
});

test("hard conditioning becomes steady under a reserve limit, and gets no repetitions left", () => {
  const hard = cutDose(ride, sets(1, timeOf(600)), BOUNDS, { effort: "hard" });
  expect(hard).toMatchObject({ effort: "steady", dose: sets(1, timeOf(600)) });
  expect(hard.notes).toEqual([{ code: "offer/in-sentences", data: { from: ["pregnant", "screening"] } }]);
  expect(cutDose(ride, sets(1, timeOf(600)), {}, { effort: "hard" })).toMatchObject({ effort: "hard", notes: [] });
});

test("range work gets no repetitions left unless the coach wrote some", () => {
  expect(cut(reach, reps(8)).set).toEqual(reps(8));
  expect(cut(reach, reps(8, left(1))).set).toEqual(reps(8, left(3)));
});

test("rest, tempo and everything else asked stay", () => {
  const dose = { ...sets(2, reps(8, { percent: 90, eachSide: true, ...left(1) })), restS: 90 };
  const kept = cutDose(lift, dose, BOUNDS, {}).dose;
  expect(kept.restS).toBe(90);
  expect(kept.sets[0]).toMatchObject({ eachSide: true, amount: dose.sets[0]!.amount });
});

test("no limits, no change", () => {
  const dose = sets(3, reps(5, { percent: 90, ...left(1) }));
  expect(cutDose(lift, dose, {}, {})).toEqual({ dose, notes: [], facts: {} });
});

test("where a statement forbids holding the breath, no set that was cut to it asks for that", () => {
  const asked = fc.record({
    percent: fc.option(fc.integer({ min: 1, max: 100 })),
    left: fc.option(fc.integer({ min: 0, max: 6 })),
    seconds: fc.integer({ min: 1, max: 120 }),
    still: fc.boolean(),
    statement: fc.constantFrom(...STATEMENTS),
  });
  fc.assert(
    fc.property(asked, (a) => {
      const cautions = [{ statement: a.statement, from: day("2027-01-01"), recheck: day("2027-12-01"), who: "them" }];
      const clearance = clearanceOf(madeUpPerson({ cautions }), day("2027-03-01"));
      fc.pre(clearance.noBreathHold.length > 0);
      const said = { ...(a.percent === null ? {} : { percent: a.percent }), ...(a.left === null ? {} : left(a.left)) };
      const exercise = a.still ? still : lift;
      const dose = sets(1, a.still ? hold(a.seconds, said) : reps(8, said));
      const done = cutDose(exercise, dose, clearance, {});
      for (const set of done.dose.sets) {
        const words = doseWords(exercise, set, done.facts);
        expect([...words]).not.toContain("breath");
        expect([...words]).not.toContain("near failure");
        if (!a.still) expect([...words]).not.toContain("heavy");
      }
    }),
  );
});
