export * from "./commented-programme.ts";
export * from "./doses.ts";
export * from "./made-up-exercise.ts";
export * from "./made-up-person.ts";
export * from "./made-up-programme.ts";
export * from "./printed-movements.ts";
export * from "./published.ts";
export * from "./test-check.ts";
