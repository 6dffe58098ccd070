import type { Json, Reason } from "../model/index.ts";
import type { Load } from "../units.ts";

/**
 * What is proposed, and with what it rests. Each code names one sentence; its data are listed beside it. Loads are
 * { value, unit } in the meaning of the exercise; ranges are { from, to }; days are written YYYY-MM-DD.
 */
export const PROGRESS_CODES = [
  // What is proposed, or was decided.
  /** exercise or null, to, from: load now or null, percent: of the step, or null */
  "progress/go-to-load",
  /** exercise or null, from, to: ranges of repetitions */
  "progress/widen-range",
  /** exercise or null, sets, amount: as the dose says it */
  "progress/set-dose",
  /** exercise: instead, from: exercise or null */
  "progress/use-form",
  /** exercise or null, until or null */
  "progress/pause",
  /** where: a sign to stop everything */
  "progress/pause-all",
  /** exercise or null */
  "progress/resume",
  // With what it rests.
  /** exercise, goal: repetitions, over: repetitions, load or null, sessions: { on, reps, reserve or null } */
  "progress/two-for-two",
  /** from, to: loads, percent, most: per cent */
  "progress/step-fine",
  /** from, to, percent, most */
  "progress/step-too-large",
  /** from, to, percent, reps: done, needed: repetitions with the lighter that make up for the step */
  "progress/step-earned",
  /** most: per cent of today's best that limits allow; to, reps: about what to expect with it */
  "progress/share-unknown",
  /** load: the heaviest here that limits leave */
  "progress/nothing-heavier",
  /** load, reps: about what to expect with it */
  "progress/expect",
  /** where, howMuch: 0–10, on, exercise or null, hurt: id of the record */
  "progress/pain",
  /** exercise, tags */
  "progress/shares-stress",
  /** where: a sign to stop everything */
  "progress/stop-sign",
] as const;
export type ProgressCode = (typeof PROGRESS_CODES)[number];

export function reason(code: ProgressCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}

/** @returns the load as plain data, null when there is none */
export function plain(load: Load | undefined): Json {
  return load === undefined ? null : { value: load.value, unit: load.unit };
}
