import type { Day } from "../day.ts";
import type { Reason } from "../model/index.ts";

/** A session that wants a day, in its home week. Sessions stand in the order in which they must be done. */
export interface TaskSession {
  readonly id: string;
  /** Home week of the task, 0 = first. It never falls from one session to the next. */
  readonly week: number;
  /** Upper estimate of its length. */
  readonly minutes: number;
  /** Muscles loaded hard: bit n is row n of MUSCLES. */
  readonly hard: number;
  /** The only days on which it may stand, instead of its week and the days of carry. */
  readonly days?: readonly Day[];
  /** It goes before all that are not fixed: a test, a date that others hold to. */
  readonly fixed?: true;
  /** Where it was announced to stand; anywhere else costs points. */
  readonly announced?: { readonly day: Day; readonly start: number; readonly place?: string };
  /** Places that lack something it needs; windows there are none for it. */
  readonly lackedAt?: readonly string[];
}

/** One chance to train on a day: wall minutes after midnight, 0 = gladly … 4 = only if it must be. */
export interface TaskWindow {
  readonly from: number;
  readonly to: number;
  readonly cost: number;
  readonly place?: string;
}

/** A session already done before the first day. */
export interface PastSession {
  readonly daysAgo: number;
  readonly start: number;
  readonly hard: number;
}

/**
 * What is to be placed on which days, in whole numbers.
 *
 * A session may stand from the first day of its home week to the last one, or up to `carry` days later; or on its own
 * days only. It starts when its window opens, and must end before the window does. At most one session a day, never out
 * of order, and after `maxInRow` training days there is a day without.
 */
export interface CalendarTask {
  readonly start: Day;
  readonly days: number;
  readonly sessions: readonly TaskSession[];
  /** Length of a week: 7, or the length of a rota. */
  readonly weekDays: number;
  /** The first and the last day of each home week, counted from the first day, where they do not simply follow. */
  readonly weeks?: readonly { readonly first: number; readonly last: number }[];
  /** For each of the days, in any order. */
  readonly windows: readonly (readonly TaskWindow[])[];
  readonly carry: number;
  readonly maxInRow: number;
  /**
   * Hours wanted from one start to the next where both load a muscle hard, 0 to 96. Wall hours: on a night when the
   * clocks change they are one more or one less than those of a stop watch. 48 is usual.
   */
  readonly gapHours: number;
  /** The hours are a must: they are kept before any other points, and given up only for a session that would have no day. */
  readonly gapIsMust?: true;
  /** What was done before the first day: training days in a row up to it, and the sessions that may still be close. */
  readonly before?: { readonly inRow: number; readonly past: readonly PastSession[] };
}

export interface Placement {
  readonly session: string;
  readonly day: Day;
  readonly start: number;
  readonly place?: string;
}

/** What the points of a plan are made of. */
export interface Parts {
  readonly window: number;
  readonly late: number;
  readonly moved: number;
  readonly nextDay: number;
  readonly close: number;
}

/** What is counted against a plan, compared in this order. */
export interface Levels {
  /** Fixed sessions that have no day. */
  readonly fixed: number;
  /** All sessions that have no day. */
  readonly dropped: number;
  /** Points for hours missing, where the hours are a must; else 0. */
  readonly close: number;
  /** All other points. */
  readonly points: number;
}

export interface Placed {
  readonly placements: readonly Placement[];
  readonly dropped: readonly { readonly session: string; readonly reason: Reason }[];
  /** Points against the plan, hours missing included; 0 is best. Dropped sessions are a level above and not in it. */
  readonly cost: number;
  readonly parts: Parts;
  readonly value: Levels;
  /** No plan is better than this. */
  readonly bound: Levels;
  /** The value is the bound: no plan is better. */
  readonly proven: boolean;
  /** How many different plans are as good; more than 2^53 − 1 reads 2^53 − 1. Unless proven, 1. */
  readonly count: number;
}

