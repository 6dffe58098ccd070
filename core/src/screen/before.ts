import type { Reason } from "../model/index.ts";

/** What a check before a session asks of today: go, go softer, hold the session, or ask and look again. */
export const BEFORE = ["go", "soften", "ask", "hold"] as const;
export type Before = (typeof BEFORE)[number];

/** One check's answer with its grounds. A held session is kept as held for safety and never as missed. */
export interface BeforeAnswer {
  readonly before: Before;
  readonly because: readonly Reason[];
}

/** @returns the strictest of several answers with the grounds of all that are not "go" */
export function strictest(answers: readonly BeforeAnswer[]): BeforeAnswer {
  const rank = Math.max(0, ...answers.map(({ before }) => BEFORE.indexOf(before)));
  const asked = answers.filter(({ before }) => before !== "go");
  return { before: BEFORE[rank]!, because: (asked.length > 0 ? asked : answers).flatMap(({ because }) => because) };
}
