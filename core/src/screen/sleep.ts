import type { BeforeAnswer } from "./before.ts";
import { reason } from "./reasons.ts";
import type { RuleName } from "./rule-name.ts";

/** A named rule for short nights: under so many hours of sleep today's work is offered softer. */
export interface SleepRule extends RuleName {
  readonly under: number;
}

/** Common practice, no source. */
export const SLEEP_RULES: readonly SleepRule[] = [
  { id: "short night, under 5 h", dated: "undated", source: "practice", under: 5 },
];

/**
 * Whether a short night softens today.
 *
 * @param hours slept last night, 0 to 24
 * @throws RangeError outside
 * @source practice
 */
export function sleepBefore(hours: number, rule: SleepRule = SLEEP_RULES[0]!): BeforeAnswer {
  if (!(hours >= 0 && hours <= 24)) {
    throw new RangeError(`Cannot judge a night as it must be 0 to 24 hours: current value is ${hours}`);
  }
  return hours < rule.under
    ? { before: "soften", because: [reason("before/slept-little", { hours, limit: rule.under, rule: rule.id })] }
    : { before: "go", because: [] };
}
