import type { Capacity } from "../capacity/index.ts";
import type { Day } from "../day.ts";
import type { SlotSession } from "../measures/index.ts";
import type { Dose, Exercise, ExerciseId, Muscle, Patch, Person, PlanSlot, Reason } from "../model/index.ts";
import type { Load } from "../units.ts";
import type { MuscleCap } from "./first-exposure.ts";
import type { Lowered } from "./full-again.ts";
import type { HarderForm } from "./harder-forms.ts";

/** All that the next dose of one slot depends on. */
export interface DoseState {
  readonly today: Day;
  readonly dayOf: (at: number) => Day;
  readonly person: Person;
  readonly exercise: Exercise;
  /** As it is asked next. */
  readonly slot: PlanSlot;
  /** As the programme asks it: a heavier load goes back to its range. */
  readonly home: Dose;
  /** What was recorded of the slot, in the plan's order. */
  readonly history: readonly SlotSession[];
  /** Whether the person may do the form here today; nothing rises where not. */
  readonly admitted: boolean;
  /** Loads that exist here and that no limit forbids, easiest first; empty where the form takes none. */
  readonly loads: readonly Load[];
  /** Whole per cent of today's best that limits allow, where today's best is not known. */
  readonly shareAtMost: number | undefined;
  /** Of the form, as of the last session of it. */
  readonly capacity: Capacity;
  /** The same without the last session of the form. */
  readonly capacityBefore: Capacity;
  /** The next forms of the ladder that this person may do here, with what each asks first. */
  readonly harder: readonly HarderForm[];
  /** Easier forms that the slot offers, nearest first. */
  readonly easier: readonly ExerciseId[];
  /** Days on which it was said that illness kept the person away. */
  readonly sickOn: readonly Day[];
  /** Muscles that the form drives and that are new or back, with what they may do. */
  readonly caps: readonly MuscleCap[];
  /** All muscles that the form drives, where other movements kept each of them trained; else none. */
  readonly inUse: readonly Muscle[];
  /** Whether a dose stands that was lowered for a comeback or a first session, and from which of its sessions on. */
  readonly lowered: Lowered | undefined;
  /** Whether one more set keeps each muscle's week within its growth; undefined where that is not known. */
  readonly oneMoreSet: { readonly ok: boolean; readonly because: Reason } | undefined;
}

/** How sure it is that what is asked next will be done, and from how many sessions that is known. */
export interface Certainty {
  /** 0 to 1. */
  readonly chance: number;
  readonly sessions: number;
}

/** What one way up says of a slot. */
export interface NextDose {
  readonly kind: "up" | "stay" | "down" | "unknown";
  readonly patch?: Patch;
  /** With what it rests; for what is unknown, what is missing. */
  readonly evidence: readonly Reason[];
  readonly certainty?: Certainty;
  /** What would have been asked, and why it is not. */
  readonly refused: readonly Reason[];
  /** Other ways to take the step. */
  readonly others: readonly Patch[];
  /** Counter of the first session on which it rests. */
  readonly since?: number;
}

export function stay(refused: readonly Reason[] = []): NextDose {
  return { kind: "stay", evidence: [], refused, others: [] };
}
