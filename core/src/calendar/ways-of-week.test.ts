import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { compareLevels, everyPlan, smallTask } from "../testing/index.ts";
import { placeSessions } from "./place-sessions.ts";
import { score } from "./score.ts";
import type { CalendarTask, Placement } from "./task.ts";
import { howGood, otherWay, waysOfWeek } from "./ways-of-week.ts";

const monday = day("2027-03-01");

/** Three sessions that load the same muscle, on evenings from Monday to Saturday, Saturday if need be. */
const task: CalendarTask = {
  start: monday,
  days: 14,
  weekDays: 7,
  sessions: ["A", "B", "C", "D"].map((id, n) => ({ id, week: n < 3 ? 0 : 1, minutes: 45, hard: 1 })),
  windows: Array.from({ length: 14 }, (_, d) =>
    d % 7 < 6 ? [{ from: 1080, to: 1140, cost: d % 7 === 5 ? 2 : 0 }] : [],
  ),
  carry: 0,
  maxInRow: 3,
  gapHours: 48,
};

const daysOf = (placements: readonly Placement[]) =>
  placements.map((one) => `${one.session}${one.day - monday}`).join(" ");

test("the next best weeks, with what they cost more and why", () => {
  const placed = placeSessions(task);
  expect(daysOf(placed.placements)).toBe("A0 B2 C4 D7");
  const { equal, others } = waysOfWeek(task, placed, 0);
  expect(equal).toBe(1);
  const nothing = { window: 0, late: 0, moved: 0, nextDay: 0, close: 0 };
  expect(others.map(({ placements, more }) => [daysOf(placements), more])).toEqual([
    ["A0 B2 C5", { points: 2, parts: { ...nothing, window: 2 } }],
    ["A0 B3 C5", { points: 2, parts: { ...nothing, window: 2 } }],
    ["A1 B3 C5", { points: 2, parts: { ...nothing, window: 2 } }],
  ]);
});

test("another way is told by the sessions that change their day, those that lose it, and the points that come on top", () => {
  const placed = placeSessions(task);
  const { others } = waysOfWeek(task, placed, 0);
  const nothing = { late: 0, moved: 0, nextDay: 0, close: 0 };
  expect(otherWay(placed, 0, others[0]!)).toEqual({
    code: "calendar/other-way",
    data: { week: 1, sessions: [{ session: "C", day: "2027-03-06" }], points: 2, window: 2, ...nothing },
  });
  const two = { ...task, windows: task.windows.map((list, d) => (d % 7 === 0 || d % 7 === 3 ? list : [])) };
  const crowded = placeSessions(two);
  const [first] = waysOfWeek(two, crowded, 0).others;
  expect(otherWay(crowded, 0, first!).data).toMatchObject({
    sessions: [
      { session: "B", day: "2027-03-01" },
      { session: "C", day: "2027-03-04" },
      { session: "A", day: null },
    ],
    points: 0,
  });
});

test("a plan is the only best one, one of so many, or not proven best", () => {
  const placed = placeSessions(task);
  expect(howGood({ ...placed, count: 1 })).toEqual({ code: "calendar/only-plan", data: {} });
  expect(howGood({ ...placed, count: 12 })).toEqual({ code: "calendar/equal-plans", data: { count: 12, more: false } });
  expect(howGood({ ...placed, count: Number.MAX_SAFE_INTEGER }).data).toMatchObject({ more: true });
  const value = { fixed: 0, dropped: 1, close: 3, points: 4 };
  expect(howGood({ ...placed, proven: false, value, bound: { ...value, dropped: 0 } })).toEqual({
    code: "calendar/not-proven",
    data: { dropped: 1, points: 7, leastDropped: 0, leastPoints: 7 },
  });
});

