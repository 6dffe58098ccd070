import { addDays, type Day } from "../day.ts";
import { MUSCLES, type Muscle } from "../model/index.ts";
import type { CalendarTask, Levels, Parts, Placement } from "./task.ts";

/** Two sessions that load the same muscles hard with fewer hours between them than wanted. */
export interface ClosePair {
  /** Id of the earlier session; undefined when it was done before the first day. */
  readonly earlier: string | undefined;
  readonly earlierDay: Day;
  readonly later: string;
  readonly laterDay: Day;
  /** Wall minutes from start to start. */
  readonly minutes: number;
  readonly muscles: readonly Muscle[];
  readonly points: number;
}

/**
 * What do these placements cost, and which pairs are close? The plain reading of the rules, written apart from the
 * search so that each can be checked by the other: every pair is looked at, whatever lies between.
 */
export function score(
  task: CalendarTask,
  placements: readonly Placement[],
): {
  readonly dropped: number;
  readonly cost: number;
  readonly parts: Parts;
  readonly value: Levels;
  readonly close: readonly ClosePair[];
} {
  const sessions = new Map(task.sessions.map((session) => [session.id, session]));
  const all = [
    ...(task.before?.past ?? []).map((past) => ({
      id: undefined,
      day: addDays(task.start, -past.daysAgo),
      start: past.start,
      hard: past.hard,
    })),
    ...placements.map(({ session, day, start }) => ({ id: session, day, start, hard: sessions.get(session)!.hard })),
  ];
  const close: ClosePair[] = [];
  all.forEach((later, at) => {
    if (later.id === undefined) return;
    for (const earlier of all.slice(0, at)) {
      const minutes = (later.day - earlier.day) * 24 * 60 + later.start - earlier.start;
      const muscles = MUSCLES.filter((_, row) => earlier.hard & later.hard & (1 << row));
      const missing = task.gapHours * 60 - minutes;
      if (muscles.length === 0 || missing <= 0) continue;
      const points = 2 * muscles.length * Math.ceil(missing / 60 / 6);
      const days = { earlierDay: earlier.day, laterDay: later.day };
      close.push({ earlier: earlier.id, later: later.id, ...days, minutes, muscles, points });
    }
  });
  let window = 0;
  let late = 0;
  let moved = 0;
  for (const { session, day, start, place } of placements) {
    const { week, minutes, announced } = sessions.get(session)!;
    const fitting = task.windows[day - task.start]!.filter(
      (w) => w.from === start && (w.place ?? "") === (place ?? "") && w.to - w.from >= minutes,
    );
    window += Math.min(...fitting.map(({ cost }) => cost));
    if (announced && !(announced.day === day && announced.start === start && announced.place === place)) moved += 8;
    const lastDay = task.weeks ? task.weeks[week]!.last : (week + 1) * task.weekDays - 1;
    late += 15 * Math.max(0, day - task.start - lastDay);
  }
  const days = new Set(placements.map(({ day }) => day - task.start));
  const trainedBefore = (day: number) => days.has(day - 1) || (day === 0 && (task.before?.inRow ?? 0) > 0);
  const nextDay = [...days].filter(trainedBefore).length;
  const parts = { window, late, moved, nextDay, close: close.reduce((sum, { points }) => sum + points, 0) };
  const others = window + late + moved + nextDay;
  const dropped = task.sessions.length - placements.length;
  const kept = new Set(placements.map(({ session }) => session));
  const fixed = task.sessions.filter(({ id, fixed }) => fixed && !kept.has(id)).length;
  const value = task.gapIsMust
    ? { fixed, dropped, close: parts.close, points: others }
    : { fixed, dropped, close: 0, points: others + parts.close };
  return { dropped, cost: others + parts.close, parts, value, close };
}
