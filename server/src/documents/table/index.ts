export { type LogInput, logTable } from "./log-table.ts";
export { type PlanTableInput, planTable } from "./plan-table.ts";
export { type RosterLine, rosterTable } from "./roster-table.ts";
