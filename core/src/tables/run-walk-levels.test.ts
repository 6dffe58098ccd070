import { describe, expect, test } from "vitest";
import { printDose, readDose } from "../model/index.ts";
import { nextRun, RUN_WALK_LEVELS, runWalkDose } from "./run-walk-levels.ts";

const { rows } = RUN_WALK_LEVELS;

test("nine levels, each with more running in one go and at least as much in all, none over half an hour", () => {
  expect(rows.map(({ level }) => level)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  rows.slice(1).forEach((row, index) => {
    const before = rows[index]!;
    expect(row.runS).toBeGreaterThan(before.runS);
    expect(row.bouts * row.runS).toBeGreaterThan(before.bouts * before.runS);
  });
  for (const { bouts, runS, walkS } of rows) expect(bouts * (runS + walkS)).toBeLessThanOrEqual(1800);
});

test("what a level asks for is a dose that a programme could write, with a walk between two bouts", () => {
  for (const { level, bouts, runS, walkS } of rows) {
    const dose = runWalkDose(level);
    expect(dose.sets).toHaveLength(bouts);
    expect(dose.restS).toBe(walkS === 0 ? undefined : walkS);
    expect(dose.sets[0]!.amount).toEqual({ kind: "time", span: { from: runS, to: runS } });
    expect(readDose(printDose(dose))).toEqual({ ok: true, value: dose });
  }
  for (const level of [0, 10, 1.5, Number.NaN]) expect(() => runWalkDose(level)).toThrow(RangeError);
});

// Common practice, no source.
describe("what gave out decides", () => {
  test("three good runs lead on, two do not, and the last level is the last", () => {
    expect(nextRun(3, "done", 3, 2)).toEqual({ level: rows[3], how: "as it was" });
    expect(nextRun(3, "done", 2, 2).level.level).toBe(3);
    expect(nextRun(9, "done", 5, 2).level.level).toBe(9);
  });
  test("breath: the same, slower; legs: the same again, however many runs went well before", () => {
    expect(nextRun(4, "breath", 3, 2)).toEqual({ level: rows[3], how: "slower" });
    expect(nextRun(4, "legs", 3, 2)).toEqual({ level: rows[3], how: "as it was" });
  });
  test("a week away takes one level back, two weeks two, never under the first; six days none", () => {
    expect([6, 7, 13, 14, 60].map((days) => nextRun(4, "done", 1, days).level.level)).toEqual([4, 3, 3, 2, 2]);
    expect(nextRun(1, "done", 1, 30).level.level).toBe(1);
    expect(nextRun(4, "done", 3, 7).level.level).toBe(3);
  });
});

describe("cd-05: nine days away after level 3, then level 4, and the shin hurts more while running; the breath was fine", () => {
  test("two levels back, not before walking is free of pain; the days away are not made up", () => {
    const next = nextRun(4, "pain", 0, 0);
    expect([2, 3]).toContain(next.level.level);
    expect(next.how).toBe("not before walking is free of pain");
  });
  test("what should have been run after nine days away: a level less, not the next one", () => {
    expect(nextRun(3, "done", 3, 9).level.level).toBe(2);
  });
  test("neighbour: if breath had been the limit it is the same level, slower", () => {
    expect(nextRun(4, "breath", 0, 0)).toEqual({ level: rows[3], how: "slower" });
  });
});

test("levels, runs and days that are none are refused", () => {
  for (const [level, good, days] of [
    [0, 1, 1],
    [10, 1, 1],
    [2.5, 1, 1],
    [2, -1, 1],
    [2, 1, -1],
    [2, Number.NaN, 1],
    [2, 1, Number.NaN],
  ] as const)
    expect(() => nextRun(level, "done", good, days)).toThrow(RangeError);
});
