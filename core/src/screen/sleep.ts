import type { BeforeAnswer } from "./before.ts";
import { reason } from "./reasons.ts";

/** Under so many hours of sleep today's work is offered softer. Common practice, no source. */
export const LITTLE_SLEEP_HOURS = 5;

/**
 * Whether a short night softens today.
 *
 * @param hours slept last night, 0 to 24
 * @throws RangeError outside
 * @source practice
 */
export function sleepBefore(hours: number): BeforeAnswer {
  if (!(hours >= 0 && hours <= 24)) {
    throw new RangeError(`Cannot judge a night as it must be 0 to 24 hours: current value is ${hours}`);
  }
  return hours < LITTLE_SLEEP_HOURS
    ? { before: "soften", because: [reason("before/slept-little", { hours, limit: LITTLE_SLEEP_HOURS })] }
    : { before: "go", because: [] };
}
