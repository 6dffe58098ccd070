import type { CalendarTask, TaskSession, TaskWindow } from "@stave/core/calendar";
import { addDays, type Day, day } from "@stave/core/day";

/** Seeded numbers from 0 to below 1: a 32-bit linear congruence, high bits first. */
function numbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** One week with four sessions for somebody who has a few windows. */
export function weekOfFour(seed: number): CalendarTask {
  const next = numbers(seed);
  const whole = (most: number) => Math.floor(next() * most);
  const windows = Array.from({ length: 7 }, (): readonly TaskWindow[] =>
    next() < 0.25 ? [] : [{ from: 360 + 30 * whole(28), to: 1320, cost: whole(5) }],
  );
  const sessions = Array.from({ length: 4 }, (_, index) => ({
    id: `s${index}`,
    week: 0,
    minutes: 45,
    hard: whole(2 ** 6),
  }));
  return { start: day("2027-01-11"), days: 7, sessions, weekDays: 7, windows, carry: 0, maxInRow: 3, gapHours: 48 };
}

/**
 * Sixteen weeks with six sessions each: three kinds of sessions in turn, some of which share a muscle more; one or two
 * windows on most days; sessions may follow their week by two days.
 */
export function sixteenWeeksOfSix(seed: number): CalendarTask {
  const next = numbers(seed * 104_729);
  const whole = (most: number) => Math.floor(next() * most);
  const days = 16 * 7;
  const windows = Array.from({ length: days }, (): readonly TaskWindow[] =>
    next() < 0.1
      ? []
      : Array.from({ length: 1 + whole(2) }, () => ({ from: 360 + 30 * whole(28), to: 1320, cost: whole(5) })),
  );
  const sessions = Array.from({ length: 96 }, (_, index) => ({
    id: `s${index}`,
    week: Math.floor(index / 6),
    minutes: 45,
    hard: (1 << (index % 3)) | (next() < 0.3 ? 1 << (3 + whole(3)) : 0),
  }));
  return { start: day("2027-01-11"), days, sessions, weekDays: 7, windows, carry: 2, maxInRow: 6, gapHours: 48 };
}

/** A task of one or two weeks, of seven days or of a rota, with everything that a task can have. */
export function anyTask(seed: number): CalendarTask {
  const next = numbers(seed * 7919);
  const whole = (most: number) => Math.floor(next() * most);
  const often = (share: number) => next() < share;
  const start = day("2027-03-22");
  const weekDays = often(0.7) ? 7 : 4 + whole(6);
  const weeks = 1 + whole(2);
  const days = weeks * weekDays;
  const perWeek = 2 + whole(4);
  const windows = Array.from({ length: days }, (): readonly TaskWindow[] =>
    Array.from({ length: whole(3) }, () => {
      const from = 360 + 30 * whole(28);
      const window = { from, to: Math.min(1440, from + 45 + 15 * whole(6)), cost: whole(5) };
      return often(0.2) ? { ...window, place: often(0.5) ? "pool" : "hut" } : window;
    }),
  );
  const on = (): Day => addDays(start, whole(days));
  const sessions = Array.from({ length: weeks * perWeek }, (_, index): TaskSession => {
    const plain = {
      id: `s${index}`,
      week: Math.floor(index / perWeek),
      minutes: 30 + 15 * whole(4),
      hard: whole(2 ** 5),
    };
    return {
      ...plain,
      ...(often(0.08) ? { days: [on()], fixed: true as const } : {}),
      ...(often(0.3) ? { announced: { day: on(), start: 360 + 30 * whole(28) } } : {}),
      ...(often(0.1) ? { lackedAt: ["pool"] } : {}),
    };
  });
  const past = [1, 2].flatMap((daysAgo) =>
    often(0.5) ? [{ daysAgo, start: 360 + 30 * whole(28), hard: whole(2 ** 5) }] : [],
  );
  return {
    start,
    days,
    weekDays,
    windows,
    sessions,
    carry: whole(5),
    maxInRow: 1 + whole(5),
    gapHours: [24, 48, 48, 48, 72, 96][whole(6)]!,
    ...(often(0.25) ? { gapIsMust: true as const } : {}),
    ...(often(0.5) ? { before: { inRow: whole(3), past } } : {}),
    ...(often(0.2) ? { weeks: cutInTwo(weeks, weekDays, 1 + whole(weekDays - 1), 1 + whole(5)) } : {}),
  };
}

/** Weeks of which the first is cut in two after some days, and those that follow come so many days later. */
function cutInTwo(weeks: number, weekDays: number, after: number, wait: number): NonNullable<CalendarTask["weeks"]> {
  const at = (day: number) => (day < after ? day : day + wait);
  return Array.from({ length: weeks }, (_, n) => ({ first: at(n * weekDays), last: at((n + 1) * weekDays - 1) }));
}
