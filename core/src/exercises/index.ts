export * from "./catalogue.ts";
export * from "./ladder.ts";
