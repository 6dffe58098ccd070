import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import type { Muscle } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, reps, sets } from "../testing/index.ts";
import { type RecutSlot, type RecutTask, recut } from "./recut.ts";
import { recutSessions } from "./recut-sessions.ts";

const monday = day("2027-03-01");

function slot(key: string, lane: string, hard: Partial<Record<Muscle, number>>, seconds = 300): RecutSlot {
  return { key, lane, hard, seconds };
}

const squat = (key: string) => slot(key, "squat", { "front thigh": 3 });
const press = (key: string) => slot(key, "push", { chest: 3 });

function twoDays(apart: number, said: Partial<RecutTask> = {}): RecutTask {
  return {
    sessions: [
      { key: "A", fixedS: 300, slots: [squat("a1"), press("a2")] },
      { key: "B", fixedS: 300, slots: [squat("b1"), press("b2")] },
    ],
    starts: [
      { day: monday, start: 1080 },
      { day: addDays(monday, apart), start: 1080 },
    ],
    gapHours: 48,
    minutes: 45,
    weekDays: 7,
    otherDays: 0,
    ...said,
  };
}

test("two full-body days in a row become one for squats and one for presses, and nothing is lost", () => {
  const got = recut(twoDays(1));
  expect(got.sessions.map(({ slots }) => [...slots].sort())).toEqual([
    ["a1", "b1"],
    ["a2", "b2"],
  ]);
  expect([got.closeBefore, got.closeAfter, got.minutesOver, got.proven]).toEqual([2, 0, 0, true]);
});

test("exactly 48 hours apart nothing is dealt anew, a minute less it is", () => {
  const kept = recut(twoDays(2));
  expect(kept.sessions.map(({ slots }) => slots)).toEqual([
    ["a1", "a2"],
    ["b1", "b2"],
  ]);
  expect(kept.why.map(({ code }) => code).filter((code) => code.includes("moved"))).toEqual([]);
  const starts = [
    { day: monday, start: 1080 },
    { day: addDays(monday, 2), start: 1079 },
  ];
  expect(recut(twoDays(2, { starts })).closeBefore).toBe(2);
});

test("the week comes again: its last day is held against its first", () => {
  expect(recut(twoDays(6)).closeBefore).toBe(2);
  expect(recut(twoDays(6, { weekDays: 9 })).closeBefore).toBe(0);
});

test("reasons: days as they are, each slot that moved and why, each that stayed", () => {
  const got = recut(twoDays(1));
  const days = { days: 2, from: "2027-03-01", to: "2027-03-02", others: 0 };
  expect(got.why[0]).toEqual({ code: "calendar/days-as-they-are", data: days });
  const told = Object.fromEntries(got.why.slice(1).map(({ code, data }) => [data["slot"], code]));
  expect(told).toEqual({
    a1: "calendar/slot-kept",
    a2: "calendar/slot-moved",
    b1: "calendar/slot-moved",
    b2: "calendar/slot-kept",
  });
  expect(got.why.find(({ data }) => data["slot"] === "a2")?.data).toEqual({
    slot: "a2",
    from: "A",
    to: "B",
    muscles: ["chest"],
    hours: 24,
    wanted: 48,
  });
});

test("minutes give way to recovery, and it is said", () => {
  const sessions = ["A", "B"].map((key) => ({
    key,
    fixedS: 0,
    slots: [slot(`${key}1`, "squat", { "front thigh": 3 }, 1500), slot(`${key}2`, "trunk", {}, 300)],
  }));
  const got = recut(twoDays(1, { sessions, minutes: 40 }));
  // Both squats on one day take 3,000 s, which is 62.5 minutes by the upper estimate.
  expect([got.closeBefore, got.closeAfter, got.minutesOver]).toEqual([1, 0, 23]);
  expect(got.why).toContainEqual({ code: "calendar/over-minutes", data: { session: "A", minutes: 63, limit: 40 } });
});

