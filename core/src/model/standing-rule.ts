/** What a standing rule may take: the next load, or a wider range of repetitions. */
export const RULE_TAKES = ["load", "reps"] as const;
export type RuleTakes = (typeof RULE_TAKES)[number];

/**
 * A coach's word given beforehand: proposals that are sure enough are taken without asking. A rule is an author with
 * versions; a version never changes, and the last one counts. What no rule may touch does not stand in it: that is fixed.
 */
export interface StandingRule {
  readonly id: string;
  /** 1 = first. */
  readonly version: number;
  /** The coach who set it. */
  readonly by: string;
  /** Epoch milliseconds. */
  readonly at: number;
  /** Empty: it takes nothing any more. */
  readonly takes: readonly RuleTakes[];
  /** Least chance that what is asked will be done, 0.5 to 1. */
  readonly leastChance: number;
  /** Fewest sessions with which that chance rests. */
  readonly leastSessions: number;
  /** Largest step of a load, per cent of it. */
  readonly mostPercent: number;
}

/** @returns the last version of each rule, by id; one that takes nothing is over */
export function latestRules(rules: readonly StandingRule[]): readonly StandingRule[] {
  const last = new Map<string, StandingRule>();
  for (const rule of rules) if (rule.version > (last.get(rule.id)?.version ?? 0)) last.set(rule.id, rule);
  return [...last.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** @returns the last version of each rule that takes anything, by id */
export function rulesInForce(rules: readonly StandingRule[]): readonly StandingRule[] {
  return latestRules(rules).filter(({ takes }) => takes.length > 0);
}
