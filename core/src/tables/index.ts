export * from "./load-bands.ts";
export * from "./reps-at-percent.ts";
export * from "./reps-at-percent-book.ts";
export * from "./reps-at-percent-chart.ts";
export * from "./reps-at-percent-spread.ts";
export * from "./statements.ts";
export * from "./weekly-sets.ts";
