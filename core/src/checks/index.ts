/** The rules that Stave knows about programmes. Each says what, where and what to do; words are in text/. */
export { CHECKS, type CheckId } from "./all.ts";
export type { Check, CheckInput, Facts } from "./check.ts";
export { identityOf } from "./identity.ts";
export { type Checked, checkProgramme, runChecks, type Silenced } from "./run-checks.ts";
