export * from "./published.ts";
