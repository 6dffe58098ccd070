import { configurationOf, type Sessions, standsBefore } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import type { Net } from "./net.ts";

/** Prices are fractions; sums of whole points that lie within this are equal. */
export const SLACK = 0.01;

/** Work that is left; a search that runs out says so. */
export interface Budget {
  left: number;
}

/** A real plan and its worth. */
export interface Plan {
  readonly sessions: Sessions;
  readonly value: number;
}

export interface Found {
  readonly best: Plan;
  /** No plan is worth more: the plan's own value when it is proven best. */
  readonly bound: number;
}

export function planOf(net: Net, goal: Goal, sessions: Sessions): Plan {
  const { value, sums } = configurationOf(net, goal, sessions.flat());
  return { sessions, value: value - goal.costs(sums) };
}

/** Worth more, or worth as much and first in the stated order. */
export function isBetter(a: Plan, b: Plan): boolean {
  return a.value !== b.value ? a.value > b.value : standsBefore(a.sessions.flat(), b.sessions.flat());
}
