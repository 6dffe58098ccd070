import type { Day } from "../day.ts";
import type { Plan, StaveEvent } from "../model/index.ts";
import type { PlanInput } from "./plan-for.ts";

/** Everything that one person's next plan is made from: facts, what was recorded and decided, and what day it is. */
export interface Situation extends Omit<PlanInput, "made"> {
  /** Every event of this person that is known, in any order. */
  readonly events: readonly StaveEvent[];
  /** An older revision of this person's plan, by its id: what was asked of a session is what was on its screen. */
  readonly revisionOf: (id: string) => Plan | undefined;
  readonly today: Day;
  /** The day on which an instant falls where this person trains. */
  readonly dayOf: (at: number) => Day;
  /** Version of the code, and content hash of the catalogue: they stand in `made`. */
  readonly engine: string;
  readonly catalogueHash: string;
  /** Makes names of contents: the same text gives the same hash, in letters and digits. SHA-256 in hexadecimal does. */
  readonly hash: (text: string) => string;
}

/** A person with the plan that stands. */
export interface PlannedPerson extends Situation {
  readonly plan: Plan;
}
