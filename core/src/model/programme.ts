import type { MassUnit } from "../units.ts";
import type { Dose, Span, WayUp } from "./dose.ts";
import type { ExerciseId } from "./exercise.ts";
import type { Muscle } from "./muscle.ts";
import type { Pattern } from "./pattern.ts";

export const GOALS = ["general", "strength", "size", "endurance", "power"] as const;
export type Goal = (typeof GOALS)[number];
export const STATUSES = ["novice", "intermediate", "advanced"] as const;
export type Status = (typeof STATUSES)[number];

/** Permanent name of a slot, unique in its programme. Records and decisions use it, never a path. */
export type SlotKey = string;

/** From this week of the phase on (1 = first), until the next change, the slot asks for this dose instead. */
export interface DoseChange {
  readonly week: number;
  readonly dose: Dose;
}

export interface Slot {
  readonly slot: SlotKey;
  readonly pattern: Pattern;
  /** What it is for; without it, the muscles of the first choice. */
  readonly muscles?: readonly Muscle[];
  readonly first: ExerciseId;
  /** How many steps of the ladder below and above the first choice the coach finds right. */
  readonly down: number;
  readonly up: number;
  readonly dose: Dose;
  readonly changes?: readonly DoseChange[];
  readonly way: WayUp;
  readonly note?: string;
}

/** Slots done in turn, one set of each, with `restS` after every turn. All have the same number of sets. */
export interface Pair {
  readonly pair: readonly Slot[];
  readonly restS?: number;
}
export interface Round {
  readonly round: readonly Slot[];
  readonly restS?: number;
}
export type Block = Slot | Pair | Round;

/** Before the work: something easy for a time, or lighter sets that lead up to a slot's working load. */
export type WarmUp =
  | { readonly do: ExerciseId; readonly dose: Dose; readonly or?: readonly ExerciseId[] }
  | { readonly ramp: SlotKey; readonly sets: number };

interface AfterWork {
  readonly do: ExerciseId;
  readonly effort: "easy" | "steady" | "hard";
  readonly or?: readonly ExerciseId[];
}

export interface TimedConditioning extends AfterWork {
  readonly dose: Dose;
}

/** Running and walking in turn. Entries with one name are one run, so its level is one, whichever session it is in. */
export interface RunWalk extends AfterWork {
  readonly slot: SlotKey;
  /** The level to begin with. */
  readonly runWalk: number;
}

export type Conditioning = TimedConditioning | RunWalk;

export interface Session {
  readonly key: string;
  readonly title: string;
  readonly minutes: number;
  readonly warmup?: readonly WarmUp[];
  readonly work: readonly Block[];
  readonly conditioning?: readonly Conditioning[];
}

export interface Phase {
  readonly key: string;
  readonly title: string;
  readonly weeks: number;
  /** Weeks of this phase (1 = first) with half the sets and one more in reserve. */
  readonly light?: readonly number[];
  readonly sessions: readonly Session[];
}

/** The coach's weekly rule. Muscles without a band take the one of their status. */
export interface WeeklyRule {
  readonly sets?: Readonly<Partial<Record<Muscle, Span>>>;
  /** Muscles whose band must hold and is not only wanted. */
  readonly must?: readonly Muscle[];
  /** Hours between two sessions that load the same muscle hard. */
  readonly gap?: number;
}

export interface Silence {
  readonly check: string;
  readonly slot?: SlotKey;
  readonly reason: string;
}

/** A programme as its file says it: the same names and the same nesting, so that one path serves both. */
export interface Programme {
  readonly stave: 1;
  readonly id: string;
  readonly title: string;
  readonly version: number;
  readonly about?: string;
  readonly goal: Goal;
  readonly status: Status;
  readonly units: MassUnit;
  readonly weekly?: WeeklyRule;
  readonly silence?: readonly Silence[];
  readonly phases: readonly Phase[];
}

/** @returns the slots of a block, in the order they are done */
export function slotsOf(block: Block): readonly Slot[] {
  if ("pair" in block) return block.pair;
  if ("round" in block) return block.round;
  return [block];
}

/** @returns the dose of a slot in a week of its phase (1 = first), before any light week is taken off */
export function doseInWeek(slot: Slot, week: number): Dose {
  let dose = slot.dose;
  for (const change of slot.changes ?? []) if (change.week <= week) dose = change.dose;
  return dose;
}
