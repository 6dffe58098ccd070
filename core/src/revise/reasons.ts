import type { Json, Reason } from "../model/index.ts";

/** What a plan says about itself. Each code names one sentence; its data are listed beside it. */
export const PLAN_CODES = [
  /** no data */
  "plan/long-sets-instead",
  /** minutes: what the person has */
  "plan/no-day",
  /** days, sessions */
  "plan/in-turn",
  /** load */
  "plan/load-decided",
  /** load: decided, chosen: the hardest here that is easier and allowed */
  "plan/load-beaten",
  /** load: decided; nothing here that is as easy is allowed, or the form takes no load */
  "plan/load-cannot-be",
  /** exercise, where: nothing that is offered spares the place that hurts */
  "plan/nothing-spares",
  /** exercise: nothing that is offered does without its equipment */
  "plan/nothing-else-here",
  /** no data */
  "plan/dose-decided",
  /** exercise, or null; until, when it was said */
  "plan/paused",
] as const;
export type PlanCode = (typeof PLAN_CODES)[number];

export function reason(code: PlanCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}
