import type { Load, MassUnit } from "../units.ts";
import type { Dose } from "./dose.ts";
import type { Exercise, ExerciseId } from "./exercise.ts";
import type { PlanSession, Reason } from "./plan.ts";
import type { SlotKey } from "./programme.ts";

/** What a phone needs of one form: how it is done, how it counts, which loads exist, what it stresses. */
export interface BundleExercise
  extends Pick<
    Exercise,
    "id" | "name" | "setUp" | "move" | "cues" | "eachSide" | "amounts" | "hold" | "loadMeaning" | "stress" | "needs"
  > {
  /** Loads that exist here and that no limit forbids, lightest first; empty where nothing is loaded. */
  readonly loads: readonly Load[];
  /** What was lifted last, by the record. */
  readonly last?: Load;
}

/** A planned session on its day. */
export interface BundleSession {
  /** The occurrence, phase/week/session: `session` of every event about it. */
  readonly id: string;
  /** YYYY-MM-DD */
  readonly day: string;
  /** Wall minutes after midnight. */
  readonly from: number;
  readonly title: string;
  readonly session: PlanSession;
}

/** A form that may take a slot's place, with the load to begin with. */
export interface OfferedForm {
  readonly exercise: ExerciseId;
  readonly load?: Load;
  /** What is asked of it, where that is not what the slot asks. */
  readonly dose?: Dose;
  readonly side?: "left" | "right";
  /** Lower is easier; forms without an order share a number. */
  readonly rung: number;
}

/** All that a phone needs to run the next sessions of one person with no network. */
export interface Bundle {
  readonly v: 1;
  readonly person: { readonly id: string; readonly name: string; readonly units: MassUnit };
  /** Id of the plan revision: `plan` of every event about it. */
  readonly plan: string;
  /** Highest counter that the plan has seen; a phone counts on from above it. */
  readonly n: number;
  /** Today and the days after, in order. */
  readonly sessions: readonly BundleSession[];
  readonly exercises: readonly BundleExercise[];
  /** For every slot, easier and like forms, closed under easier; at most 12. */
  readonly offers: readonly { readonly slot: SlotKey; readonly forms: readonly OfferedForm[] }[];
  /** Why there is no session to do: nobody may begin without a screening outcome that stands. */
  readonly withheld?: Reason;
  /** When to stop at once, as reasons. */
  readonly stops: readonly Reason[];
  /** Movements that wait, with the reason. */
  readonly paused: readonly { readonly slot: SlotKey; readonly because: Reason }[];
  /** Whom to call when a message has not been sent. */
  readonly call: string;
}
