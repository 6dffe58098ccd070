import { hardMuscles } from "../measures/index.ts";
import type { Catalogue, PlanPhase, PlanSession } from "../model/index.ts";
import { maskOf } from "./muscle-mask.ts";
import { sessionsInTurn } from "./sessions-in-turn.ts";
import type { TaskSession } from "./task.ts";

/** A session to be placed that still knows where in the plan it comes from. */
export interface PlannedSession extends TaskSession {
  /** The occurrence: phase, week and session, so that it stays the same when days move. */
  readonly id: string;
  readonly phase: string;
  /** Week of the phase, as the plan counts it. */
  readonly planWeek: number;
  readonly session: string;
}

/**
 * The sessions of a fitted phase as the calendar takes them: all of them every week, or in turn when there are fewer
 * days. A session takes its doses, its length (upper estimate) and its hard muscles from the week it stands in. One of
 * which nothing is left for this person, neither work nor conditioning, needs no day.
 *
 * @param perWeek training days a week
 * @param firstWeek home week of the task at which the phase begins, 0 = first
 */
export function sessionsToPlace(
  phase: PlanPhase,
  catalogue: Catalogue,
  perWeek: number,
  firstWeek = 0,
): readonly PlannedSession[] {
  const keys = [...new Set(phase.weeks.flatMap((week) => week.sessions.filter(hasWork).map(({ key }) => key)))];
  const turns = sessionsInTurn(keys, perWeek, phase.weeks.length);
  return phase.weeks.flatMap((week, index) =>
    turns[index]!.flatMap((key) => {
      const session = week.sessions.find((one) => one.key === key);
      return session && hasWork(session) ? [planned(phase, week.week, session, firstWeek + index, catalogue)] : [];
    }),
  );
}

function hasWork({ blocks, conditioning }: PlanSession): boolean {
  return blocks.length > 0 || conditioning.length > 0;
}

function planned(
  phase: PlanPhase,
  planWeek: number,
  session: PlanSession,
  week: number,
  catalogue: Catalogue,
): PlannedSession {
  return {
    id: `${phase.key}/${planWeek}/${session.key}`,
    phase: phase.key,
    planWeek,
    session: session.key,
    week,
    minutes: Math.ceil(session.minutes.high),
    hard: maskOf(hardMuscles(session, catalogue)),
  };
}

/**
 * Days of a usual week on which a session of so many minutes can stand: the most that any whole week of the windows
 * offers, so that a week away does not make the others smaller.
 *
 * @param windows for each day
 * @param weekDays length of a week; days after the last whole week count only when there is no whole one
 * @example
 * trainingDays(windowsOf(person, place, from, 28), 7, 45) //=> 3
 */
export function trainingDays(
  windows: readonly (readonly { readonly from: number; readonly to: number }[])[],
  weekDays: number,
  minutes: number,
): number {
  let most = 0;
  for (let from = 0; from === 0 || from + weekDays <= windows.length; from += weekDays) {
    const week = windows.slice(from, from + weekDays);
    most = Math.max(most, week.filter((day) => day.some((window) => window.to - window.from >= minutes)).length);
  }
  return most;
}
