import { describe, expect, test } from "vitest";
import { type Block, type MuscleShares, slotsOf } from "../../model/index.ts";
import { madeUpCatalogue, madeUpExercise, madeUpSession, madeUpSlot, reps, sets } from "../../testing/index.ts";
import {
  changesTo,
  inPairs,
  type Parts,
  partsOf,
  withOneSetFewer,
  withSetsThatFit,
  withShortRests,
} from "./shorten.ts";

const named = (id: string, muscles: MuscleShares, needs: Parameters<typeof madeUpExercise>[0]["needs"] = []) =>
  madeUpExercise({ id, muscles, needs });
const catalogue = madeUpCatalogue([
  named("press", { chest: 1, triceps: 0.5 }),
  named("dip", { triceps: 1 }),
  named("row", { lats: 1, biceps: 0.5 }),
  named("squat", { "front thigh": 1 }, [["rack"], ["barbell"]]),
  named("pull-down", { lats: 1 }, [["pull-down machine"]]),
]);
const three = (restS: number) => sets(3, reps(8), { restS });
const session = (...work: readonly Block[]) => madeUpSession("a", 45, work);
const slot = (id: string, restS = 120) => madeUpSlot(id, "squat", three(restS));
const named2 = (parts: Parts) => parts.map(({ block }) => slotsOf(block).map(({ first }) => first));
const rests = (parts: Parts) =>
  parts.flatMap(({ block }) =>
    "slot" in block ? [block.dose.restS] : [block.restS, ...slotsOf(block).map((s) => s.dose.restS)],
  );

describe("rests", () => {
  test("over 90 s become 90 s, in pairs too; shorter ones stay", () => {
    const parts = partsOf(session(slot("press"), slot("row", 60), { pair: [slot("dip"), slot("row")], restS: 150 }));
    expect(rests(withShortRests(parts))).toEqual([90, 60, 90, 90, 90]);
  });
  test("in later weeks too; a pair whose own rest is short keeps it", () => {
    const changing = { ...slot("press"), changes: [{ week: 2, dose: three(150) }] };
    const [part] = withShortRests(partsOf(session(changing)));
    expect(part!.block).toMatchObject({ dose: { restS: 90 }, changes: [{ week: 2, dose: { restS: 90 } }] });
    expect(rests(withShortRests(partsOf(session({ pair: [slot("dip"), slot("row")], restS: 60 }))))).toEqual([
      60, 90, 90,
    ]);
  });
  test("a rest that is not said stays unsaid, and 90 s stay 90 s", () => {
    const unsaid = madeUpSlot("press", "squat", sets(3, reps(8)));
    expect(withShortRests(partsOf(session(unsaid)))[0]!.block).toEqual(unsaid);
    const one = session(slot("press", 90));
    const [shorter] = withShortRests(partsOf(one));
    expect(shorter!.block).toEqual(one.work[0]);
  });
  test("from 80 % on a set is heavy, in any set of the dose", () => {
    const at = (percent: number) => madeUpSlot("squat", "squat", { sets: [reps(8), reps(3, { percent })], restS: 240 });
    expect(rests(withShortRests(partsOf(session(at(80)))))).toEqual([240]);
    expect(rests(withShortRests(partsOf(session(at(79)))))).toEqual([90]);
  });
  test("after heavy sets they stay", () => {
    const heavy = madeUpSlot("squat", "squat", sets(3, reps(3, { percent: 85 }), { restS: 240 }));
    expect(rests(withShortRests(partsOf(session(heavy))))).toEqual([240]);
  });
});

describe("sets", () => {
  const count = (parts: Parts) => parts.map(({ block }) => slotsOf(block).map((each) => each.dose.sets.length));
  const four = { ...slot("press"), dose: sets(4, reps(8)) };
  test("one fewer where more than two are asked", () => {
    const parts = partsOf(session(four, slot("row"), { ...slot("dip"), dose: sets(2, reps(8)) }));
    expect(count(withOneSetFewer(parts))).toEqual([[3], [2], [2]]);
  });
  test("one at a time from where most are, the last of equals, until it fits", () => {
    const parts = partsOf(session(slot("press"), slot("row"), four));
    const total = (now: Parts) =>
      count(now)
        .flat()
        .reduce((a, b) => a + b, 0);
    expect(count(withSetsThatFit(parts, (now) => total(now) <= 8))).toEqual([[3], [3], [2]]);
    expect(count(withSetsThatFit(parts, () => false))).toEqual([[2], [2], [2]]);
  });
});

