export { type KnownEvent, readCalendar } from "./read-calendar.ts";
export { toInstant, wallTime } from "./to-instant.ts";
export * from "./write-calendar.ts";
