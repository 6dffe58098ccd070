import type { PersonOutput } from "@stave/core/api";
import type { Plan, PlanPhase, PlanWeek } from "@stave/core/model";

/** A week of a plan, with the phase it stands in. `id` is phase/week. */
export interface Week {
  readonly id: string;
  readonly phase: PlanPhase;
  readonly week: PlanWeek;
}

export function weeksOf(plan: Plan): readonly Week[] {
  return plan.phases.flatMap((phase) => phase.weeks.map((week) => ({ id: `${phase.key}/${week.week}`, phase, week })));
}

/**
 * The week to show: the one that was asked for, else the one of the next session, else the last that had one.
 *
 * @param today YYYY-MM-DD
 * @returns undefined when the plan has no week
 */
export function whichWeek(
  weeks: readonly Week[],
  asked: string | undefined,
  dates: PersonOutput["dates"],
  today: string,
): Week | undefined {
  const found = weeks.find(({ id }) => id === asked);
  if (found !== undefined) return found;
  const days = [...dates].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  const next = days.find(({ day }) => day >= today) ?? days.at(-1);
  return weeks.find(({ id }) => next?.session.startsWith(`${id}/`)) ?? weeks[0];
}