describe("pairs", () => {
  test("of movements that share no muscle that either is for", () => {
    expect(named2(inPairs(partsOf(session(slot("press"), slot("dip"), slot("row"))), catalogue))).toEqual([
      ["press", "row"],
      ["dip"],
    ]);
  });
  test("not of two busy stations, nor of what nobody knows", () => {
    expect(named2(inPairs(partsOf(session(slot("squat"), slot("pull-down"), slot("moonwalk"))), catalogue))).toEqual([
      ["squat"],
      ["pull-down"],
      ["moonwalk"],
    ]);
  });
  test("of one busy station and none, or where another thing would do", () => {
    const leg = [slot("squat"), slot("row")];
    expect(named2(inPairs(partsOf(session(...leg)), catalogue))).toEqual([["squat", "row"]]);
    const either = madeUpCatalogue([
      named("squat", { "front thigh": 1 }, [["rack", "dumbbell"]]),
      named("pull-down", { lats: 1 }, [["pull-down machine"]]),
    ]);
    expect(named2(inPairs(partsOf(session(slot("squat"), slot("pull-down"))), either))).toEqual([
      ["squat", "pull-down"],
    ]);
  });
  test("with the longer of the two rests, 90 s where none is said", () => {
    const restOf = (...slots: readonly Block[]) => rests(inPairs(partsOf(session(...slots)), catalogue))[0];
    expect(restOf(slot("press", 60), slot("row", 75))).toBe(75);
    expect(restOf(slot("press", 75), slot("row", 60))).toBe(75);
    const unsaid = (id: string) => madeUpSlot(id, "squat", sets(3, reps(8)));
    expect(restOf(unsaid("press"), slot("row", 60))).toBe(90);
    expect(restOf(slot("press", 120), unsaid("row"))).toBe(120);
  });
  test("of two that the same muscle helps in: helpers alone do not compete", () => {
    const helping = madeUpCatalogue([
      named("press", { chest: 1, triceps: 0.5 }),
      named("pullover", { lats: 1, triceps: 0.5 }),
    ]);
    expect(named2(inPairs(partsOf(session(slot("press"), slot("pullover"))), helping))).toEqual([
      ["press", "pullover"],
    ]);
  });
  test("each movement once", () => {
    const four = [slot("press"), slot("row"), slot("squat"), slot("dip")];
    expect(named2(inPairs(partsOf(session(...four)), catalogue))).toEqual([
      ["press", "row"],
      ["squat", "dip"],
    ]);
  });
  test("not of unequal sets, in any week", () => {
    const later = { ...slot("row"), changes: [{ week: 2, dose: sets(4, reps(8)) }] };
    expect(named2(inPairs(partsOf(session(slot("press"), later)), catalogue))).toEqual([["press"], ["row"]]);
  });
  test("not of heavy work", () => {
    const heavy = madeUpSlot("press", "squat", sets(3, reps(3, { percent: 85 }), { restS: 120 }));
    expect(named2(inPairs(partsOf(session(heavy, slot("row"))), catalogue))).toEqual([["press"], ["row"]]);
  });
});

test("changes name only what differs, by the positions before", () => {
  const before = session(slot("press", 60), slot("dip", 120), slot("row", 60));
  expect(changesTo(before, partsOf(before), ["s"])).toEqual([]);
  expect(changesTo(before, withShortRests(partsOf(before)), ["s"])).toEqual([
    { op: "set", at: ["s", "work", 1, "dose"], value: three(90) },
  ]);
  expect(changesTo(before, inPairs(partsOf(before), catalogue), ["s"])).toMatchObject([
    { op: "set", at: ["s", "work", 0], value: { restS: 60 } },
    { op: "remove", at: ["s", "work", 2] },
  ]);
});
