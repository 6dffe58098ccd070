import type { PlanSession, PlanSlot } from "@stave/core/model";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type LaneName, placeWeek } from "./place-week.ts";

const slot = (exercise: string): PlanSlot => ({ key: exercise, exercise, dose: { sets: [] }, why: [], offer: [] });
const session = (...blocks: readonly (readonly string[])[]): PlanSession => ({
  key: "a",
  title: "A",
  warmup: [],
  blocks: blocks.map((slots) => ({ kind: slots.length > 1 ? "pair" : "straight", slots: slots.map(slot) })),
  conditioning: [],
  open: [],
  minutes: { low: 40, high: 45 },
});
/** Exercises are called by their lane, with a number behind where there are several. */
const laneOf = (exercise: string) => exercise.replace(/ \d$/, "") as LaneName;

test("an empty lane is a gap, not nothing", () => {
  const week = placeWeek([session(["squat"]), session(["hinge"])], laneOf);
  expect(week.lanes.map(({ lane }) => lane)).toEqual([
    "squat",
    "hinge",
    "single leg",
    "push",
    "pull",
    "trunk",
    "carry or conditioning",
  ]);
  expect(week.sessions[0]!.gaps.map(({ lane }) => lane)).toContain("hinge");
  expect(week.sessions[1]!.gaps.map(({ lane }) => lane)).not.toContain("hinge");
});

test("order is that of the session, pairs are in turn, two in a lane stand below each other", () => {
  const week = placeWeek([session(["push 1", "pull"], ["push 2"]), session(["push"])], laneOf);
  const [first, second] = week.sessions;
  expect(first!.slots.map(({ order, inTurn, row, rows }) => [order, inTurn, row, rows])).toEqual([
    [1, true, 3, 1],
    [2, true, 5, 1],
    [3, false, 4, 1],
  ]);
  expect(second!.slots[0]).toMatchObject({ row: 3, rows: 2 });
});

test("every lane of every session is filled once from its first to its last row, whatever the week holds", () => {
  const names = fc.constantFrom("squat", "hinge", "push", "pull", "trunk", "other");
  const sessions = fc.array(fc.array(fc.array(names, { minLength: 1, maxLength: 3 }), { maxLength: 4 }), {
    maxLength: 4,
  });
  fc.assert(
    fc.property(sessions, (week) => {
      const placed = placeWeek(
        week.map((blocks) => session(...blocks)),
        laneOf,
      );
      const height = placed.lanes.reduce((sum, { rows }) => sum + rows, 0);
      for (const { slots, gaps } of placed.sessions) {
        const rows = [...slots, ...gaps].flatMap(({ row, rows }) => Array.from({ length: rows }, (_, at) => row + at));
        expect(rows.sort((a, b) => a - b)).toEqual(Array.from({ length: height }, (_, at) => at));
      }
    }),
  );
});
