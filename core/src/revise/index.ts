export * from "./dates-for.ts";
export * from "./plan-for.ts";
