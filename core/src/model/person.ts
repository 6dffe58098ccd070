import type { Day, Weekday } from "../day.ts";
import type { Load, MassUnit } from "../units.ts";
import type { ExerciseId } from "./exercise.ts";
import type { Muscle } from "./muscle.ts";
import type { Pattern } from "./pattern.ts";
import type { SlotKey, Status } from "./programme.ts";
import type { Grade, Statement, StressTag } from "./stress.ts";

/** When a person can train: wall times of their place's zone, minutes after midnight. */
export interface Window {
  readonly day: Weekday;
  readonly from: number;
  readonly to: number;
  /** 0 = gladly … 4 = only if it must be. */
  readonly cost: number;
  readonly place?: string;
}

/** A rota that does not follow the week: which days of the cycle can be trained on, from an anchor day. */
export interface Cycle {
  readonly length: number;
  readonly anchor: Day;
  /** Days of the rota, 0 = first, with the hours of each and where, if it is elsewhere. */
  readonly days: readonly (Omit<Window, "day"> & { readonly day: number })[];
}

export type Side = "left" | "right" | "both";

/**
 * A clinician's written limit. After `to` it is not lifted: it stays and asks, until a review is recorded.
 *
 * `atMost` counts everything held at once (`total`) or what one hand holds (`hand`). `rest` takes an arm, a leg or
 * the trunk out of all loading. Without `movement` it covers every movement.
 */
export interface Limit {
  readonly kind: "load" | "rest" | "movement";
  readonly atMost?: Load;
  readonly applies?: "total" | "hand";
  readonly part?: "arm" | "leg" | "trunk";
  readonly side: Side;
  readonly movement?: ExerciseId | Pattern;
  readonly from: Day;
  readonly to: Day;
  readonly who: string;
  /** A recorded review that ends the limit. */
  readonly lifted?: { readonly on: Day; readonly who: string };
}

/** A statement from the cautions table, or one tag with a ceiling of its own. */
export interface Caution {
  readonly statement?: Statement;
  readonly tag?: StressTag;
  readonly ceiling?: Grade;
  readonly from: Day;
  /** On this day it asks again; it never lifts by itself. */
  readonly recheck: Day;
  readonly who: string;
}

/** What somebody did: the base of starting loads. Load undefined = body only; reps or seconds, each side if one-sided. */
export interface Lift {
  readonly exercise: ExerciseId;
  readonly load?: Load;
  readonly reps?: number;
  readonly holdS?: number;
  readonly reserve?: number;
  readonly on: Day;
}

export const OUTCOMES = ["no reason found", "start light to moderate", "ask a doctor first", "stop"] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** A dated screening outcome, entered by a coach. Without one that stands, nothing is printed for the person. */
export interface Screening {
  readonly outcome: Outcome;
  readonly on: Day;
  readonly until: Day;
  readonly by: string;
  /** A clinician's written agreement, which lets a person start after "ask a doctor first". */
  readonly agreed?: { readonly on: Day; readonly who: string };
  readonly effort?: "light" | "moderate" | "vigorous";
}

/** The coach's own hand: kept through every re-fit until unpinned. Only a limit beats it, and says so. */
export interface Pin {
  readonly slot: SlotKey;
  readonly exercise?: ExerciseId;
  readonly sets?: number;
}

/** What somebody did in seven days before the plan. */
export interface RecentWeek {
  /** Its first day. */
  readonly week: Day;
  /** Fractional sets of each muscle; one that is not named had none. */
  readonly sets: Readonly<Partial<Record<Muscle, number>>>;
}

/** Beats a minute. The highest is there only where it was measured, under the medicines that the person takes. */
export interface Pulse {
  readonly rest: number;
  readonly highest?: number;
  /** A medicine slows the heart, so that equations of age are wrong. */
  readonly slowed: boolean;
  readonly on: Day;
}

/** Days without training, both included. What falls into them falls away, unless the plan waits for the person. */
export interface Away {
  readonly from: Day;
  readonly to: Day;
  /** The weeks of the plan stand still and go on afterwards where they stood. */
  readonly waits?: true;
}

/** Why a session was missed: what follows is decided by it. */
export const MISS_CAUSES = ["ill", "tired", "busy", "pain", "away"] as const;
export type MissCause = (typeof MISS_CAUSES)[number];

/** The session of a day was missed. */
export interface Missed {
  /** Its day, as it was planned then. */
  readonly on: Day;
  readonly because: MissCause;
  /** The first day on which the person could train again; the next day when it is not said. */
  readonly back?: Day;
}

/** Windows that hold from a day to a day, both included, instead of the usual ones or the rota: a holiday, a course. */
export interface Instead {
  readonly from: Day;
  readonly to: Day;
  readonly windows: readonly Window[];
}

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly born: Day;
  readonly mass?: { readonly load: Load; readonly on: Day };
  readonly status: Status;
  readonly units: MassUnit;
  readonly place: string;
  readonly programme?: string;
  readonly windows: readonly Window[];
  readonly cycle?: Cycle;
  readonly minutes: number;
  /** Days a week wanted, when fewer than the windows offer. */
  readonly perWeek?: number;
  /** Where the person stands: ladder id to exercise id. */
  readonly rungs: Readonly<Record<string, ExerciseId>>;
  readonly lifts: readonly Lift[];
  readonly limits: readonly Limit[];
  readonly cautions: readonly Caution[];
  /** Things this person cannot do at all, in the words of the stress tags: "floor" means to get down and up. */
  readonly cannot: readonly StressTag[];
  readonly likes: readonly ExerciseId[];
  readonly dislikes: readonly ExerciseId[];
  readonly pins: readonly Pin[];
  readonly away: readonly Away[];
  readonly instead: readonly Instead[];
  readonly missed?: readonly Missed[];
  readonly screening?: Screening;
  /** Weeks before the plan, in any order. */
  readonly recent?: readonly RecentWeek[];
  readonly pulse?: Pulse;
  readonly note?: string;
}
