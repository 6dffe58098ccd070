import type { CalendarTask, TaskSession } from "./task.ts";

/** A start that a day offers to a session. */
export interface Start {
  readonly from: number;
  readonly cost: number;
  readonly place?: string;
}

/**
 * Days of the task on which a session may stand: its home week and `carry` days more, first and last included.
 *
 * @returns indexes of days; `last` is before `first` when the week lies outside the task
 */
export function span(task: CalendarTask, session: TaskSession): { first: number; homeEnd: number; last: number } {
  const first = session.week * task.weekDays;
  const homeEnd = first + task.weekDays - 1;
  return { first, homeEnd, last: Math.min(homeEnd + task.carry, task.days - 1) };
}

/**
 * The different starts that a day has for a session of so many minutes, earliest first, then by the name of the place.
 * Windows that open together at one place are one start, at the lower cost.
 */
export function startsOn(task: CalendarTask, dayIndex: number, minutes: number): readonly Start[] {
  const starts: Start[] = [];
  for (const { from, to, cost, place } of task.windows[dayIndex] ?? []) {
    if (!(to - from >= minutes)) continue;
    const same = starts.findIndex((start) => start.from === from && (start.place ?? "") === (place ?? ""));
    const start = place === undefined ? { from, cost } : { from, cost, place };
    if (same < 0) starts.push(start);
    else if (cost < starts[same]!.cost) starts[same] = start;
  }
  return starts.sort((a, b) => a.from - b.from || ((a.place ?? "") < (b.place ?? "") ? -1 : 1));
}
