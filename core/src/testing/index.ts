export * from "./made-up-exercise.ts";
export * from "./made-up-person.ts";
export * from "./published.ts";
