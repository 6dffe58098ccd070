export * from "./catalogue.ts";
export * from "./gate.ts";
export * from "./ladder.ts";
export * from "./near-names.ts";
export { readOwnExercises } from "./own-read.ts";
export { OWN_PROBLEMS } from "./own-rules.ts";
export * from "./page.ts";
