/**
 * The nouns. Words used everywhere, in code, files and on screens:
 *
 * slot     one place in a session: an intent, a first choice, a dose, a way to go up
 * dose     what is asked: sets × reps, hold, distance or time, per side or not, effort, rest, tempo
 * ladder   the easier-to-harder forms of one movement; a rung is one form on it
 * plan     a programme fitted to one person: every slot filled, dosed, with reasons
 * finding  what a check says of a readable programme; a problem is input that is wrong
 * caution  a body-region stress that a person must avoid, limit or watch
 * place    somewhere a person trains, with its equipment; a window is when they can
 * reserve  repetitions in reserve: how many more could have been done
 */
export { type BroughtProgramme, readBrought } from "./brought-read.ts";
export type * from "./bundle.ts";
export { canonicalJson, isStorable } from "./canonical-json.ts";
export * from "./cohort-read.ts";
export type { CsvRow } from "./csv-row.ts";
export * from "./decimal-column.ts";
export * from "./delimited.ts";
export * from "./dose.ts";
export * from "./dose-bounds.ts";
export * from "./dose-print.ts";
export * from "./dose-read.ts";
export { DOSE_PROBLEMS, type DoseProblem, type DoseProblemCode } from "./dose-scan.ts";
export * from "./equipment.ts";
export * from "./event.ts";
export * from "./event-order.ts";
export * from "./exercise.ts";
export { ALWAYS, dayPiece, given, idPiece, loadPiece, namePiece, readDay, tell, tellReversed } from "./file-pieces.ts";
export * from "./finding.ts";
export * from "./hurt.ts";
export { readLoad, readLoadRun } from "./load-text.ts";
export * from "./merge-events.ts";
export * from "./muscle.ts";
export { nameOnRoster, nameOnSheet, writtenAlike } from "./name-on-sheet.ts";
export * from "./near.ts";
export * from "./pattern.ts";
export * from "./person.ts";
export * from "./place.ts";
export * from "./place-read.ts";
export * from "./plan.ts";
export * from "./programme.ts";
export * from "./programme-edit.ts";
export * from "./programme-read.ts";
export { PROGRAMME_PROBLEMS } from "./programme-rules.ts";
export { DOWN_UNSAID, programmeJsonSchema, UP_UNSAID, wayUnsaid } from "./programme-schema.ts";
export * from "./pulse-message.ts";
export * from "./read-problems.ts";
export * from "./roster-read.ts";
export * from "./run-walk.ts";
export * from "./same-name.ts";
export { SPAN_PROBLEMS } from "./span-text.ts";
export * from "./standing-events.ts";
export * from "./standing-rule.ts";
export * from "./stress.ts";
export type * from "./stroke.ts";
export * from "./turned-range.ts";
export * from "./written-load.ts";
export * from "./written-result.ts";
export * from "./yaml-text.ts";
