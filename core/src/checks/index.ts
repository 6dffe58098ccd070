/** The rules that Stave knows about programmes. Each says what, where and what to do; words are in text/. */
export { CHECKS, type CheckId } from "./run/all.ts";
export type { Check, CheckInput, Facts } from "./run/check.ts";
export { identityOf } from "./run/identity.ts";
export { type Look, lookAt } from "./run/look.ts";
export { type Checked, checkProgramme, runChecks, type Silenced } from "./run/run-checks.ts";
