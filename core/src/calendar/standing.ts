import type { CalendarTask, Placement, TaskSession } from "./task.ts";

/**
 * The same task when part of a plan stands: every placement keeps its day, start and place, but for the sessions that
 * are free. Sessions that have no day and are not free are left out.
 */
export function standing(
  task: CalendarTask,
  placements: readonly Placement[],
  free: ReadonlySet<string>,
): CalendarTask {
  const held = new Map(placements.filter(({ session }) => !free.has(session)).map((one) => [one.session, one]));
  const heldOn = new Map([...held.values()].map((one) => [one.day - task.start, one]));
  return {
    ...task,
    sessions: task.sessions.flatMap((session): TaskSession[] => {
      const at = held.get(session.id);
      if (at) return [{ ...session, days: [at.day], fixed: true }];
      return free.has(session.id) ? [session] : [];
    }),
    windows: task.windows.map((list, dayIndex) => {
      const at = heldOn.get(dayIndex);
      return at ? list.filter(({ from, place }) => from === at.start && place === at.place) : list;
    }),
  };
}
