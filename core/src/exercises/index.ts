export * from "./catalogue.ts";
export * from "./gate.ts";
export * from "./ladder.ts";
export * from "./near-names.ts";
export * from "./page.ts";
