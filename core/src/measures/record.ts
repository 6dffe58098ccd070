import type {
  Cut,
  EventData,
  ExerciseId,
  Patch,
  Proposal,
  RunEnd,
  SetDone,
  SlotKey,
  SwapCause,
} from "../model/index.ts";
import type { Load } from "../units.ts";

/** What was read of one side of a set, or the whole of it; undefined where nobody touched the value. */
export type Reading = { readonly both?: number } | { readonly left?: number; readonly right?: number };

/** One set as it was recorded. Values that nobody touched are absent: they are no readings. */
export interface SetRecord {
  /** 0 = first. */
  readonly set: number;
  readonly exercise: ExerciseId;
  readonly reps?: Reading;
  readonly holdS?: Reading;
  /** Absent where the load was left as asked; "none" where it was said that there was none. */
  readonly load?: Load | "none";
  /** What pulled instead of a mass. */
  readonly pulledBy?: SetDone["pulledBy"];
  /** Repetitions in reserve, where said. */
  readonly reserve?: number;
  /** Which machine, where said: its numbers are its own. */
  readonly machine?: string;
  readonly technique?: "kept" | "lost";
}

export interface SlotRecord {
  readonly slot: SlotKey;
  /** In order of their number; one for each set. */
  readonly sets: readonly SetRecord[];
  readonly leftOut: readonly number[];
  readonly swaps: readonly {
    readonly from: ExerciseId;
    readonly to: ExerciseId;
    readonly because: SwapCause;
  }[];
}

/** Pain that somebody noted. */
export interface HurtRecord {
  readonly id: string;
  readonly session?: string;
  readonly slot?: SlotKey;
  readonly set?: number;
  readonly where: string;
  /** 0 to 10. */
  readonly howMuch: number;
  readonly at: number;
  /** Its place in the order of events. */
  readonly n: number;
  readonly device: string;
}

/** A run of a level of running and walking in turn. */
export interface RunRecord {
  readonly session: string;
  /** The name of the run in the programme. */
  readonly slot: SlotKey;
  readonly level: number;
  readonly end: RunEnd;
  readonly at: number;
  readonly n: number;
}

/** Something said, with when and by what it was said. */
export interface Said<Kind extends "missed" | "rated" | "outside" | "next-morning" | "pressure" | "noted"> {
  readonly id: string;
  readonly session?: string;
  readonly at: number;
  readonly n: number;
  readonly device: string;
  readonly data: EventData[Kind];
}

/** One occurrence of a session, as far as it was recorded. */
export interface SessionRecord {
  /** phase/week/session */
  readonly session: string;
  /** Plan revision that was on the screen at its first event. */
  readonly plan: string;
  /** Epoch milliseconds of its first event, by the device's clock. */
  readonly at: number;
  /** Counter of its first event. */
  readonly n: number;
  readonly started: boolean;
  /** How many devices said what was done, where more than one did; each set counts once. */
  readonly devices?: number;
  readonly ended?: { readonly early: boolean };
  readonly slots: readonly SlotRecord[];
}

/** A coach's word that stands: not undone, and the last one on its proposal. */
export interface Decided {
  readonly id: string;
  readonly n: number;
  readonly at: number;
  readonly by: string;
  readonly kind: "accepted" | "changed" | "refused" | "pinned";
  /** The proposal that it answers; a pin answers none. */
  readonly proposal?: Proposal;
  /** What is applied; undefined for a refusal. */
  readonly patch?: Patch;
  /** What could be known when it was said. */
  readonly cut: Cut;
}

/** Everything that a person's events say. */
export interface RecordFold {
  /** In the order of their first events. */
  readonly sessions: readonly SessionRecord[];
  readonly hurts: readonly HurtRecord[];
  /** In order; the last word of each session and run. */
  readonly runs: readonly RunRecord[];
  /** Sessions that were said not to have happened, and of which nothing was recorded. The last word of each. */
  readonly missed: readonly Said<"missed">[];
  /** The last word on each session. */
  readonly ratings: readonly Said<"rated">[];
  readonly outside: readonly Said<"outside">[];
  readonly mornings: readonly Said<"next-morning">[];
  readonly pressures: readonly Said<"pressure">[];
  readonly notes: readonly Said<"noted">[];
  /** In order; later ones on the same slot win. */
  readonly decisions: readonly Decided[];
  readonly cut: Cut;
}
