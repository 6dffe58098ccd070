import type { Json, Reason } from "../model/index.ts";

/**
 * What was made of a cell that does not stand there as Stave would write it; shown before it is taken. Data: column,
 * found: as it stood, and what is listed.
 */
export const RECORD_CODES = [
  /** read: a day */
  "record/date-read",
  /** read: the range that a spreadsheet had made a date of */
  "record/range-read",
  /** read: seconds, since the movement is held */
  "record/as-seconds",
  /** read: repetitions of each side, since the movement has sides */
  "record/each-side",
  /** a set to the last repetition that went: reserve 0 */
  "record/all-out",
  /** read: load of each, half of what was written for both together */
  "record/halved",
  /** read: load on top of body mass, or taken off it as help */
  "record/as-added",
  "record/as-help",
  /** read: load of the only bar of the place */
  "record/only-bar",
  /** read: load of the only bar with as much on each side */
  "record/with-bar",
  /** read: what stands above in the same column */
  "record/from-above",
  /** read: sets × repetitions from two columns */
  "record/sets-joined",
  /** read: loads and repetitions, which stood in one cell */
  "record/load-parted",
  /** read: the first word of a row of sums, which is left out */
  "record/sum-left-out",
  /** line above the headings; it is left out */
  "record/title-left-out",
  /** read: minutes from start to end; night: the end is of the next day */
  "record/lasted",
  /** read: done, and no number was entered: as asked */
  "record/done-as-asked",
  /** body mass is not known, so what is moved in all is not */
  "record/mass-missing",
  /** read: the exercise that is called so too */
  "record/movement-read",
  /** read: name of the person as it is spelled in the roster */
  "record/name-read",
  /** read: the session it was taken for, planned: its day */
  "record/other-day",
  /** read: exercise done, from: exercise that stood there */
  "record/instead",
  /** a machine that no record of this person names: its numbers begin anew */
  "record/new-machine",
  /** where it hurt, in other words than those whose stresses are known */
  "record/place-in-words",
  /** days: how late a morning's answer came */
  "record/morning-late",
  /** a heading that nobody knows; its column is left out */
  "record/column-left-out",
  /** read: the set as it stood until now; the new word replaces it */
  "record/corrected",
] as const;
export type RecordCode = (typeof RECORD_CODES)[number];

/** What is asked, and nothing of the row is taken until it is answered. */
export const RECORD_PROBLEMS = [
  "record/no-day",
  "record/no-person",
  "record/either-day",
  "record/person-unknown",
  "record/person-maybe",
  "record/person-two",
  "record/before-birth",
  "record/in-future",
  "record/heading-twice",
  "record/no-heading",
  "record/loads-of-sets",
  "record/no-session",
  "record/which-session",
  "record/two-at-once",
  "record/slot-gone",
  "record/movement-unknown",
  "record/not-in-session",
  "record/nothing-said",
  "record/result",
  "record/turned",
  "record/range-done",
  "record/too-many",
  "record/so-many",
  "record/amount",
  "record/not-sided",
  "record/side",
  "record/set-number",
  "record/load",
  "record/load-doubt",
  "record/load-kind",
  "record/load-far",
  "record/unit",
  "record/per-hand",
  "record/bar-weight",
  "record/band-unknown",
  "record/machine-missing",
  "record/reserve",
  "record/technique",
  "record/pain",
  "record/morning",
  "record/no-pain-before",
  "record/effort",
  "record/minutes",
  "record/time",
  "record/end-alone",
  "record/end-before-start",
  "record/end-differs",
  "record/outside",
  "record/pressure",
  "record/ended",
  "record/run-end",
  "record/because",
  "record/differs",
  "record/asked",
] as const;
export type RecordProblem = (typeof RECORD_PROBLEMS)[number];

/** A cell that was read, perhaps repaired, or what is asked about it. */
export type Taken<T> =
  | { readonly ok: true; readonly value: T; readonly repairs: readonly Repair[] }
  | { readonly ok: false; readonly ask: RecordProblem; readonly allowed?: string; readonly maybe?: string };

export interface Repair {
  readonly code: RecordCode;
  readonly data: Readonly<Record<string, Json>>;
}

export function taken<T>(value: T, ...repairs: readonly Repair[]): Taken<T> {
  return { ok: true, value, repairs };
}

export function ask(
  ask: RecordProblem,
  more: { readonly allowed?: string; readonly maybe?: string } = {},
): Taken<never> {
  return { ok: false, ask, ...more };
}

export function repair(code: RecordCode, read: Json): Repair {
  return { code, data: { read } };
}

/** @returns the repair as a reason that says where and what */
export function shown({ code, data }: Repair, column: string, found: string): Reason {
  return { code, data: { column, found, ...data } };
}
