/** What the record asks a coach to decide: the next dose, and what waits because it hurts. */
export { type SlotAhead, slotsAhead } from "./ahead.ts";
export { COMEBACK_RULES, type ComebackRule } from "./come-back.ts";
export type { Certainty, DoseState, NextDose } from "./dose-state.ts";
export { LIGHT_RULES, type LightRule } from "./light-rules.ts";
export { lightWaiting } from "./light-waiting.ts";
export { type LightWeekInput, type LightWeekSaid, lightWeek } from "./light-week.ts";
export { nextDose } from "./next-dose.ts";
export { runsNext } from "./next-run.ts";
export { type PainEdges, type PainOn, painOn } from "./pain.ts";
export type { ProgressInput } from "./progress-input.ts";
export { dosesFor, proposalsFor, type SlotDose, type Waiting } from "./proposals-for.ts";
export { PROGRESS_CODES, type ProgressCode } from "./reasons.ts";
export { statesOf } from "./state-of.ts";
export { type TellingSet, tellsMost } from "./tells-most.ts";
export { rangeOf, titleOf } from "./titles.ts";
export { twoForTwo } from "./two-for-two.ts";
export { unansweredPains, unansweredStop } from "./waiting-pains.ts";
