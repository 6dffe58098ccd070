import { expect, test } from "vitest";
import { type Day, day, printDay } from "../day.ts";
import { madeUpPerson, madeUpPlace } from "../testing/index.ts";
import { daysCanMend, placeSessions } from "./place-sessions.ts";
import type { CalendarTask } from "./task.ts";
import { weekDaysOf, windowsOf } from "./windows-of.ts";

const monday = day("2027-03-01");
const LEGS = 0b11;
const ARMS = 0b1100;

/** A week of evenings, one window on each day of `free` (0 = Monday), for sessions A, B, C… that load these muscles. */
function week(free: readonly number[], hard: readonly number[], said: Partial<CalendarTask> = {}): CalendarTask {
  const days = said.days ?? 7;
  return {
    start: monday,
    days,
    weekDays: 7,
    sessions: hard.map((mask, n) => ({ id: "ABCDEFG"[n]!, week: 0, minutes: 45, hard: mask })),
    windows: Array.from({ length: days }, (_, d) => (free.includes(d) ? [{ from: 1080, to: 1140, cost: 0 }] : [])),
    carry: 0,
    maxInRow: 7,
    gapHours: 48,
    ...said,
  };
}

const days = (task: CalendarTask): string =>
  placeSessions(task)
    .placements.map(({ session, day: on }) => `${session} ${printDay(on).slice(5)}`)
    .join(", ");

test("sessions keep a day between where they can; those that share no muscle follow each other before an unwelcome hour", () => {
  expect(days(week([0, 1, 2, 3], [LEGS, LEGS]))).toBe("A 03-01, B 03-03");
  expect(days(week([0, 1, 2, 3], [LEGS, ARMS]))).toBe("A 03-01, B 03-03");
  const windows = [0, 1, 2].map((d) => [{ from: 1080, to: 1140, cost: d === 2 ? 2 : 0 }]);
  expect(days(week([], [LEGS, ARMS], { days: 3, windows }))).toBe("A 03-01, B 03-02");
  expect(days(week([], [LEGS, LEGS], { days: 3, windows }))).toBe("A 03-01, B 03-03");
});

test("72 hours wanted: two days between, which needs a third day of memory", () => {
  expect(days(week([0, 1, 2, 3, 4], [LEGS, LEGS], { gapHours: 72 }))).toBe("A 03-01, B 03-04");
  expect(days(week([0, 1, 2, 3, 4], [LEGS, ARMS, LEGS], { gapHours: 96 }))).toBe("A 03-01, B 03-03, C 03-05");
});

test("36 hours wanted: an evening and the morning after next are closer than that", () => {
  const at = (from: number) => [{ from, to: from + 60, cost: 0 }];
  const windows = [at(1110), [], at(360), [], [], [], []];
  expect(placeSessions(week([], [LEGS, LEGS], { windows, gapHours: 36 })).parts.close).toBe(4);
  expect(placeSessions(week([], [LEGS, LEGS], { windows, gapHours: 35 })).parts.close).toBe(0);
});

test("among equal plans the earlier start goes before the earlier session", () => {
  const windows = [
    [
      { from: 1080, to: 1140, cost: 0 },
      { from: 420, to: 450, cost: 0 },
    ],
  ];
  const sessions = [
    { id: "A", week: 0, minutes: 60, hard: 0 },
    { id: "B", week: 0, minutes: 30, hard: 0 },
  ];
  const got = placeSessions(week([], [], { days: 1, windows, sessions }));
  expect(got.placements).toEqual([{ session: "B", day: monday, start: 420 }]);
  expect(got.count).toBe(3);
});

test("exactly the wanted hours are enough, a minute less is not", () => {
  const windows = [[{ from: 600, to: 700, cost: 0 }], [], [{ from: 600, to: 700, cost: 0 }], [], [], [], []];
  expect(placeSessions(week([], [LEGS, LEGS], { windows })).parts.close).toBe(0);
  const earlier = windows.map((list, d) => (d === 2 ? [{ from: 599, to: 700, cost: 0 }] : list));
  expect(placeSessions(week([], [LEGS, LEGS], { windows: earlier })).parts.close).toBe(4);
});

test("a dropped session is never traded for points, however many", () => {
  const task = week([0, 1, 2], [2 ** 20 - 1, 2 ** 20 - 1, 2 ** 20 - 1]);
  expect(placeSessions(task).dropped).toEqual([]);
  expect(placeSessions(task).parts.close).toBe(2 * 20 * 4 * 2);
});

test("what was done before the first day counts for hours and for days in a row", () => {
  const past = [{ daysAgo: 1, start: 1080, hard: LEGS }];
  expect(days(week([0, 1, 2, 3], [LEGS], { before: { inRow: 1, past } }))).toBe("A 03-02");
  expect(days(week([0, 1], [ARMS], { before: { inRow: 1, past } }))).toBe("A 03-02");
  expect(days(week([0], [ARMS], { before: { inRow: 1, past } }))).toBe("A 03-01");
  expect(days(week([0, 1, 2, 3], [ARMS], { before: { inRow: 2, past }, maxInRow: 2 }))).toBe("A 03-02");
  const twice = [...past, { daysAgo: 1, start: 480, hard: ARMS }];
  expect(days(week([0, 1, 2, 3], [ARMS], { before: { inRow: 1, past: twice } }))).toBe("A 03-02");
});

test("carry lets a session follow its week by so many days and no more, and says how late", () => {
  const late = placeSessions(week([8], [LEGS], { days: 14, carry: 2 }));
  expect(late.placements.map((placement) => printDay(placement.day))).toEqual(["2027-03-09"]);
  expect(late.parts.late).toBe(30);
  expect(placeSessions(week([8], [LEGS], { days: 14, carry: 1 })).dropped).toHaveLength(1);
});

