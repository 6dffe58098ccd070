import { addDays, printDay } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";
import { span, startsOn, windowsFor } from "./starts.ts";
import type { CalendarTask, TaskSession } from "./task.ts";

/**
 * Why has a session no day? The first of these that holds: its days have no window; all are at places that lack what it
 * needs; none is long enough; even out of
 * order and without days of rest the other sessions need all its days; without the rule on days in a row there would
 * be a day; else the order stands in the way.
 *
 * @param kept ids of the sessions that have a day
 * @param id a session that has none
 */
export function whyDropped(task: CalendarTask, kept: readonly string[], id: string): Reason {
  const session = task.sessions.find((one) => one.id === id)!;
  const { first, homeEnd, last } = span(task, session);
  const between = { from: date(task, first), to: date(task, Math.max(last, first, homeEnd)) };
  const days = Array.from({ length: Math.max(0, last - first + 1) }, (_, n) => first + n);
  const own = days.filter((day) => !session.days || session.days.includes(addDays(task.start, day)));
  const any = own.flatMap((day) => task.windows[day] ?? []);
  if (any.length === 0) return reason("calendar/no-window", between);
  const lengths = days.flatMap((day) => windowsFor(task, day, session)).map((window) => window.to - window.from);
  if (lengths.length === 0) {
    const places = [...new Set(any.flatMap(({ place }) => place ?? []))].sort();
    return reason("calendar/lacks-kit", { ...between, places });
  }
  const longest = Math.max(...lengths);
  if (!(longest >= session.minutes)) {
    return reason("calendar/windows-too-short", { ...between, need: session.minutes, longest });
  }

  const wanted = task.sessions.filter((one) => one.id === id || kept.includes(one.id));
  const crowd = crowdOf(task, wanted, session);
  if (crowd) {
    return reason("calendar/fewer-days", {
      sessions: crowd.sessions.map((one) => one.id),
      days: crowd.days.map((day) => date(task, day)),
    });
  }
  if (fitsInOrder(task, wanted)) return reason("calendar/rest-day", { most: task.maxInRow });
  return reason("calendar/order", { days: fittingDays(task, session).map((day) => date(task, day)) });
}

function date(task: CalendarTask, dayIndex: number): string {
  return printDay(addDays(task.start, dayIndex));
}

/** Indexes of the days of its span on which a session has a window that is long enough. */
export function fittingDays(task: CalendarTask, session: TaskSession): number[] {
  const { first, last } = span(task, session);
  const days: number[] = [];
  for (let day = first; day <= last; day++) if (startsOn(task, day, session).length > 0) days.push(day);
  return days;
}

/** Whether all of them have days in order, when no day of rest is asked: each takes the first that is left to it. */
function fitsInOrder(task: CalendarTask, sessions: readonly TaskSession[]): boolean {
  let last = -1;
  return sessions.every((session) => {
    const day = fittingDays(task, session).find((one) => one > last);
    last = day ?? last;
    return day !== undefined;
  });
}

/**
 * Gives each session a day of its own, whatever the order, by augmenting paths. When `last` finds none, the sessions
 * and days tried are one session more than days: that is the proof.
 */
function crowdOf(
  task: CalendarTask,
  sessions: readonly TaskSession[],
  last: TaskSession,
): { readonly sessions: readonly TaskSession[]; readonly days: readonly number[] } | undefined {
  const holder = new Map<number, TaskSession>();
  const place = (session: TaskSession, tried: Set<number>): boolean => {
    for (const day of fittingDays(task, session)) {
      if (tried.has(day)) continue;
      tried.add(day);
      const other = holder.get(day);
      if (other && !place(other, tried)) continue;
      holder.set(day, session);
      return true;
    }
    return false;
  };
  for (const session of sessions) if (session !== last) place(session, new Set());
  const tried = new Set<number>();
  if (place(last, tried)) return undefined;
  const days = [...tried].sort((a, b) => a - b);
  const held = new Set(days.map((day) => holder.get(day)!));
  return { sessions: sessions.filter((session) => session === last || held.has(session)), days };
}
