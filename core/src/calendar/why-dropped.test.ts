import { expect, test } from "vitest";
import { day } from "../day.ts";
import { placeSessions } from "./place-sessions.ts";
import type { CalendarTask, TaskWindow } from "./task.ts";

const hour = (from: number, to: number): TaskWindow => ({ from: from * 60, to: to * 60, cost: 0 });

function task(windows: readonly (readonly TaskWindow[])[], minutes: readonly number[], maxInRow = 7): CalendarTask {
  return {
    start: day("2027-03-01"),
    days: windows.length,
    weekDays: 7,
    sessions: minutes.map((length, n) => ({ id: "ABCD"[n]!, week: 0, minutes: length, hard: 0 })),
    windows,
    carry: 0,
    maxInRow,
    gapHours: 48,
  };
}

const dropped = (of: CalendarTask) => placeSessions(of).dropped.map(({ session, reason }) => [session, reason]);

test("nobody can train in that week", () => {
  const data = { from: "2027-03-01", to: "2027-03-07" };
  expect(dropped(task([[], [], [], [], [], [], []], [45]))).toEqual([["A", { code: "calendar/no-window", data }]]);
});

test("no window is long enough; the longest and what is needed are said", () => {
  const data = { from: "2027-03-01", to: "2027-03-07", need: 45, longest: 40 };
  const short = { from: 600, to: 640, cost: 0 };
  const of = task([[], [short], [], [{ ...short, to: 630 }], [], [], []], [45]);
  expect(dropped(of)).toEqual([["A", { code: "calendar/windows-too-short", data }]]);
});

test("three sessions and two days: the last is dropped, with the sessions and days that prove it", () => {
  const of = task([[hour(18, 19)], [], [hour(18, 19)], [], [], [], []], [45, 45, 45]);
  const data = { sessions: ["A", "B", "C"], days: ["2027-03-01", "2027-03-03"] };
  expect(dropped(of)).toEqual([["C", { code: "calendar/fewer-days", data }]]);
});

test("the proof names only those who need the same days: a long session with one long window", () => {
  const of = task([[hour(18, 19)], [hour(18, 20)], [hour(18, 19)], [], [], [], []], [45, 90, 90]);
  const data = { sessions: ["B", "C"], days: ["2027-03-02"] };
  expect(dropped(of)).toEqual([["C", { code: "calendar/fewer-days", data }]]);
});

test("days in a row: with one more allowed there would be a day", () => {
  const three = [[hour(18, 19)], [hour(18, 19)], [hour(18, 19)], [], [], [], []];
  expect(dropped(task(three, [45, 45, 45], 2))).toEqual([["C", { code: "calendar/rest-day", data: { most: 2 } }]]);
  expect(dropped(task(three, [45, 45, 45], 3))).toEqual([]);
});

test("order: the long session has only the later day, the short one only the earlier", () => {
  const of = task([[hour(18, 18.5)], [hour(18, 19)], [], [], [], [], []], [60, 30]);
  expect(dropped(of)).toEqual([["A", { code: "calendar/order", data: { days: ["2027-03-02"] } }]]);
  const turned = { ...of, sessions: [...of.sessions].reverse() };
  expect(dropped(turned)).toEqual([]);
});

/** Sessions on different fitting days, whatever the order: tried one after another. */
function fitsUnordered(of: CalendarTask, ids: readonly string[], used: ReadonlySet<number> = new Set()): boolean {
  const [id, ...rest] = ids;
  if (id === undefined) return true;
  const { minutes } = of.sessions.find((session) => session.id === id)!;
  return of.windows.some(
    (list, d) =>
      !used.has(d) &&
      list.some(({ from, to }) => to - from >= minutes) &&
      fitsUnordered(of, rest, new Set([...used, d])),
  );
}

/** The same in order and without days of rest. */
function fitsInOrder(of: CalendarTask, ids: readonly string[], from = 0): boolean {
  const [id, ...rest] = ids;
  if (id === undefined) return true;
  const { minutes } = of.sessions.find((session) => session.id === id)!;
  return of.windows.some(
    (list, d) => d >= from && list.some((w) => w.to - w.from >= minutes) && fitsInOrder(of, rest, d + 1),
  );
}

test("400 crowded weeks: every reason holds, and none that comes before it does", () => {
  let state = 7;
  const below = (n: number) => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    return (state >> 8) % n;
  };
  const seen = new Map<string, number>();
  for (let n = 0; n < 400; n++) {
    const windows = Array.from({ length: 7 }, () =>
      below(2) === 0 ? [] : [{ from: 1080, to: 1080 + 30 * (1 + below(3)), cost: 0 }],
    );
    const of = task(
      windows,
      Array.from({ length: 2 + below(3) }, () => 30 * (1 + below(3))),
      1 + below(3),
    );
    const got = placeSessions(of);
    const kept = got.placements.map(({ session }) => session);
    for (const { session, reason } of got.dropped) {
      seen.set(reason.code, (seen.get(reason.code) ?? 0) + 1);
      const ids = of.sessions.map(({ id }) => id).filter((id) => id === session || kept.includes(id));
      const [any, alone] = [windows.flat().length > 0, fitsUnordered(of, [session])];
      const [free, ordered] = [fitsUnordered(of, ids), fitsInOrder(of, ids)];
      const want = !any
        ? "calendar/no-window"
        : !alone
          ? "calendar/windows-too-short"
          : !free
            ? "calendar/fewer-days"
            : ordered
              ? "calendar/rest-day"
              : "calendar/order";
      expect.soft(reason.code, `week ${n}`).toBe(want);
      if (reason.code !== "calendar/fewer-days") continue;
      const { sessions, days } = reason.data as { sessions: string[]; days: string[] };
      expect.soft(sessions.length, `week ${n}`).toBe(days.length + 1);
      for (const id of sessions) {
        const { minutes } = of.sessions.find((one) => one.id === id)!;
        windows.forEach((list, d) => {
          if (list.some((w) => w.to - w.from >= minutes)) expect.soft(days).toContain(`2027-03-0${d + 1}`);
        });
      }
    }
  }
  expect([...seen.keys()].sort()).toEqual([
    "calendar/fewer-days",
    "calendar/no-window",
    "calendar/order",
    "calendar/rest-day",
    "calendar/windows-too-short",
  ]);
});
