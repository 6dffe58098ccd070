import type { SourceId } from "../sources.ts";

/** Seconds of a forearm plank held as long as possible: a quarter hold shorter than the first, a quarter longer than the last. */
export interface HoldQuartiles {
  readonly source: SourceId;
  readonly sex: "man" | "woman";
  readonly who: "students" | "student athletes";
  readonly quartersS: readonly [first: number, middle: number, last: number];
}

/**
 * Students only: no table by age was found for adults. Times are skewed, so quarters say more than a mean.
 *
 * @source brighamChase2014
 */
export const PLANK_QUARTERS: readonly HoldQuartiles[] = [
  { source: "brighamChase2014", sex: "woman", who: "students", quartersS: [63, 90, 121] },
  { source: "brighamChase2014", sex: "man", who: "students", quartersS: [77, 106, 128.5] },
  { source: "brighamChase2014", sex: "woman", who: "student athletes", quartersS: [73.5, 95, 122.5] },
  { source: "brighamChase2014", sex: "man", who: "student athletes", quartersS: [84, 110, 135] },
];

/** Mean and standard deviation in 471 other students, whose men held longer. @source strand2014 */
export const PLANK_MEANS: Readonly<Record<"man" | "woman", { readonly meanS: number; readonly sdS: number }>> = {
  man: { meanS: 124, sdS: 72 },
  woman: { meanS: 83, sdS: 63 },
};

/** Where a value stands among people of its table. */
export type Quarter = "lowest quarter" | "middle half" | "highest quarter";

/**
 * Where a plank time stands among students: a test of somebody's best, and no target for training.
 *
 * @param seconds 0 to 3600
 * @throws RangeError outside
 * @source brighamChase2014
 * @example plankQuarter("man", 60) //=> "lowest quarter"
 */
export function plankQuarter(sex: "man" | "woman", seconds: number, who: HoldQuartiles["who"] = "students"): Quarter {
  if (!(seconds >= 0 && seconds <= 3600)) {
    throw new RangeError(`Cannot place a plank as seconds must be from 0 to 3600: current value is ${seconds}`);
  }
  const [first, , last] = PLANK_QUARTERS.find((row) => row.sex === sex && row.who === who)!.quartersS;
  return seconds < first ? "lowest quarter" : seconds > last ? "highest quarter" : "middle half";
}

/** Standard deviations above the mean of 471 students. @source strand2014 */
export function plankZ(sex: "man" | "woman", seconds: number): number {
  if (!(seconds >= 0 && seconds <= 3600)) {
    throw new RangeError(`Cannot place a plank as seconds must be from 0 to 3600: current value is ${seconds}`);
  }
  const { meanS, sdS } = PLANK_MEANS[sex];
  return (seconds - meanS) / sdS;
}
