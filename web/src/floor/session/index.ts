/** One session as it runs: its course, what was said of it, what is on the screen. Pure; it knows no page and no disk. */
export * from "./course.ts";
export * from "./draft.ts";
export * from "./entry.ts";
