import type { Load } from "../units.ts";
import type { Dose } from "./dose.ts";
import type { ExerciseId } from "./exercise.ts";
import type { Json } from "./finding.ts";
import type { SlotKey } from "./programme.ts";
import type { RunEnd } from "./run-walk.ts";
import type { NotDone } from "./written-result.ts";

/** Which set of which slot of which session of which plan revision an event is about. */
export interface EventOf {
  /** Id of the plan revision that was on the screen. */
  readonly plan: string;
  /** Occurrence of a session: phase/week/session. */
  readonly session: string;
  readonly slot?: SlotKey;
  /** 0 = first. */
  readonly set?: number;
}

/** A value that nobody touched is stored as "as asked" or "not said", never as a reading. */
export type Untouched = "as asked";

/** What was done in one set. Left and right are kept apart where a set has sides. */
export interface SetDone {
  readonly exercise: ExerciseId;
  readonly reps?: number | Untouched | { readonly left?: number | Untouched; readonly right?: number | Untouched };
  readonly holdS?: number | Untouched | { readonly left?: number | Untouched; readonly right?: number | Untouched };
  /** In the unit in which it was entered, for ever; "none" also for what is no mass, as a band or a label. */
  readonly load: Load | Untouched | "none";
  readonly reserve: number | "not said";
  /** What pulled instead of a mass: a band by its name, or the label of a pin, which belongs to its machine. */
  readonly pulledBy?: { readonly band: string } | { readonly setting: number };
  /** Which machine; numbers of one never compare with those of another. */
  readonly machine?: string;
  /** What the coach saw; "lost" speaks against more, whatever the numbers say. */
  readonly technique?: "kept" | "lost";
  /** As it stood on paper, where it was typed in from there. */
  readonly written?: string;
}

export const SWAP_CAUSES = ["easier", "hurt", "equipment", "busy", "not said"] as const;
/** Why another form was done: too hard, it hurt, not there, or taken by others just then. */
export type SwapCause = (typeof SWAP_CAUSES)[number];

export const OUTSIDE_WORK = ["sport", "physiotherapy", "work", "other"] as const;
export type OutsideWork = (typeof OUTSIDE_WORK)[number];

export const NOTE_ABOUT = ["medicines", "illness", "other"] as const;
export type NoteAbout = (typeof NOTE_ABOUT)[number];

/** A change to a plan, on a slot key; it is applied before fit and survives every re-fit as a pin until undone. */
export type Patch =
  /** `exercise` is the form that the load or dose is for; without it, whatever stands in the slot. */
  | { readonly slot: SlotKey; readonly change: "load"; readonly load: Load; readonly exercise?: ExerciseId }
  | { readonly slot: SlotKey; readonly change: "reps"; readonly dose: Dose; readonly exercise?: ExerciseId }
  | { readonly slot: SlotKey; readonly change: "exercise"; readonly exercise: ExerciseId }
  /** Until the day before `until`, YYYY-MM-DD; without it, until it is resumed. */
  | { readonly slot: SlotKey; readonly change: "pause"; readonly until?: string }
  | { readonly slot: SlotKey; readonly change: "resume" }
  /**
   * A week of the plan becomes light, in place of the light week `instead`; `lighter` takes a tenth off the loads too.
   * It is said of the first slot of the week and is for all of it. Weeks are named phase/week.
   */
  | {
      readonly slot: SlotKey;
      readonly change: "light week";
      readonly week: string;
      readonly instead?: string;
      readonly lighter?: true;
    }
  /** A light week becomes a full one. */
  | { readonly slot: SlotKey; readonly change: "full week"; readonly week: string }
  | { readonly slot: SlotKey; readonly change: "run-walk"; readonly level: number };

/** A cut through a person's events: the highest counter of every device that was seen. */
export type Cut = Readonly<Record<string, number>>;

export interface Proposal {
  /** Made from what it is about, so that the same evidence gives the same proposal. */
  readonly proposal: string;
  readonly patch: Patch;
  /** What the plan says now, and with what it rests: reasons as data. */
  readonly evidence: readonly { readonly code: string; readonly data: Readonly<Record<string, Json>> }[];
  readonly cut: Cut;
  readonly engine: string;
}

