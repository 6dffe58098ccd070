/** One session as it runs: its course, what was said of it, what is on the screen. Pure; it knows no page and no disk. */
export * from "./bounds.ts";
export * from "./course.ts";
export * from "./draft.ts";
export * from "./entry.ts";
export * from "./say.ts";
export { asItStands } from "./stands.ts";
export * from "./strokes.ts";
export * from "./view.ts";
