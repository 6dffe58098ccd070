/** All sentences, a file per language. Everything else holds ids and data. */

export { cautionsPage } from "./cautions-page.ts";
export { checksPage } from "./checks-page.ts";
export { cautionNotes } from "./en/cautions.ts";
export { listed, plural, printNumber, printSpan, runs } from "./en/number.ts";
export type { ProblemCode } from "./en/problems.ts";
export { REMEDY_IDS, type RemedyId } from "./en/remedies.ts";
export {
  minutesOf,
  printDate,
  printDuration,
  printHours,
  printIntervals,
  printLoad,
  printMinutes,
} from "./en/units.ts";
export { en, type Messages } from "./en.ts";
export { sayConflict, sayGains, sayPoints, sayWhyNot } from "./explain.ts";
export { type Names, namesFrom, type Say } from "./names.ts";
export { sayFinding, sayPlace, sayProblem, sayReason, sayRemedy, saySources } from "./say.ts";