test("a session elsewhere: the best day for it with the other weeks as they are; none where all its days are taken", () => {
  const placed = placeSessions(task);
  const found = waysOfWeek(task, placed, 0).elsewhere.map(({ session, best }) => [
    session,
    best && best.day - monday,
    best?.more.points,
  ]);
  expect(found).toEqual([
    ["A", 1, 2],
    ["B", 3, 2],
    ["C", 5, 2],
  ]);
  const windows = task.windows.map((list, d) => ([0, 2, 4].includes(d % 7) ? list : []));
  const only = { ...task, windows };
  expect(waysOfWeek(only, placeSessions(only), 0).elsewhere).toEqual([
    { session: "A" },
    { session: "B" },
    { session: "C" },
  ]);
});

test("300 small tasks: number of equal ways, next best and elsewhere are those of trying everything", () => {
  let [told, dropping] = [0, 0];
  for (let seed = 1; seed <= 300; seed++) {
    const small = smallTask(seed);
    const placed = placeSessions(small);
    for (const week of new Set(small.sessions.map((session) => session.week))) {
      const own = new Set(small.sessions.filter((session) => session.week === week).map(({ id }) => id));
      const rest = (list: readonly Placement[]) => JSON.stringify(list.filter(({ session }) => !own.has(session)));
      const all = everyPlan(small).filter(({ placements }) => rest(placements) === rest(placed.placements));
      all.sort(compareLevels);
      const [best] = all;
      const got = waysOfWeek(small, placed, week);
      expect.soft(got.equal, `seed ${seed}`).toBe(all.filter((plan) => compareLevels(plan, best!) === 0).length);
      const sign = (list: readonly Placement[]) => daysOf(list.filter(({ session }) => own.has(session)));
      const ways = new Map<string, (typeof all)[number]>();
      for (const plan of all) if (!ways.has(sign(plan.placements))) ways.set(sign(plan.placements), plan);
      const values = [...ways.values()].filter(
        ({ fixed, dropped }) => fixed === best!.fixed && dropped === best!.dropped,
      );
      const mine = got.others.map(({ placements }) => [
        ...placed.placements.filter(({ session }) => !own.has(session)),
        ...placements,
      ]);
      const levels = mine.map(
        (list) =>
          score(
            small,
            list.sort((a, b) => a.day - b.day),
          ).value,
      );
      const expected = values
        .slice(1, 4)
        .map(({ fixed, dropped, close, points }) => ({ fixed, dropped, close, points }));
      expect.soft(levels, `seed ${seed}`).toEqual(expected);
      expect.soft(new Set([sign(placed.placements), ...mine.map(sign)]).size, `seed ${seed}`).toBe(mine.length + 1);
      for (const { session, best: there } of got.elsewhere) {
        const at = placed.placements.find((one) => one.session === session)!.day;
        const other = all.find(
          (plan) =>
            plan.fixed === best!.fixed &&
            plan.dropped === best!.dropped &&
            plan.placements.some((one) => one.session === session && one.day !== at),
        );
        const now = score(small, placed.placements);
        expect.soft(there?.more.points, `seed ${seed}`).toBe(other && score(small, other.placements).cost - now.cost);
      }
      if (mine.length > 0) told++;
      if (mine.length > 0 && best!.dropped > 0) dropping++;
    }
  }
  expect(told).toBeGreaterThan(100);
  expect(dropping, "no week with a session that has no day").toBeGreaterThan(20);
});

test("law: the days of other weeks never change, and what is cheaper comes first", () => {
  const long = { ...task, sessions: task.sessions.map((session, n) => ({ ...session, week: n < 2 ? 0 : 1 })) };
  const placed = placeSessions(long);
  const { others } = waysOfWeek(long, placed, 1, 10);
  expect(others).toHaveLength(10);
  others.forEach(({ placements, more }, n) => {
    expect(placements.every((one) => one.day >= addDays(monday, 7))).toBe(true);
    if (n > 0) expect(more.points).toBeGreaterThanOrEqual(others[n - 1]!.more.points);
  });
});
