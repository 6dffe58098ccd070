import type { Json, Reason } from "../model/index.ts";
import type { Load } from "../units.ts";

/**
 * Why a starting load is what it is, why it must be found, and why none here will do. Each code names one sentence; its
 * data are listed beside it. Loads are { value, unit } in the meaning of the exercise; days are written YYYY-MM-DD. A
 * record is { exercise, load or null for the body alone, reps, reserve or null when not said, on }.
 */
export const LOAD_CODES = [
  // A load.
  /** record, low and high: the 1RM by the equations, moved: true when they include body mass, percent, up: the next load here or null */
  "loads/from-record",
  /** record, asked: repetitions with those in reserve; no equation takes so many, and the record says it itself */
  "loads/as-on-record",
  /** load */
  "loads/as-written",
  /** load: written, and the place does not list what it has */
  "loads/written-not-listed",
  /** asked, down, up: neighbours here, null where there is none */
  "loads/written-not-here",
  /** asked, chosen: the hardest that a limit lets through */
  "loads/written-over-limit",
  // To be found.
  /** from: the lightest here for a beginner, or null */
  "loads/nothing-known",
  /** record, from */
  "loads/record-over-ten-reps",
  /** record, weeks, from */
  "loads/record-old",
  /** reps: asked, with those in reserve; from */
  "loads/reps-beyond-table",
  /** from: what was used last, or the lightest for a beginner, or null */
  "loads/not-in-reps",
  /** from; a share of the 1RM is the limit and the 1RM is not known */
  "loads/share-unknown",
  /** from; help and added load need the body mass */
  "loads/body-mass-unknown",
  /** from; pins of one machine mean nothing on another */
  "loads/other-machine",
  /** labels, weakest first */
  "loads/bands",
  /** no data: the place does not list its loads for this */
  "loads/not-listed",
  // None here will do.
  /** lightest, aim: the load that was wanted */
  "loads/lightest-too-heavy",
  /** lightest */
  "loads/lightest-over-limit",
  /** no data: nobody knows the true load of a band, a stack or a machine that helps */
  "loads/unknown-under-limit",
  /** heaviest, record, least: repetitions possible, asked: repetitions with those in reserve */
  "loads/too-light-by-record",
  /** as above, percent: share of the person's own 1RM */
  "loads/too-light-by-maximum",
  /** as above, percent: share of one leg's 1RM, worked from the squat in record */
  "loads/too-light-by-squat",
] as const;
export type LoadCode = (typeof LOAD_CODES)[number];

export function reason(code: LoadCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}

/** @returns the load as plain data, null when there is none */
export function plain(load: Load | undefined): Json {
  return load === undefined ? null : { value: load.value, unit: load.unit };
}
