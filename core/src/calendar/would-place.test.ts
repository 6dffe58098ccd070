import { expect, test } from "vitest";
import { day, parseDay } from "../day.ts";
import { everyPlan, smallTask } from "../testing/index.ts";
import { placeSessions } from "./place-sessions.ts";
import type { CalendarTask, TaskWindow } from "./task.ts";
import { wouldPlace } from "./would-place.ts";

const hour = (from: number, to: number): TaskWindow => ({ from: from * 60, to: to * 60, cost: 0 });

function task(
  windows: readonly (readonly TaskWindow[])[],
  minutes: readonly number[],
  said: Partial<CalendarTask> = {},
): CalendarTask {
  const sessions = minutes.map((length, n) => ({ id: "ABCD"[n]!, week: 0, minutes: length, hard: 0 }));
  const plain = { start: day("2027-03-01"), days: 7, weekDays: 7, carry: 0, maxInRow: 3, gapHours: 48 };
  return { ...plain, sessions, windows, ...said };
}

const told = (of: CalendarTask) => {
  const placed = placeSessions(of);
  return placed.dropped.flatMap(({ session }) => wouldPlace(of, placed, session).map(({ code, data }) => [code, data]));
};

test("a session that is longer than every window: shorter, a longer window, or a window on a free day", () => {
  const of = task([[hour(18, 19)], [], [], [], [], [hour(9, 9.5)], []], [70]);
  expect(told(of)).toEqual([
    ["calendar/would-shorter", { need: 70, minutes: 60 }],
    ["calendar/would-longer", { day: "2027-03-01", more: 10 }],
    [
      "calendar/would-window",
      { days: ["2027-03-02", "2027-03-03", "2027-03-04", "2027-03-05", "2027-03-07"], need: 70 },
    ],
  ]);
});

test("a session cut to less than half is another session, and is not spoken of", () => {
  const of = task([[hour(18, 18.5)], [], [], [], [], [], []], [70]);
  expect(told(of).map(([code]) => code)).not.toContain("calendar/would-shorter");
});

test("the rule on days in a row, days after the week, and turns", () => {
  const three = [[hour(18, 19)], [hour(18, 19)], [hour(18, 19)], [], [], [], []];
  expect(told(task(three, [45, 45, 45], { maxInRow: 2 }))).toContainEqual(["calendar/would-row", { most: 3 }]);
  const later = [...three.map((): TaskWindow[] => []), [], [hour(18, 19)], [], [], [], [], []];
  expect(told(task(later, [45], { days: 14 }))).toContainEqual(["calendar/would-carry", { days: 2 }]);
  const turned = task([[hour(18, 18.5)], [hour(18, 19)], [], [], [], [], []], [60, 30]);
  expect(told(turned)).toContainEqual(["calendar/would-after", { after: "B" }]);
});

test("more days after the week are spoken of up to seven in all, and not beyond", () => {
  const empty = Array.from({ length: 7 }, (): TaskWindow[] => []);
  const seventh = task([...empty, ...empty.slice(1), [hour(18, 19)]], [45], { days: 14, carry: 2 });
  expect(told(seventh)).toContainEqual(["calendar/would-carry", { days: 7 }]);
  const eighth = task([...empty, ...empty, [hour(18, 19)], ...empty.slice(1)], [45], { days: 21 });
  for (const carry of [0, 7]) {
    expect(told({ ...eighth, carry }).map(([code]) => code)).not.toContain("calendar/would-carry");
  }
});

test("what a place lacks", () => {
  const hut = [[{ ...hour(18, 19), place: "hut" }], [], [], [], [], [], []];
  const of = task(hut, [45]);
  const lacking = { ...of, sessions: of.sessions.map((session) => ({ ...session, lackedAt: ["hut"] })) };
  expect(placeSessions(lacking).dropped[0]!.reason).toEqual({
    code: "calendar/lacks-kit",
    data: { from: "2027-03-01", to: "2027-03-07", places: ["hut"] },
  });
  expect(told(lacking)).toContainEqual(["calendar/would-kit", { place: "hut" }]);
  expect(told(of)).toEqual([]);
});