const MINUTES_A_DAY = 1440;
const MUSCLE_BITS = 2 ** 20;
const MOST_SESSIONS = 1000;
const MOST_WINDOWS = 24;

function must(holds: boolean, what: string, found: number): void {
  if (!holds) throw new RangeError(`Cannot place sessions as ${what}: current value is ${found}`);
}

function whole(value: number, least: number, most: number): boolean {
  return Number.isInteger(value) && value >= least && value <= most;
}

/** @throws RangeError when the task is not what its types say in words */
export function checkTask(task: CalendarTask): void {
  must(whole(task.start, -1e7, 1e7), "the first day must be a day number", task.start);
  must(whole(task.days, 0, 4000), "days must be a whole number from 0 to 4000", task.days);
  must(task.windows.length === task.days, `windows must be given for ${task.days} days`, task.windows.length);
  must(whole(task.weekDays, 1, 366), "a week must have from 1 to 366 days", task.weekDays);
  must(whole(task.carry, 0, 366), "carry must be a whole number of days from 0 to 366", task.carry);
  must(whole(task.maxInRow, 1, 4000), "days in a row must be a whole number from 1 to 4000", task.maxInRow);
  must(task.gapHours >= 0 && task.gapHours <= 96, "the gap must be from 0 to 96 hours", task.gapHours);
  must(whole(task.gapHours * 60, 0, 5760), "the gap must be a whole number of minutes", task.gapHours * 60);
  must(task.sessions.length <= MOST_SESSIONS, `there must be at most ${MOST_SESSIONS} sessions`, task.sessions.length);
  for (const day of task.windows) {
    must(day.length <= MOST_WINDOWS, `a day must have at most ${MOST_WINDOWS} windows`, day.length);
  }
  for (const window of task.windows.flat()) {
    must(whole(window.from, 0, MINUTES_A_DAY - 1), "a window must open from 0 to 1439 minutes", window.from);
    must(whole(window.to, window.from + 1, MINUTES_A_DAY), "a window must close after it opens, by 1440", window.to);
    must(whole(window.cost, 0, 1000), "the cost of a window must be a whole number from 0 to 1000", window.cost);
  }
  let end = -1;
  for (const { first, last } of task.weeks ?? []) {
    must(whole(first, end + 1, 4000), `a week must begin from day ${end + 1} to 4000`, first);
    must(whole(last, first, 4000), `a week must end from day ${first} to 4000`, last);
    end = last;
  }
  const mostWeek = task.weeks === undefined ? 4000 : task.weeks.length - 1;
  let week = 0;
  for (const session of task.sessions) {
    must(
      whole(session.week, week, mostWeek),
      `the home week must be a whole number from ${week} to ${mostWeek}`,
      session.week,
    );
    must(whole(session.minutes, 1, MINUTES_A_DAY), "a session must last from 1 to 1440 minutes", session.minutes);
    must(whole(session.hard, 0, MUSCLE_BITS - 1), "hard muscles must be 20 bits", session.hard);
    for (const day of session.days ?? []) must(whole(day, -2e7, 2e7), "its own days must be day numbers", day);
    if (session.announced) {
      must(whole(session.announced.day, -2e7, 2e7), "an announced day must be a day number", session.announced.day);
      must(
        whole(session.announced.start, 0, MINUTES_A_DAY - 1),
        "an announced start must be a minute of the day",
        session.announced.start,
      );
    }
    week = session.week;
  }
  must(new Set(task.sessions.map(({ id }) => id)).size === task.sessions.length, "ids must differ", 0);
  if (task.before) {
    must(whole(task.before.inRow, 0, 4000), "days in a row before must be a whole number", task.before.inRow);
    for (const past of task.before.past) {
      must(whole(past.daysAgo, 1, 4000), "a past session must be 1 day ago or more", past.daysAgo);
      must(whole(past.start, 0, MINUTES_A_DAY - 1), "a past start must be from 0 to 1439 minutes", past.start);
      must(whole(past.hard, 0, MUSCLE_BITS - 1), "hard muscles must be 20 bits", past.hard);
    }
  }
}
