/** Placing sessions on real days, exactly, with reasons; and dealing the slots of a week anew where days cannot help. */
export * from "./after-a-miss.ts";
export * from "./after-concussion.ts";
export * from "./after-misses.ts";
export * from "./explain.ts";
export * from "./muscle-mask.ts";
export * from "./place-sessions.ts";
export * from "./points.ts";
export { CALENDAR_CODES, type CalendarCode } from "./reasons.ts";
export * from "./recut.ts";
export * from "./recut-sessions.ts";
export * from "./score.ts";
export * from "./sessions-in-turn.ts";
export * from "./sessions-to-place.ts";
export type * from "./task.ts";
export * from "./ways-of-week.ts";
export * from "./week-of.ts";
export * from "./weeks-of.ts";
export * from "./windows-of.ts";
