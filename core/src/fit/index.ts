export type { FitInput } from "./build.ts";
export type { Candidate, SetAside, SlotChoices } from "./candidates.ts";
export { doseFor, takesLoad } from "./dose-for.ts";
export type { EasyItem } from "./easy-work.ts";
export * from "./explain.ts";
export { type FittedBlock, type FittedPhase, type FittedSession, type FittedSlot, fitPhase } from "./fit.ts";
export { FIT_CODES, type FitCode } from "./reasons.ts";
export type { Line } from "./task.ts";
