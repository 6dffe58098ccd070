import type { Day } from "../day.ts";
import type { Disease, Effort, Sign } from "./answers.ts";
import type { Consent } from "./consent.ts";
import type { GlucoseReading } from "./glucose.ts";
import type { IllSign } from "./illness.ts";
import type { PainToday } from "./pain.ts";
import type { Pressure } from "./pressure.ts";
import type { StopSign } from "./stop-list.ts";

/** What is new since last time. An empty object means that the question was asked and nothing is. */
export interface NewToday {
  readonly disease?: readonly Disease[];
  readonly signs?: readonly Sign[];
  readonly wanted?: Effort;
  /** Whether the person has been active by the question of the screening since then. */
  readonly active?: boolean;
  /** Anything else, in the person's words: a medicine, an operation, a condition that is on no list. */
  readonly other?: readonly string[];
}

/** Where it hurts, in the person's words, and how much. */
export interface PainPlace extends PainToday {
  readonly where: string;
}

/** What a person says and what is measured before one session. What was not asked or measured is undefined. */
export interface Today {
  readonly on: Day;
  readonly by: string;
  readonly news?: NewToday;
  readonly consents: readonly Consent[];
  readonly pressure?: { readonly readings: readonly [Pressure, ...Pressure[]]; readonly note: boolean };
  readonly glucose?: GlucoseReading;
  readonly pain: readonly PainPlace[];
  readonly ill?: readonly IllSign[];
  /** After an illness of the airways: the last day with a symptom. */
  readonly lastIll?: Day;
  /** Hours of sleep last night. */
  readonly slept?: number;
  readonly stop: readonly StopSign[];
}
