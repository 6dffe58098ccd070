import { daysCanMend, recut, recutSessions, trainingDays } from "@stave/core/calendar";
import type { Reason } from "@stave/core/model";
import type { Dated } from "@stave/core/revise";
import type { Planned } from "./plans.ts";

/** Where the days of a week cannot keep a muscle's recovery, the content can: the slots of the first week dealt anew. */
export function recutOf(
  { plan, catalogue }: Planned,
  dated: Dated,
):
  | {
      readonly sessions: readonly { readonly key: string; readonly slots: readonly string[] }[];
      readonly why: readonly Reason[];
    }
  | undefined {
  const { task, placed } = dated;
  if (placed.parts.close === 0 || daysCanMend(task)) return undefined;
  const first = placed.placements.filter(({ session }) =>
    dated.sessions.some((one) => one.id === session && one.week === 0),
  );
  const keys = first.map(({ session }) => dated.sessions.find((one) => one.id === session)!.session);
  const week = plan.phases[0]!.weeks[0]!;
  const sessions = keys.flatMap((key) => week.sessions.filter((session) => session.key === key));
  if (sessions.length < 2) return undefined;
  const minutes = Math.max(...sessions.map((session) => session.minutes.high));
  const otherDays = trainingDays(task.windows.slice(0, task.weekDays), task.weekDays, minutes) - sessions.length;
  const found = recut({
    sessions: recutSessions(sessions, catalogue),
    starts: first,
    gapHours: task.gapHours,
    minutes,
    weekDays: task.weekDays,
    otherDays: Math.max(0, otherDays),
  });
  return found.closeAfter < found.closeBefore ? { sessions: found.sessions, why: found.why } : undefined;
}
