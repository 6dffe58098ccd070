/** What somebody wrote down, on paper or in a table, as events: each repair shown, each doubt asked. */
export type { DateOrder } from "./dates.ts";
export * from "./read-records.ts";
export type * from "./record-input.ts";
export { PAPER_DEVICE } from "./scribe.ts";
export { RECORD_CODES, RECORD_PROBLEMS, type RecordCode, type RecordProblem } from "./taken.ts";
export type { PlannedDay } from "./visit.ts";
