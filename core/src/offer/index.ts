export * from "./admit.ts";
export * from "./clearance.ts";
export type { Bound, Ceiling, Origin, Share } from "./combine.ts";
export type { Effort } from "./dose-words.ts";
export { gradesOf } from "./grade.ts";
export { type LimitsOnDay, letterOf, limitData, limitsOn } from "./limits.ts";
export { OFFER_CODES, type OfferCode } from "./reasons.ts";
export { effortCeiling, type MayPrint, mayPrint } from "./screening.ts";
