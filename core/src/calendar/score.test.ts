import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { maskOf } from "./muscle-mask.ts";
import { score } from "./score.ts";
import type { CalendarTask, Placement, TaskSession } from "./task.ts";

const monday = day("2027-03-01");
const LEGS = maskOf(["front thigh"]);

const task: CalendarTask = {
  start: monday,
  days: 10,
  sessions: ["A", "B", "C"].map((id) => ({ id, week: 0, minutes: 45, hard: LEGS })),
  weekDays: 7,
  windows: Array.from({ length: 10 }, () => [
    { from: 600, to: 700, cost: 1 },
    { from: 600, to: 640, cost: 0 },
    { from: 660, to: 720, cost: 2, place: "pool" },
  ]),
  carry: 3,
  maxInRow: 7,
  gapHours: 48,
  before: { inRow: 0, past: [{ daysAgo: 1, start: 720, hard: LEGS }] },
};

const at = (session: string, days: number, start = 600): Placement => ({
  session,
  day: addDays(monday, days),
  start,
  ...(start === 660 ? { place: "pool" } : {}),
});

test("a pair exactly as far apart as wanted is not close, and one a minute closer is", () => {
  expect(score(task, [at("A", 3), at("B", 5)]).close).toEqual([]);
  expect(score({ ...task, gapHours: 48 + 1 / 60 }, [at("A", 3), at("B", 5)]).close).toHaveLength(1);
});

test("every pair is told with its muscles, minutes and points, also with what was done before", () => {
  const { close, parts, dropped, cost } = score(task, [at("A", 0), at("B", 1, 660)]);
  expect(close).toEqual([
    {
      earlier: undefined,
      earlierDay: addDays(monday, -1),
      later: "A",
      laterDay: monday,
      minutes: 1320,
      muscles: ["front thigh"],
      points: 10,
    },
    {
      earlier: undefined,
      earlierDay: addDays(monday, -1),
      later: "B",
      laterDay: addDays(monday, 1),
      minutes: 2820,
      muscles: ["front thigh"],
      points: 2,
    },
    {
      earlier: "A",
      earlierDay: monday,
      later: "B",
      laterDay: addDays(monday, 1),
      minutes: 1500,
      muscles: ["front thigh"],
      points: 8,
    },
  ]);
  expect(parts).toEqual({ window: 3, late: 0, moved: 0, nextDay: 1, close: 20 });
  expect([dropped, cost]).toEqual([1, 24]);
});

test("levels: hours missing stand apart where they are a must, and a fixed session goes first", () => {
  const plan = [at("A", 0), at("B", 1, 660)];
  expect(score(task, plan).value).toEqual({ fixed: 0, dropped: 1, close: 0, points: 24 });
  expect(score({ ...task, gapIsMust: true }, plan).value).toEqual({ fixed: 0, dropped: 1, close: 20, points: 4 });
  const sessions = task.sessions.map((session) => ({ ...session, fixed: true as const }));
  expect(score({ ...task, sessions }, plan).value).toMatchObject({ fixed: 1, dropped: 1 });
});

test("a session that was announced costs 8 points on another day, at another hour or in another place", () => {
  const moved = (announced: TaskSession["announced"]) =>
    score({ ...task, sessions: [{ ...task.sessions[0]!, announced: announced! }] }, [at("A", 3, 660)]).parts.moved;
  expect(moved({ day: addDays(monday, 3), start: 660, place: "pool" })).toBe(0);
  expect(moved({ day: addDays(monday, 4), start: 660, place: "pool" })).toBe(8);
  expect(moved({ day: addDays(monday, 3), start: 600, place: "pool" })).toBe(8);
  expect(moved({ day: addDays(monday, 3), start: 660 })).toBe(8);
});

test("a window that is too short does not make the start cheaper, and late days are counted after the home week", () => {
  expect(score(task, [at("A", 6)]).parts).toMatchObject({ window: 1, late: 0 });
  expect(score(task, [at("A", 9)]).parts).toMatchObject({ window: 1, late: 45 });
});
