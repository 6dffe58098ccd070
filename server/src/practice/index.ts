/** A practice: its people's files and records, and what core makes of them. */
export { Changes } from "./changes.ts";
export { type Filling, fillPractice } from "./fill.ts";
export * from "./practice.ts";