/** Every kind that this version knows; unknown kinds are kept and carried along. */
export interface EventData {
  readonly "session-started": Readonly<Record<string, never>>;
  readonly "set-done": SetDone;
  readonly "set-left-out": { readonly because?: NotDone };
  /** How a run of a level of running and walking in turn ended. */
  readonly ran: { readonly level: number; readonly end: RunEnd };
  /** `where` is one of HURT_PLACES, or other words; `howMuch` is 0 to 10. */
  readonly hurt: { readonly where: string; readonly howMuch: number };
  readonly swapped: {
    readonly from: ExerciseId;
    readonly to: ExerciseId;
    readonly because: SwapCause;
  };
  /** Ending early needs no reason. */
  readonly "session-ended": { readonly early: boolean };
  /** A session that did not happen, and why, where it was said. Nothing of it is owed. */
  readonly missed: { readonly because?: NotDone };
  /** Effort of a whole session, 0 to 10, and its minutes. */
  readonly rated: { readonly effort: number | "not said"; readonly minutes: number };
  /** Work outside the plan, on the day of `at`. */
  readonly outside: {
    readonly what: OutsideWork;
    readonly minutes: number;
    readonly effort: number | "not said";
    readonly note?: string;
  };
  /** How much what hurt hurts on a morning after; `hurt` is the id of its event. `at` tells how late it was said. */
  readonly "next-morning": { readonly hurt: string; readonly howMuch: number };
  /** Blood pressure in mmHg, sitting, before or after a session: two series that never mix. */
  readonly pressure: {
    readonly systolic: number;
    readonly diastolic: number;
    readonly when: "before" | "after";
    readonly arm?: "left" | "right";
  };
  readonly noted: { readonly about: NoteAbout; readonly text: string };
  /** Replaces an event with nothing. */
  readonly struck: Readonly<Record<string, never>>;
  readonly accepted: Proposal & { readonly by: string };
  readonly changed: Proposal & { readonly by: string; readonly instead: Patch };
  readonly refused: Proposal & { readonly by: string };
  /** `cut` is what the coach could know when it was said. */
  readonly pinned: { readonly patch: Patch; readonly by: string; readonly cut?: Cut };
  /** Takes back an accepted, changed, refused or pinned event by its id. */
  readonly undone: { readonly decision: string; readonly by: string };
}
export type EventKind = keyof EventData;

/** What a person's devices may say. */
export const RECORD_KINDS = [
  "session-started",
  "set-done",
  "set-left-out",
  "ran",
  "hurt",
  "swapped",
  "session-ended",
  "missed",
  "rated",
  "outside",
  "next-morning",
  "pressure",
  "noted",
  "struck",
] as const satisfies readonly EventKind[];
/** What can be said about a session of which nothing was done. */
export const ASIDE_KINDS: ReadonlySet<string> = new Set<EventKind>(["missed", "next-morning", "noted", "pressure"]);
/** What only a coach may say. */
export const DECISION_KINDS = [
  "accepted",
  "changed",
  "refused",
  "pinned",
  "undone",
] as const satisfies readonly EventKind[];
export type DecisionKind = (typeof DECISION_KINDS)[number];

/**
 * Something that happened, written once and never altered. A correction is a new event that `replaces` an older one by
 * id; of rival corrections the highest (n, device, id) wins, and all are kept.
 *
 * Order is (n, device, id), a Lamport counter; `at` is what the device's clock said and orders nothing.
 */
export interface StaveEvent<Kind extends string = string> {
  readonly v: 1;
  readonly id: string;
  readonly person: string;
  readonly device: string;
  readonly n: number;
  /** Epoch milliseconds by the device's clock. */
  readonly at: number;
  readonly kind: Kind;
  readonly of?: EventOf;
  readonly replaces?: string;
  readonly data: Kind extends EventKind ? EventData[Kind] : Readonly<Record<string, Json>>;
}
