import { addDays, printDay } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";
import { search } from "./search.ts";
import { standing } from "./standing.ts";
import { span, windowsFor } from "./starts.ts";
import type { CalendarTask, Placed, TaskSession, TaskWindow } from "./task.ts";

/** A session cut to less than this share of its length is another session. Ours. */
const LEAST_SHARE = 0.5;
/** Days after its week that a session may follow at most, in the changes that are tried. Ours. */
const MOST_CARRY = 7;
/** When nobody has a window, one in the evening is spoken of. Ours. */
const EVENING = 1080;

/**
 * Which one change would give a session a day, when every session that has one keeps one and all other weeks stay as
 * they are? Every change is solved, and those that do it are told in this order: a shorter session, a longer window, a
 * window on a day that has none, what a place lacks, one more day in a row, days after the week, another turn.
 *
 * @param id a session that was dropped
 * @source ours
 */
export function wouldPlace(task: CalendarTask, placed: Placed, id: string): readonly Reason[] {
  const session = task.sessions.find((one) => one.id === id)!;
  const free = new Set(task.sessions.filter(({ week }) => week === session.week).map((one) => one.id));
  const kept = new Set(placed.placements.map((placement) => placement.session));
  const all = standing(task, placed.placements, free);
  // The others that have no day are no part of the question.
  const part = { ...all, sessions: all.sessions.filter((one) => one.id === id || kept.has(one.id)) };
  const places = (changed: CalendarTask): boolean => search(changed).dropped.length === 0;
  const withSession = (change: Partial<TaskSession>): CalendarTask => ({
    ...part,
    sessions: part.sessions.map((one) => (one.id === id ? { ...one, ...change } : one)),
  });
  const withWindow = (dayIndex: number, window: TaskWindow): CalendarTask => ({
    ...part,
    windows: part.windows.map((list, n) => (n === dayIndex ? [...list, window] : list)),
  });

  const { first, last } = span(part, session);
  const days = Array.from({ length: Math.max(0, last - first + 1) }, (_, n) => first + n).filter(
    (day) => !session.days || session.days.includes(addDays(part.start, day)),
  );
  const windows = days.flatMap((day) => windowsFor(part, day, session).map((window) => ({ ...window, day })));
  const text = (day: number) => printDay(addDays(part.start, day));

  const lengths = [...new Set(windows.map(({ from, to }) => to - from))].sort((a, b) => b - a);
  const shorter = lengths.find(
    (minutes) =>
      minutes < session.minutes && minutes >= session.minutes * LEAST_SHARE && places(withSession({ minutes })),
  );
  const longer = windows
    .map((window) => ({ ...window, more: session.minutes - (window.to - window.from) }))
    .filter(({ from, more }) => more > 0 && from + session.minutes <= 24 * 60)
    .sort((a, b) => a.more - b.more || a.day - b.day || a.from - b.from)
    .find(({ day, more, ...window }) => places(withWindow(day, { ...window, to: window.to + more })));
  const from = Math.min(usualStart(task), 24 * 60 - session.minutes);
  const another = days.filter(
    (day) => part.windows[day]!.length === 0 && places(withWindow(day, { from, to: from + session.minutes, cost: 0 })),
  );
  const equipped = (session.lackedAt ?? []).filter((place) =>
    places(withSession({ lackedAt: session.lackedAt!.filter((one) => one !== place) })),
  );
  const most = task.maxInRow + 1;
  const carries = session.days ? [] : Array.from({ length: Math.max(0, MOST_CARRY - task.carry) }, (_, n) => n + 1);
  const carry = carries.map((more) => task.carry + more).find((more) => places({ ...part, carry: more }));
  return [
    ...(shorter === undefined ? [] : [reason("calendar/would-shorter", { need: session.minutes, minutes: shorter })]),
    ...(longer === undefined ? [] : [reason("calendar/would-longer", { day: text(longer.day), more: longer.more })]),
    ...(another.length === 0
      ? []
      : [reason("calendar/would-window", { days: another.map(text), need: session.minutes })]),
    ...equipped.map((place) => reason("calendar/would-kit", { place })),
    ...(places({ ...part, maxInRow: most }) ? [reason("calendar/would-row", { most })] : []),
    ...(carry === undefined ? [] : [reason("calendar/would-carry", { days: carry })]),
    ...otherTurn(part, session, places),
  ];
}

/** The nearest session of its week before or after which it would have a day. */
function otherTurn(part: CalendarTask, session: TaskSession, places: (changed: CalendarTask) => boolean): Reason[] {
  const rest = part.sessions.filter(({ id }) => id !== session.id);
  const at = part.sessions.findIndex(({ id }) => id === session.id);
  const turns = Array.from({ length: rest.length + 1 }, (_, n) => n)
    .filter((n) => n !== at && (n < at ? rest[n] : rest[n - 1])!.week === session.week)
    .sort((a, b) => Math.abs(a - at) - Math.abs(b - at));
  const found = turns.find((n) => places({ ...part, sessions: rest.toSpliced(n, 0, session) }));
  if (found === undefined) return [];
  return found < at
    ? [reason("calendar/would-before", { before: rest[found]!.id })]
    : [reason("calendar/would-after", { after: rest[found - 1]!.id })];
}

/** The start that most windows have, the earliest among equals. */
function usualStart(task: CalendarTask): number {
  const counts = new Map<number, number>();
  for (const { from } of task.windows.flat()) counts.set(from, (counts.get(from) ?? 0) + 1);
  const [usual] = [...counts].sort(([a, x], [b, y]) => y - x || a - b)[0] ?? [EVENING];
  return usual;
}