test("a plan over New Year and over 29 February keeps its days", () => {
  const person = madeUpPerson({
    windows: (["mon", "wed", "fri"] as const).map((weekday) => ({ day: weekday, from: 1080, to: 1140, cost: 0 })),
  });
  const over = (start: Day, weeks: number) =>
    placeSessions({
      ...week([], [], { days: weeks * 7 }),
      start,
      windows: windowsOf(person, madeUpPlace(), start, weeks * 7),
      sessions: Array.from({ length: weeks * 3 }, (_, n) => ({
        id: `${n}`,
        week: Math.floor(n / 3),
        minutes: 45,
        hard: 1,
      })),
    }).placements.map((placement) => printDay(placement.day));
  expect(over(day("2026-12-28"), 2)).toEqual([
    "2026-12-28",
    "2026-12-30",
    "2027-01-01",
    "2027-01-04",
    "2027-01-06",
    "2027-01-08",
  ]);
  // A task may begin on any weekday: here a week runs from Sunday to Saturday.
  expect(over(day("2028-02-27"), 1)).toEqual(["2028-02-28", "2028-03-01", "2028-03-03"]);
});

test("four days on and four off: sessions fall on the days off, in weeks of eight days", () => {
  const off = [4, 5, 6, 7].map((at) => ({ day: at, from: 600, to: 660, cost: 0 }));
  const person = madeUpPerson({ cycle: { length: 8, anchor: monday, days: off } });
  const task: CalendarTask = {
    ...week([], [], { days: 16 }),
    weekDays: weekDaysOf(person),
    windows: windowsOf(person, madeUpPlace(), monday, 16),
    sessions: [0, 1, 2, 3].map((n) => ({ id: `${n}`, week: Math.floor(n / 2), minutes: 45, hard: LEGS })),
  };
  const got = placeSessions(task);
  expect(got.placements.map((placement) => placement.day - monday)).toEqual([4, 6, 12, 14]);
  expect(got.cost).toBe(0);
});

test("16 weeks of 6 sessions with 3 windows a day and a long memory are placed, and equal plans never overflow", () => {
  const task: CalendarTask = {
    ...week([], [], { days: 112, gapHours: 72, maxInRow: 6 }),
    windows: Array.from({ length: 112 }, () => [420, 720, 1080].map((from) => ({ from, to: from + 60, cost: 0 }))),
    sessions: Array.from({ length: 96 }, (_, n) => ({
      id: `${n}`,
      week: Math.floor(n / 6),
      minutes: 45,
      hard: 1 << (n % 6),
    })),
  };
  const got = placeSessions(task);
  expect(got.placements).toHaveLength(96);
  expect(got.count).toBe(Number.MAX_SAFE_INTEGER);
});

test("days can mend a close pair when another day is free in its week, and cannot when none is", () => {
  expect(daysCanMend(week([0, 1, 3], [LEGS, LEGS]))).toBe(true);
  expect(daysCanMend(week([0, 1], [LEGS, LEGS]))).toBe(false);
  expect(daysCanMend(week([0, 1], [LEGS, ARMS]))).toBe(true);
  // An unwelcome hour is still a way to mend.
  const windows = [0, 1, 2, 3].map((d) => [{ from: 600, to: 660, cost: d === 2 ? 1000 : 0 }]).slice(0, 3);
  const unwelcome = week([], [LEGS, LEGS], { days: 3, windows });
  expect(placeSessions(unwelcome).parts.close).toBeGreaterThan(0);
  expect(daysCanMend(unwelcome)).toBe(true);
  // Each in its own week: a session that could only follow its week does not spoil what days can do for the others.
  const away = week([7, 8, 10], [LEGS, LEGS], { days: 14, carry: 1 });
  const later = { ...away, sessions: away.sessions.map((session, n) => ({ ...session, week: n })) };
  expect(daysCanMend(later)).toBe(true);
});

test("nothing to place is a plan, and no days at all drop everything", () => {
  expect(placeSessions(week([0], []))).toMatchObject({ placements: [], dropped: [], cost: 0, count: 1 });
  const none = placeSessions(week([], [LEGS], { days: 0, windows: [] }));
  expect(none.dropped.map(({ session, reason }) => `${session} ${reason.code}`)).toEqual(["A calendar/no-window"]);
});

test("refuses what is not a task, and says what must hold", () => {
  const good = week([0], [LEGS]);
  const window = good.windows[0]![0]!;
  const session = good.sessions[0]!;
  const bad: Partial<CalendarTask>[] = [
    { days: 6 },
    { start: Number.NaN as Day },
    { weekDays: 0 },
    { carry: -1 },
    { maxInRow: 0 },
    { gapHours: 97 },
    { gapHours: Number.NaN },
    { windows: [[{ ...window, from: -1 }], [], [], [], [], [], []] },
    { windows: [[{ ...window, to: 1441 }], [], [], [], [], [], []] },
    { windows: [[{ ...window, to: window.from }], [], [], [], [], [], []] },
    { windows: [[{ ...window, cost: 0.5 }], [], [], [], [], [], []] },
    { sessions: [{ ...session, minutes: 0 }] },
    { sessions: [{ ...session, hard: 2 ** 20 }] },
    { sessions: [session, session] },
    {
      sessions: [
        { ...session, week: 1 },
        { ...session, id: "B" },
      ],
    },
    { before: { inRow: -1, past: [] } },
    { before: { inRow: 0, past: [{ daysAgo: 0, start: 0, hard: 0 }] } },
  ];
  for (const change of bad)
    expect(() => placeSessions({ ...good, ...change }), JSON.stringify(change)).toThrow(/Cannot place sessions as/);
  expect(placeSessions(good).dropped).toEqual([]);
});
