import { score } from "./score.ts";
import { search } from "./search.ts";
import { type CalendarTask, checkTask, type Placed } from "./task.ts";
import { whyDropped } from "./why-dropped.ts";

/**
 * Which session stands on which day, and when does it start?
 *
 * Levels, in this order: fewest dropped sessions, fixed ones before the others; where the hours are a
 * must, fewest points for hours missing between sessions that load the same muscles hard; then fewest points, which are
 * those, the cost of the windows, days after the home week, sessions moved from where they were announced, and sessions
 * on the day after another. Points
 * stand in points.ts. Equal plans are told apart as `search` states. Nothing is owed: a session without a day is
 * dropped, and its reason is given.
 *
 * @param mostWork choices looked at before the proof is given up; the answer then says so, with its bound
 * @throws RangeError when the task is not what its types say in words
 * @source ours
 */
export function placeSessions(task: CalendarTask, mostWork?: number): Placed {
  checkTask(task);
  const best = search(task, mostWork);
  const { cost, parts } = score(task, best.placements);
  const kept = best.placements.map(({ session }) => session);
  return {
    placements: best.placements,
    dropped: best.dropped.map((session) => ({ session, reason: whyDropped(task, kept, session) })),
    cost,
    parts,
    value: best.value,
    bound: best.bound,
    proven: best.proven,
    count: best.count,
  };
}

/**
 * Could days keep all wanted hours between sessions, each in its own week, if hours and places were all as welcome? If
 * not, only other content can: see `recut`.
 *
 * @returns true when, among plans that drop as few sessions as can be, one leaves no close pair
 */
export function daysCanMend(task: CalendarTask): boolean {
  checkTask(task);
  const windows = task.windows.map((day) => day.map((window) => ({ ...window, cost: 0 })));
  return search({ ...task, windows, carry: 0, gapIsMust: true }).value.close === 0;
}
