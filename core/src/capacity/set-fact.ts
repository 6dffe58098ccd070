import type { Day } from "../day.ts";

/** One set of one movement, as far as it bears on what somebody can do. */
export interface SetFact {
  readonly day: Day;
  /** Its number in the session, 0 = first. */
  readonly set: number;
  /** Kilograms moved, over 0, in one meaning throughout; undefined where the load is not known. */
  readonly kg?: number;
  /** Of the weaker side; undefined where nobody read it. */
  readonly reps?: number;
  /** Seconds of a hold, of the weaker side. */
  readonly holdS?: number;
  /** Repetitions in reserve, where said. */
  readonly reserve?: number;
  /** What was asked: the range in repetitions or seconds with the least reserve, or as many as possible. */
  readonly asked?: "most" | { readonly from: number; readonly to: number; readonly reserve?: number };
  /** The session ended early, or the set for another reason than strength: what was done is only a lower bound. */
  readonly stoppedEarly?: boolean;
}

/** Whose sets they are, as far as it bears on how strength grows and goes. */
export interface Trainee {
  readonly status?: "novice" | "intermediate" | "advanced";
  /** Whole years. */
  readonly age?: number;
}

/** Where on the scale of repetitions a set lies, with those in reserve: each has its own state. */
export const ZONES = ["low", "middle", "high", "hold"] as const;
export type Zone = (typeof ZONES)[number];

/** Most repetitions of a zone. Source: mayhew1995 for the ten above which no equation is sure; the rest ours. */
export const ZONE_TOP = { low: 5, middle: 10, high: 30 } as const;

/** @returns the zone of so many repetitions, those in reserve included */
export function zoneOf(reps: number): Exclude<Zone, "hold"> {
  return reps <= ZONE_TOP.low ? "low" : reps <= ZONE_TOP.middle ? "middle" : "high";
}
