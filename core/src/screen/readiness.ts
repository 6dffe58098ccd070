import type { Effort } from "./answers.ts";

/** The four facts that the published logic decides by. */
export interface Facts {
  readonly active: boolean;
  readonly disease: boolean;
  readonly signs: boolean;
  readonly wanted: Effort;
}

/** What the published logic answers. */
export type Readiness =
  | "start light to moderate"
  | "ask a doctor before starting"
  | "go on"
  | "go on, moderate at most"
  | "ask a doctor before vigorous"
  | "stop and ask a doctor";

/**
 * Whether somebody may start or go on with exercise, and at what effort, before anybody was asked.
 *
 * Risk factors do not count, and neither does lung disease alone. Somebody who is not active and has nothing known
 * starts light to moderate whatever they want.
 *
 * @source riebe2015
 * @example
 * readiness({ active: true, disease: true, signs: false, wanted: "vigorous" }) //=> "ask a doctor before vigorous"
 */
export function readiness({ active, disease, signs, wanted }: Facts): Readiness {
  if (signs) return active ? "stop and ask a doctor" : "ask a doctor before starting";
  if (!active) return disease ? "ask a doctor before starting" : "start light to moderate";
  if (!disease) return "go on";
  return wanted === "vigorous" ? "ask a doctor before vigorous" : "go on, moderate at most";
}
