export * from "./brzycki.ts";
export * from "./epley.ts";
export * from "./one-rep-max.ts";
export * from "./reps-to-failure.ts";
