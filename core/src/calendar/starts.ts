import type { CalendarTask, TaskSession } from "./task.ts";

/** A start that a day offers to a session. */
export interface Start {
  readonly from: number;
  readonly cost: number;
  readonly place?: string;
}

/**
 * Days of the task between which a session may stand: its home week and `carry` days more, or its own days; first and
 * last included.
 *
 * @returns indexes of days; `last` is before `first` when none of them lies in the task
 */
export function span(task: CalendarTask, session: TaskSession): { first: number; homeEnd: number; last: number } {
  const own = task.weeks?.[session.week];
  const week = own?.first ?? session.week * task.weekDays;
  const homeEnd = own?.last ?? week + task.weekDays - 1;
  if (session.days) {
    const days = session.days.map((day) => day - task.start).filter((day) => day >= 0 && day < task.days);
    return { first: Math.min(task.days, ...days), homeEnd, last: Math.max(-1, ...days) };
  }
  return { first: week, homeEnd, last: Math.min(homeEnd + task.carry, task.days - 1) };
}

/** Windows of a day that a session could use if they were long enough: none on a day that is not its own. */
export function windowsFor(
  task: CalendarTask,
  dayIndex: number,
  session: TaskSession,
): CalendarTask["windows"][number] {
  const { first, last } = span(task, session);
  if (dayIndex < first || dayIndex > last) return [];
  if (session.days && !session.days.some((day) => day - task.start === dayIndex)) return [];
  const windows = task.windows[dayIndex] ?? [];
  const { lackedAt } = session;
  return lackedAt ? windows.filter(({ place }) => place === undefined || !lackedAt.includes(place)) : windows;
}

/**
 * The different starts that a day has for a session, earliest first, then by the name of the place. Windows that open
 * together at one place are one start, at the lower cost.
 */
export function startsOn(task: CalendarTask, dayIndex: number, session: TaskSession): readonly Start[] {
  const starts: Start[] = [];
  for (const { from, to, cost, place } of windowsFor(task, dayIndex, session)) {
    if (!(to - from >= session.minutes)) continue;
    const same = starts.findIndex((start) => start.from === from && (start.place ?? "") === (place ?? ""));
    const start = place === undefined ? { from, cost } : { from, cost, place };
    if (same < 0) starts.push(start);
    else if (cost < starts[same]!.cost) starts[same] = start;
  }
  return starts.sort((a, b) => a.from - b.from || ((a.place ?? "") < (b.place ?? "") ? -1 : 1));
}

/** @returns true unless the session was announced and this is another day, hour or place */
export function asAnnounced(
  { announced }: TaskSession,
  day: number,
  { from, place }: { readonly from: number; readonly place?: string },
): boolean {
  return !announced || (announced.day === day && announced.start === from && announced.place === place);
}
