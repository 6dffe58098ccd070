import type { Status } from "../model/index.ts";
import type { SourceId } from "../sources.ts";

/**
 * A named rule for when a light week comes. What is printed conflicts: competitors take one by the calendar, every
 * 5.6 ± 2.3 weeks; coaches asked for their agreement say that it is there to clear fatigue, whenever that shows. No trial
 * read says which is better. The first stands for people past their first months, since competitors were asked; the
 * second for novices. Signs bring it forward under both.
 */
export interface LightRule {
  readonly id: "every sixth week" | "when it shows";
  readonly sources: readonly SourceId[];
  /** Hard weeks running after which the next one is light, signs or not. */
  readonly hardWeeks: number;
}

/** Five: the mean of 5.6 weeks from one light week to the next. Eight: mean + SD is 7.9. @source rogerson2024, bell2023 */
export const LIGHT_RULES: readonly LightRule[] = [
  { id: "every sixth week", sources: ["rogerson2024"], hardWeeks: 5 },
  { id: "when it shows", sources: ["bell2023", "rogerson2024"], hardWeeks: 8 },
];

/** @returns the rule that stands for a person, and the other */
export function lightRulesFor(status: Status): readonly [LightRule, LightRule] {
  const [calendar, signs] = LIGHT_RULES as readonly [LightRule, LightRule];
  return status === "novice" ? [signs, calendar] : [calendar, signs];
}

/** A light week sooner than so many weeks after another rest is one too many: mean − SD is 3.3. Source: rogerson2024. */
export const LEAST_APART = 3;