test("nothing helps when no single change does: two sessions, one window, and nobody can train on another day", () => {
  const of = task([[hour(18, 19)]], [45, 45], { days: 1, weekDays: 1 });
  expect(told(of)).toEqual([]);
});

test("small tasks: every change that is told does it, with each session that had a day; the shorter session is the longest", () => {
  const seen = new Map<string, number>();
  for (let seed = 1; seed <= 250; seed++) {
    const of = smallTask(seed);
    const placed = placeSessions(of);
    for (const { session: id } of placed.dropped) {
      const week = of.sessions.find((session) => session.id === id)!.week;
      const wanted = new Set([...placed.placements.map(({ session }) => session), id]);
      const sessions = of.sessions.filter((session) => wanted.has(session.id));
      const own = (session: string) => of.sessions.find((one) => one.id === session)!.week === week;
      const standing = placed.placements.filter(({ session }) => !own(session));
      /** Whether trying everything finds a plan with all of them, other weeks as they are. */
      const works = (changed: CalendarTask) =>
        everyPlan(changed).some(
          ({ placements, dropped }) =>
            dropped === 0 &&
            standing.every((at) => placements.some((one) => JSON.stringify(one) === JSON.stringify(at))),
        );
      const base = { ...of, sessions };
      const change = (said: object) => ({
        ...base,
        sessions: sessions.map((s) => (s.id === id ? { ...s, ...said } : s)),
      });
      for (const { code, data } of wouldPlace(of, placed, id)) {
        seen.set(code, (seen.get(code) ?? 0) + 1);
        const at = (text: unknown) => parseDay(String(text))! - of.start;
        const { minutes } = of.sessions.find((session) => session.id === id)!;
        const long = (dayIndex: number) => ({
          ...base,
          windows: base.windows.with(dayIndex, [
            ...base.windows[dayIndex]!,
            ...Array.from({ length: 24 }, (_, n) => ({ from: n * 60, to: Math.min(1440, n * 60 + minutes), cost: 0 })),
          ]),
        });
        if (code === "calendar/would-shorter") {
          expect.soft(works(change({ minutes: data["minutes"] })), `${code}, seed ${seed}`).toBe(true);
          expect.soft(works(change({ minutes: Number(data["minutes"]) + 1 })), `${code}, seed ${seed}`).toBe(false);
        }
        if (code === "calendar/would-longer") {
          const list = base.windows[at(data["day"])]!;
          const longer = list.map((window) => ({ ...window, to: window.to + Number(data["more"]) }));
          expect
            .soft(works({ ...base, windows: base.windows.with(at(data["day"]), longer) }), `${code}, seed ${seed}`)
            .toBe(true);
        }
        if (code === "calendar/would-window")
          for (const one of data["days"] as string[])
            expect.soft(works(long(at(one))), `${code}, seed ${seed}`).toBe(true);
        if (code === "calendar/would-row")
          expect.soft(works({ ...base, maxInRow: Number(data["most"]) }), `${code}, seed ${seed}`).toBe(true);
        if (code === "calendar/would-carry") {
          expect.soft(works({ ...base, carry: Number(data["days"]) }), `${code}, seed ${seed}`).toBe(true);
          expect.soft(works({ ...base, carry: Number(data["days"]) - 1 }), `${code}, seed ${seed}`).toBe(false);
        }
        if (code === "calendar/would-kit")
          expect.soft(works(change({ lackedAt: [] })), `${code}, seed ${seed}`).toBe(true);
      }
    }
  }
  for (const code of ["shorter", "longer", "window", "row", "carry", "before", "after"])
    expect([...seen.keys()]).toContain(`calendar/would-${code}`);
});
