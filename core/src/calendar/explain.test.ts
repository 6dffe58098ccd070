import { expect, test } from "vitest";
import { day } from "../day.ts";
import { explainPlacements } from "./explain.ts";
import { maskOf } from "./muscle-mask.ts";
import { placeSessions } from "./place-sessions.ts";
import type { CalendarTask } from "./task.ts";

const LEGS = maskOf(["front thigh", "buttocks"]);
const CHEST = maskOf(["chest"]);

function task(free: readonly number[], hard: readonly number[], said: Partial<CalendarTask> = {}): CalendarTask {
  return {
    start: day("2027-03-01"),
    days: 7,
    weekDays: 7,
    sessions: hard.map((mask, n) => ({ id: "ABC"[n]!, week: 0, minutes: 45, hard: mask })),
    windows: Array.from({ length: 7 }, (_, d) => (free.includes(d) ? [{ from: 1080, to: 1140, cost: 0 }] : [])),
    carry: 0,
    maxInRow: 7,
    gapHours: 48,
    ...said,
  };
}

const whyOf = (of: CalendarTask) =>
  explainPlacements(of, placeSessions(of)).sessions.map(({ session, why }) => [session, ...why]);
const rowsOf = (of: CalendarTask) => explainPlacements(of, placeSessions(of)).rows;

test("a close pair is told at the later session, with its muscles and hours", () => {
  expect(whyOf(task([0, 1], [LEGS, LEGS | CHEST]))[1]).toEqual([
    "B",
    {
      code: "calendar/close",
      data: { with: "A", day: "2027-03-01", hours: 24, wanted: 48, muscles: ["buttocks", "front thigh"] },
    },
  ]);
});

test("a next-day pair that shares nothing is told as such, and a day between as nothing", () => {
  expect(whyOf(task([0, 1], [LEGS, CHEST]))[1]).toEqual([
    "B",
    { code: "calendar/next-day", data: { with: "A", day: "2027-03-01", hours: 24 } },
  ]);
  expect(whyOf(task([0, 2], [LEGS, CHEST]))[1]).toEqual(["B"]);
});

test("sessions done before the first day are told with no id", () => {
  const before = { inRow: 1, past: [{ daysAgo: 1, start: 1020, hard: LEGS }] };
  expect(whyOf(task([0], [LEGS], { before }))[0]).toContainEqual({
    code: "calendar/close",
    data: { with: null, day: "2027-02-28", hours: 25, wanted: 48, muscles: ["buttocks", "front thigh"] },
  });
  expect(whyOf(task([0], [CHEST], { before }))[0]).toContainEqual({
    code: "calendar/next-day",
    data: { with: null, day: "2027-02-28", hours: 25 },
  });
});

test("the only day, an unwelcome hour and days late are told", () => {
  const windows = Array.from({ length: 14 }, (_, d) => (d === 8 ? [{ from: 360, to: 420, cost: 4 }] : []));
  expect(whyOf(task([], [LEGS], { days: 14, windows, carry: 3 }))[0]).toEqual([
    "A",
    { code: "calendar/only-day", data: {} },
    { code: "calendar/late", data: { days: 2 } },
    { code: "calendar/unwelcome-hour", data: { cost: 4 } },
  ]);
  expect(whyOf(task([0, 1], [LEGS]))[0]).toEqual(["A"]);
});

test("days in a row are told with the free days that could be used instead", () => {
  const data = { from: "2027-03-01", to: "2027-03-03", days: 3, most: 7, others: 0 };
  // A free Friday at an hour that is less welcome than three days in a row.
  const friday = (day: number) => [{ from: 1080, to: 1140, cost: day === 4 ? 4 : 0 }];
  const crowded = task([], [0, 0, 0], {
    windows: [0, 1, 2, 3, 4, 5, 6].map((d) => ([0, 1, 2, 4].includes(d) ? friday(d) : [])),
  });
  expect(rowsOf(task([0, 1, 2], [0, 0, 0]))).toEqual([{ code: "calendar/in-a-row", data }]);
  expect(rowsOf(crowded)).toEqual([{ code: "calendar/in-a-row", data: { ...data, others: 1 } }]);
  expect(rowsOf(task([0, 1], [0, 0]))).toEqual([
    { code: "calendar/in-a-row", data: { ...data, to: "2027-03-02", days: 2 } },
  ]);
  expect(rowsOf(task([0, 2, 4], [0, 0, 0]))).toEqual([]);
});

test("days in a row go on from before the first day", () => {
  const data = { from: "2027-02-27", to: "2027-03-01", days: 3, most: 7, others: 0 };
  expect(rowsOf(task([0], [0], { before: { inRow: 2, past: [] } }))).toEqual([{ code: "calendar/in-a-row", data }]);
});

test("what was dropped is handed on with its reason", () => {
  const of = task([0], [0, 0]);
  const [dropped] = explainPlacements(of, placeSessions(of)).dropped;
  expect(dropped).toMatchObject(placeSessions(of).dropped[0]!);
  expect(dropped!.changes.map(({ code }) => code)).toEqual(["calendar/would-window"]);
});

test("a day of its own is told, and a session that is not where it was announced", () => {
  const of = task([0, 2], [LEGS, LEGS]);
  const [a, b] = of.sessions;
  const [monday, wednesday] = [day("2027-03-01"), day("2027-03-03")];
  const sessions = [
    { ...a!, days: [monday] },
    { ...b!, announced: { day: wednesday, start: 420 } },
  ];
  expect(whyOf({ ...of, sessions })).toEqual([
    ["A", { code: "calendar/own-day", data: {} }],
    ["B", { code: "calendar/not-as-announced", data: { day: "2027-03-03" } }],
  ]);
});