test("exactly as many minutes as there are is not over them", () => {
  const sessions = ["A", "B"].map((key) => ({
    key,
    fixedS: 0,
    slots: [slot(`${key}1`, "squat", { "front thigh": 3 }, 1500), slot(`${key}2`, "trunk", {}, 300)],
  }));
  const codes = (minutes: number) => recut(twoDays(1, { sessions, minutes })).why.map(({ code }) => code);
  expect(codes(63)).not.toContain("calendar/over-minutes");
  expect(codes(62)).toContain("calendar/over-minutes");
});

test("what no deal can avoid is said: three squats, three days in a row, and no day may be empty", () => {
  const sessions = ["A", "B", "C"].map((key) => ({ key, fixedS: 0, slots: [squat(`${key}1`)] }));
  const starts = [0, 1, 2].map((n) => ({ day: addDays(monday, n), start: 1080 }));
  const got = recut(twoDays(1, { sessions, starts }));
  expect([got.closeBefore, got.closeAfter]).toEqual([2, 2]);
  const keys = { muscles: ["front thigh"], hours: 24, wanted: 48 };
  expect(got.why.filter(({ code }) => code === "calendar/still-close").map(({ data }) => data)).toEqual([
    { earlier: "A", later: "B", ...keys },
    { earlier: "B", later: "C", ...keys },
  ]);
});

test("starts that do not rise, or are too few, are refused", () => {
  expect(() => recut(twoDays(0))).toThrow(RangeError);
  expect(() => recut({ ...twoDays(1), starts: [] })).toThrow(RangeError);
});

test("a fitted session becomes parts that add up to its length, with pairs as one and ramps beside their slot", () => {
  const timed = { setupS: 30, changeS: 10, moveS: 40, secondsPerRep: 4 };
  const catalogue = madeUpCatalogue([
    madeUpExercise({ id: "bike", pattern: "locomotion", amounts: "time" }),
    madeUpExercise({ id: "squat", muscles: { "front thigh": 1 }, ...timed }),
    madeUpExercise({ id: "press", pattern: "horizontal push", muscles: { chest: 1, triceps: 0.5 }, ...timed }),
    madeUpExercise({ id: "row", pattern: "horizontal pull", muscles: { lats: 1 }, ...timed }),
  ]);
  const near = sets(3, reps(8, { reserve: { from: 2, to: 2 } }), { restS: 90 });
  const far = sets(3, reps(8, { reserve: { from: 4, to: 4 } }), { restS: 90 });
  const [got] = recutSessions(
    [
      {
        key: "A",
        warmup: [
          {
            exercise: "bike",
            dose: sets(1, { amount: { kind: "time", span: { from: 300, to: 300 } }, eachSide: false }),
          },
          { exercise: "squat", dose: sets(2, reps(5), { restS: 45 }), for: "s" },
        ],
        blocks: [
          { kind: "straight", slots: [{ key: "s", exercise: "squat", dose: near }] },
          {
            kind: "pair",
            slots: [
              { key: "p", exercise: "press", dose: near },
              { key: "r", exercise: "row", dose: far },
            ],
          },
        ],
        conditioning: [],
      },
    ],
    catalogue,
  );
  expect(got!.slots.map(({ key, lane, hard }) => ({ key, lane, hard }))).toEqual([
    { key: "s", lane: "squat", hard: { "front thigh": 3 } },
    { key: "p", lane: "push", hard: { chest: 3 } },
  ]);
  // Ramp: 2 × 20 s, 45 s rest and two changes of 10 s; set-up 30; 3 × 32 s, 2 × 90 s, 2 × 10 s; the way 40 s.
  expect(got!.slots[0]!.seconds).toBe(40 + 45 + 20 + 30 + 96 + 180 + 20 + 40);
  // The way to the first station belongs to the warm-up, so it is taken off what stays with the session.
  expect(got!.fixedS).toBe(300 - 40);
});
