import { addDays, type Day, printDay } from "../day.ts";
import type { Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";
import { score } from "./score.ts";
import { span } from "./starts.ts";
import type { CalendarTask, Placed, Placement } from "./task.ts";
import { fittingDays } from "./why-dropped.ts";
import { wouldPlace } from "./would-place.ts";

export interface PlacementWhy extends Placement {
  readonly why: readonly Reason[];
}

/** Why every session stands where it does, which days stand in a row, and why the rest was dropped. */
export interface Explanation {
  readonly sessions: readonly PlacementWhy[];
  readonly rows: readonly Reason[];
  /** With every single change that would give the session a day, the least first. */
  readonly dropped: readonly (Placed["dropped"][number] & { readonly changes: readonly Reason[] })[];
}

/**
 * Why does each session stand on its day? Reasons as data, by the plain reading of the rules and not by the search.
 * A pair of sessions is told at the later one.
 */
export function explainPlacements(task: CalendarTask, placed: Placed): Explanation {
  const { close } = score(task, placed.placements);
  const sessions = placed.placements.map((placement, at): PlacementWhy => {
    const session = task.sessions.find(({ id }) => id === placement.session)!;
    const dayIndex = placement.day - task.start;
    const why: Reason[] = [];
    const days = fittingDays(task, session);
    if (days.length === 1 && !session.days) why.push(reason("calendar/only-day", {}));
    for (const pair of close.filter(({ later }) => later === placement.session)) {
      why.push(
        reason("calendar/close", {
          with: pair.earlier ?? null,
          day: printDay(pair.earlierDay),
          hours: pair.minutes / 60,
          wanted: task.gapHours,
          muscles: pair.muscles,
        }),
      );
    }
    const before = at === 0 ? doneTheDayBefore(task) : placed.placements[at - 1];
    const told = close.some((pair) => pair.later === placement.session && pair.earlierDay === placement.day - 1);
    if (before && before.day === placement.day - 1 && !told) {
      const hours = (24 * 60 + placement.start - before.start) / 60;
      why.push(reason("calendar/next-day", { with: before.session, day: printDay(before.day), hours }));
    }
    const late = dayIndex - span(task, session).homeEnd;
    if (late > 0) why.push(reason("calendar/late", { days: late }));
    const { window, moved } = score(task, [placement]).parts;
    if (moved > 0) why.push(reason("calendar/not-as-announced", { day: printDay(session.announced!.day) }));
    if (session.days) why.push(reason("calendar/own-day", {}));
    if (window > 0) why.push(reason("calendar/unwelcome-hour", { cost: window }));
    return { ...placement, why };
  });
  const dropped = placed.dropped.map((one) => ({ ...one, changes: wouldPlace(task, placed, one.session) }));
  return { sessions, rows: rowsOf(task, placed.placements), dropped };
}

function doneTheDayBefore(task: CalendarTask): { session: null; day: Day; start: number } | undefined {
  const past = task.before?.past.filter(({ daysAgo }) => daysAgo === 1).sort((a, b) => b.start - a.start)[0];
  return past && { session: null, day: addDays(task.start, -1), start: past.start };
}

/** Every run of two training days or more, with the free days of its weeks that could have been used instead. */
function rowsOf(task: CalendarTask, placements: readonly Placement[]): Reason[] {
  const used = new Set(placements.map(({ day }) => day - task.start));
  const rows: Reason[] = [];
  for (let from = 0; from < task.days; from++) {
    if (!used.has(from) || used.has(from - 1)) continue;
    let to = from;
    while (used.has(to + 1)) to++;
    const before = from === 0 ? (task.before?.inRow ?? 0) : 0;
    const days = to - from + 1 + before;
    if (days < 2) continue;
    const run = placements.filter(({ day }) => day - task.start >= from && day - task.start <= to);
    const ids = new Set(run.map(({ session }) => session));
    const fitting = task.sessions.filter(({ id }) => ids.has(id)).flatMap((session) => fittingDays(task, session));
    const others = new Set(fitting.filter((day) => !used.has(day)));
    rows.push(
      reason("calendar/in-a-row", {
        from: printDay(addDays(task.start, from - before)),
        to: printDay(addDays(task.start, to)),
        days,
        most: task.maxInRow,
        others: others.size,
      }),
    );
  }
  return rows;
}
