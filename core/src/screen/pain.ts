import type { BeforeAnswer } from "./before.ts";
import { reason } from "./reasons.ts";
import type { RuleName } from "./rule-name.ts";

/** A named rule for pain on a scale of 0 to 10: up to `free` go on, up to `most` hold the load, above it reduce. */
export interface PainRule extends RuleName {
  readonly free: number;
  readonly most: number;
}

/** The printed rules differ in the lower edge and agree on 5. */
export const PAIN_RULES: readonly PainRule[] = [
  { id: "pain monitoring, free to 2", dated: "2007", source: "silbernagel2007", free: 2, most: 5 },
  { id: "clinic page, free to 3", dated: "undated", source: "practice", free: 3, most: 5 },
];

/** What no rule of numbers is made for: a clinician looks first. */
export const PAIN_SIGNS = [
  "sudden injury",
  "night pain",
  "swelling",
  "locking",
  "numbness",
  "suspected fracture",
  "after surgery",
] as const;
export type PainSign = (typeof PAIN_SIGNS)[number];

export interface PainToday {
  /** During or just after the last session, 0 to 10. */
  readonly score: number;
  /** The morning after; undefined when it was not asked or the answer has not come. */
  readonly morning?: number;
  /** Whether pain or stiffness has risen from week to week. */
  readonly rising: boolean;
  readonly signs: readonly PainSign[];
}

function assertScore(score: number): void {
  if (!(score >= 0 && score <= 10)) {
    throw new RangeError(`Cannot judge pain as it must be from 0 to 10: current value is ${score}`);
  }
}

/**
 * What pain in one place asks of the work that loads it. The rule was made for tendons and the kneecap under a
 * clinician; with a sign that it is not made for, it is not used.
 *
 * @throws RangeError outside 0 to 10
 * @source silbernagel2007, practice
 */
export function painBefore(
  { score, morning, rising, signs }: PainToday,
  rule: PainRule = PAIN_RULES[0]!,
): BeforeAnswer {
  assertScore(score);
  if (morning !== undefined) assertScore(morning);
  if (signs.length > 0) return { before: "hold", because: [reason("before/pain-not-by-rule", { signs })] };
  const said = { score, morning: morning ?? null, rule: rule.id };
  const worst = Math.max(score, morning ?? 0);
  if (worst > rule.most || rising) {
    return { before: "hold", because: [reason("before/pain-reduce", { ...said, rising })] };
  }
  if (worst > rule.free) return { before: "soften", because: [reason("before/pain-hold", said)] };
  return { before: "go", because: [reason("before/pain-go", said)] };
}
