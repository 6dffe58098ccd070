import type { Plan } from "../model/index.ts";
import type { Situation } from "./situation.ts";

/** What the next revision would be made from. While it equals that of the plan that stands, the plan is up to date. */
export function madeFor(_situation: Situation): Plan["made"] {
  throw new Error("madeFor is being written");
}

/** The plan from facts, record and decisions. Equal `made` gives equal bytes, and the same id. */
export function nextRevision(_situation: Situation): Plan {
  throw new Error("nextRevision is being written");
}
