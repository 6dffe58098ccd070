import { addDays, type Day, day, printDay, WEEKDAYS, type Weekday, weekdayOf } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";

/**
 * The first day of the week that holds a day.
 *
 * @param begins weekday on which weeks begin
 * @example
 * weekStart(day("2027-01-03"), "mon") // Monday 28 December 2026
 */
export function weekStart(on: Day, begins: Weekday): Day {
  const after = WEEKDAYS.indexOf(weekdayOf(on)) - WEEKDAYS.indexOf(begins);
  return addDays(on, -((after + 7) % 7));
}

/**
 * The ISO name of the week that holds a day. Weeks begin on Monday and belong to the year of their Thursday.
 *
 * @source iso8601
 * @example
 * isoWeek(day("2027-01-03")) //=> "2026-W53"
 */
export function isoWeek(on: Day): string {
  const thursday = addDays(weekStart(on, "mon"), 3);
  const year = printDay(thursday).slice(0, 4);
  const first = day(`${year}-01-01`);
  return `${year}-W${String(Math.floor((thursday - first) / 7) + 1).padStart(2, "0")}`;
}

/** How many days of one week were trained on. */
export interface WeekCount {
  readonly first: Day;
  /** ISO name; only where weeks begin on Monday, since it means no other week. */
  readonly name?: string;
  readonly sessions: number;
}

/** Sessions of every week from the first to the last that has one, in order; weeks between them may have none. */
export function sessionsByWeek(days: readonly Day[], begins: Weekday): readonly WeekCount[] {
  if (days.length === 0) return [];
  const starts = days.map((on) => weekStart(on, begins));
  const [from, to] = [Math.min(...starts), Math.max(...starts)];
  return Array.from({ length: (to - from) / 7 + 1 }, (_, n): WeekCount => {
    const first = (from + 7 * n) as Day;
    const sessions = starts.filter((start) => start === first).length;
    return begins === "mon" ? { first, name: isoWeek(first), sessions } : { first, sessions };
  });
}

/** @returns the sessions of every week as a reason, with the day on which weeks begin */
export function sessionsAWeek(days: readonly Day[], begins: Weekday): Reason {
  const weeks = sessionsByWeek(days, begins).map(({ first, name, sessions }) => ({
    first: printDay(first),
    name: name ?? null,
    sessions,
  }));
  return reason("calendar/sessions-a-week", { begins, weeks });
}
