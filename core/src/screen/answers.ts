import type { Day } from "../day.ts";
import type { Statement } from "../model/index.ts";

/** Known disease that the published logic asks for: heart, vessels, brain's vessels, diabetes, kidneys. */
export const DISEASES = ["heart", "vessels", "stroke", "diabetes type 1", "diabetes type 2", "kidney"] as const;
export type Disease = (typeof DISEASES)[number];

/** Signs and symptoms, at rest or in activity. The murmur, the swelling and lying flat are asked, never inferred. */
export const SIGNS = [
  "chest pain",
  "breathless at rest",
  "faint",
  "breathless lying flat",
  "ankle swelling",
  "palpitations",
  "calf cramp",
  "murmur",
  "unusual tiredness",
] as const;
export type Sign = (typeof SIGNS)[number];

export const EFFORTS = ["light", "moderate", "vigorous"] as const;
export type Effort = (typeof EFFORTS)[number];

/** A clinician's written yes, for one effort and everything below it. `about`: the signs that they knew of. */
export interface Cleared {
  readonly on: Day;
  readonly who: string;
  readonly effort: Effort;
  readonly about?: readonly Sign[];
}

/**
 * What a person answered. An answer that is missing is undefined, which is another thing than no.
 *
 * `active`: planned activity of at least moderate effort, 30 minutes or more on 3 days a week or more, for the last 3
 * months or more.
 */
export interface Answers {
  readonly on: Day;
  readonly by: string;
  readonly active?: boolean;
  readonly disease: Readonly<Partial<Record<Disease, boolean>>>;
  readonly signs: Readonly<Partial<Record<Sign, boolean>>>;
  /** What the person wants to train at. */
  readonly wanted?: Effort;
  readonly cleared?: Cleared;
  /** What is so today beside disease and signs, in the words of the table of cautions. */
  readonly also?: readonly Statement[];
  /** Medicines by name, as the person says them. */
  readonly medicines?: readonly string[];
  /** Conditions that stand on no list here, in the person's words: nothing is guessed of them, somebody is asked. */
  readonly other?: readonly string[];
  /** Health history that is said to be over, in the person's words. */
  readonly past?: readonly string[];
}
