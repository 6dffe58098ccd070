import type { About } from "./about.ts";
import { refuseOutside } from "./refuse.ts";

/** The rule of a practice, by the clock on the wall; nobody was studied for it. */
export const NOTICE_GIVEN: About = { source: "ours", who: "anybody: it reads a clock and a rule" };

/** A session that was called off, all in minutes on the wall clock of the place, from any one zero. */
export interface CalledOff {
  readonly sessionMin: number;
  readonly calledOffMin: number;
  /** Hours of notice that the rule asks for, 0 to 336. */
  readonly ruleH: number;
  readonly by: "person" | "coach";
  readonly because: "ill" | "other";
  /** Whether the rule lets illness off. */
  readonly illIsFree: boolean;
  /** Sessions left in the pack before, 0 to 500. */
  readonly left: number;
}

export interface Notice {
  /** Wall hours before the session; under 0 after it began. */
  readonly hours: number;
  readonly inTime: boolean;
  /** Sessions that it costs. It is no session done, whatever it costs. */
  readonly costs: 0 | 1;
  readonly left: number;
}

/**
 * Whether a session was called off in time and what that costs, by the clock on the wall: at a change of the clocks the
 * hours that went by are others, and the rule does not count them. What the coach calls off never costs anything.
 *
 *   in time = hours on the wall ≥ the rule's
 *
 * @throws RangeError outside the ranges above
 * @source ours
 * @example noticeGiven({ sessionMin: 2040, calledOffMin: 630, ruleH: 24, … }).hours //=> 23.5
 */
export function noticeGiven({ sessionMin, calledOffMin, ruleH, by, because, illIsFree, left }: CalledOff): Notice {
  refuseOutside("a notice", "the hours that the rule asks for", ruleH, 0, 336);
  refuseOutside("a notice", "the sessions left", left, 0, 500);
  const hours = (sessionMin - calledOffMin) / 60;
  refuseOutside("a notice", "the hours between", hours, -24 * 366, 24 * 366);
  const inTime = hours >= ruleH;
  const isFree = inTime || by === "coach" || (because === "ill" && illIsFree);
  const costs = isFree || left < 1 ? 0 : 1;
  return { hours, inTime, costs, left: left - costs };
}
