import type { Json, Reason } from "../model/index.ts";

/**
 * Why a session stands on its day, why it was dropped, and why the slots of a week were dealt anew. Each code names one
 * sentence; its data are listed beside it. Days are written YYYY-MM-DD; hours are wall hours from start to start and
 * may have a fraction.
 */
export const CALENDAR_CODES = [
  // Beside a session that has a day.
  /** with: id, or null for one done before; day: of the other; hours, wanted, muscles: loaded hard by both */
  "calendar/close",
  /** with, day, hours: the day after another session, and no muscle is loaded hard by both */
  "calendar/next-day",
  /** days: so many after the end of its home week */
  "calendar/late",
  /** cost: 1 to 4, as the person said of this window */
  "calendar/unwelcome-hour",
  /** no data: no other day of its week has a window that is long enough */
  "calendar/only-day",
  /** no data: it has a day of its own, or a few, whatever its week offers */
  "calendar/own-day",
  /** day: where it was announced; it stands on another day, at another hour or in another place */
  "calendar/not-as-announced",
  /** from, to, days: training days in a row; most: the rule; others: free days of those weeks that could be used instead */
  "calendar/in-a-row",
  // Of the whole plan, and of its weeks.
  /** from, to, days: without training; what falls into them falls away */
  "calendar/away",
  /** from, to, days: the weeks of the plan stand still, and go on where they stood */
  "calendar/waits",
  /** from, to, days: hours instead of the usual ones */
  "calendar/other-hours",
  /** count, more: true when there are more than can be counted; plans that are as good */
  "calendar/equal-plans",
  /** begins: weekday; weeks: each with first: its first day, name: the ISO one, or null; sessions */
  "calendar/sessions-a-week",
  /** no data */
  "calendar/only-plan",
  /** dropped, points: of the plan; leastDropped, leastPoints: no plan can be better than this */
  "calendar/not-proven",
  /**
   * week: 1 = first; sessions: those that stand elsewhere, each with session and day, no day where it has none; points:
   * how many more, and what they are made of: window, late, moved, nextDay, close
   */
  "calendar/other-way",
  // Dropped.
  /** from, to: days on which it might stand; nobody can train on any of them */
  "calendar/no-window",
  /** from, to, places: all its windows are there, and they lack what it needs */
  "calendar/lacks-kit",
  /** from, to, need: minutes, longest: minutes */
  "calendar/windows-too-short",
  /** sessions: ids that need these days, days: all they have; one session more than days */
  "calendar/fewer-days",
  /** most: days in a row; without this rule there would be a day */
  "calendar/rest-day",
  /** days: where it would fit by itself; none of them keeps the order, with or without days of rest */
  "calendar/order",
  // What alone would give it a day, all other sessions keeping theirs and other weeks as they are.
  /** need, minutes: it would have to be so short */
  "calendar/would-shorter",
  /** day, more: minutes by which a window of that day would have to be longer */
  "calendar/would-longer",
  /** days: a window of `need` minutes on one of them */
  "calendar/would-window",
  /** place: if it had all that the session needs */
  "calendar/would-kit",
  /** most: days in a row instead of the rule's */
  "calendar/would-row",
  /** days: so many after its week instead of the rule's */
  "calendar/would-carry",
  /** before, or after: id of the session with which it changes its turn */
  "calendar/would-before",
  "calendar/would-after",
  // After a session was missed.
  /** day: no session stood there, so nothing follows */
  "calendar/missed-nothing",
  /** session, day: of the session missed */
  "calendar/missed-ill",
  "calendar/missed-tired",
  "calendar/missed-pain",
  /** session, day: where it stood; to: the new day */
  "calendar/missed-moved",
  /** session, day, because: away where it was not busy */
  "calendar/missed-no-day",
  /** session, day, hours, wanted, muscles, with: id; the best plan that has it would be so close */
  "calendar/missed-close",
  /** session, day, back: the first day on which the person can train again */
  "calendar/not-back",
  /** session, day, to: moved to make room for another */
  "calendar/moved",
  /** session, day, since: days since the last session done, null when none was */
  "calendar/ease-in",
  // Slots of a week dealt anew.
  /** days, from, to, others: free days that could be used instead; 0 says that the person has none */
  "calendar/days-as-they-are",
  /** slot, from, to: keys of sessions; muscles: what would else be loaded hard again; hours, wanted */
  "calendar/slot-moved",
  /** slot, from, to: moved to make room, or so that the minutes or the order of days come right */
  "calendar/slot-moved-along",
  /** slot, session */
  "calendar/slot-kept",
  /** earlier, later: keys of sessions; muscles, hours, wanted: no deal of these slots avoids it */
  "calendar/still-close",
  /** session, minutes, limit: no deal with as few close pairs keeps the limit */
  "calendar/over-minutes",
] as const;
export type CalendarCode = (typeof CALENDAR_CODES)[number];

/** A reason under one of the codes of the calendar. */
export function reason(code: CalendarCode, data: Readonly<Record<string, Json>>): Reason {
  return { code, data };
}
