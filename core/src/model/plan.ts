import type { Load } from "../units.ts";
import type { Dose } from "./dose.ts";
import type { ExerciseId } from "./exercise.ts";
import type { Json } from "./finding.ts";
import type { SlotKey } from "./programme.ts";

/** A reason as data; its sentence is in text/. */
export interface Reason {
  readonly code: string;
  readonly data: Readonly<Record<string, Json>>;
}

/** How to reach a starting load when nothing is known: begin here, and let the repetitions decide. */
export interface FindLoad {
  readonly from?: Load;
  readonly because: Reason;
}

/** Most forms that one slot offers; a phone carries them all. Ours, no source. */
export const MOST_OFFERED = 12;

export interface PlanSlot {
  readonly key: SlotKey;
  readonly exercise: ExerciseId;
  readonly dose: Dose;
  readonly side?: "left" | "right";
  /** Per hand, total or setting, as the exercise's load meaning says. */
  readonly load?: Load;
  /** One for each set, where they are not all the same; the first is `load`. */
  readonly loads?: readonly Load[];
  readonly find?: FindLoad;
  readonly why: readonly Reason[];
  /** Easier and like forms this person may swap to, best first. */
  readonly offer: readonly ExerciseId[];
}

/**
 * Beats a minute for an effort. `miss` is how far one person in three lies from the equation that the upper end rests on,
 * 0 where the person's own highest pulse was measured.
 */
export interface PulseZone {
  readonly from: number;
  readonly to: number;
  readonly miss: number;
}

export interface PlanSession {
  readonly key: string;
  readonly title: string;
  readonly warmup: readonly {
    readonly exercise: ExerciseId;
    readonly dose: Dose;
    readonly load?: Load;
    readonly for?: SlotKey;
  }[];
  readonly blocks: readonly {
    readonly kind: "straight" | "pair" | "round";
    readonly restS?: number;
    readonly slots: readonly PlanSlot[];
  }[];
  readonly conditioning: readonly {
    readonly exercise: ExerciseId;
    readonly dose: Dose;
    readonly effort: "easy" | "steady" | "hard";
    /** Running and walking in turn: the name of the run and its level. Left out where another form took its place. */
    readonly run?: { readonly slot: SlotKey; readonly level: number };
    /** Left out where the person's pulse is not known or a medicine slows the heart: then talking tells. */
    readonly pulse?: PulseZone;
  }[];
  /** Slots that nobody can fill for this person, with the reasons. */
  readonly open: readonly { readonly key: SlotKey; readonly why: readonly Reason[] }[];
  readonly minutes: { readonly low: number; readonly high: number };
}

export interface PlanWeek {
  readonly week: number;
  readonly light: boolean;
  readonly sessions: readonly PlanSession[];
}

export interface PlanPhase {
  readonly key: string;
  readonly title: string;
  readonly score: { readonly must: number; readonly want: number; readonly bound: number; readonly proven: boolean };
  readonly weeks: readonly PlanWeek[];
}

/** A programme fitted to one person. Equal `made` gives equal bytes. */
export interface Plan {
  readonly id: string;
  readonly person: string;
  readonly programme: string;
  readonly made: {
    readonly engine: string;
    readonly catalogue: string;
    readonly state: string;
    readonly decisions: string;
  };
  readonly firmTo: { readonly phase: string };
  readonly notes: readonly Reason[];
  readonly phases: readonly PlanPhase[];
}
