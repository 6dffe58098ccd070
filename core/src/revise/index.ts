export * from "./dates-for.ts";
export * from "./plan-for.ts";
export { PLAN_CODES, type PlanCode } from "./reasons.ts";
