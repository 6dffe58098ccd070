export * from "./plan-for.ts";
