import type { About } from "./about.ts";

/** On whom the effect of weekly sets on muscle size was gathered. */
export const WEEKLY_SETS_GROWTH: About = { source: "schoenfeld2017volume", who: "15 studies with 34 groups" };

/** Sets a week up to which the line was drawn through: groups of fewer than 5, 5 to 9, 10 and more. Ours, from those. */
const MOST = 20;

/**
 * How much more a muscle grew, on the mean of the studies, with more sets a week. A line through groups, not a promise
 * for one person: returns fall as sets rise (pelland2024).
 *
 *   effect size = 0.023 × sets, growth in per cent = 0.37 × sets
 *
 * @param moreSets sets a week more, 0 to 20
 * @returns effect size and per cent of muscle size over the length of those studies
 * @throws RangeError outside 0 to 20
 * @source schoenfeld2017volume
 * @example growthOfMoreSets(6).percent.toFixed(2) //=> "2.22"
 */
export function growthOfMoreSets(moreSets: number): { readonly effect: number; readonly percent: number } {
  if (!(moreSets >= 0 && moreSets <= MOST)) {
    throw new RangeError(
      `Cannot tell the growth as sets more must be from 0 to ${MOST} a week: current value is ${moreSets}`,
    );
  }
  return { effect: 0.023 * moreSets, percent: 0.37 * moreSets };
}

/** Weekly sets of one muscle in trained young men, as one review classes them. */
export type VolumeClass = "low" | "moderate" | "high";

/**
 * The class of a weekly number of sets: under 12 low, 12 to 20 moderate, over 20 high.
 *
 * @throws RangeError for a negative or unknown number
 * @source bazValle2022
 * @example volumeClass(15) //=> "moderate"
 */
export function volumeClass(sets: number): VolumeClass {
  if (!(sets >= 0))
    throw new RangeError(`Cannot class weekly sets as they must be 0 or more: current value is ${sets}`);
  return sets < 12 ? "low" : sets <= 20 ? "moderate" : "high";
}

/**
 * The most sets of a muscle in the next cycle of about four weeks: up to a fifth more, whole sets.
 *
 * @param sets weekly sets now, 0 or more
 * @throws RangeError for a negative or unknown number
 * @source iusca2021
 * @example mostSetsNext(12) //=> 14
 */
export function mostSetsNext(sets: number): number {
  if (!(sets >= 0))
    throw new RangeError(`Cannot tell the most sets as sets now must be 0 or more: current value is ${sets}`);
  return Math.floor((sets * 6) / 5);
}
