import type { SourceId } from "../sources.ts";

/** Mean seconds of four trunk holds in one group of people. */
export interface TrunkHolds {
  readonly source: SourceId;
  readonly who: string;
  readonly flexorS: number;
  readonly extensorS: number;
  readonly rightSideS: number;
  readonly leftSideS: number;
}

/**
 * Holds of the trunk: the two groups differ so much that a ratio which is usual in one would alarm in the other, so ratios
 * are shown and nobody is warned by them. The first two rows are from memory.
 *
 * @source mcgill1999, anderson2014
 */
export const TRUNK_HOLDS: readonly TrunkHolds[] = [
  { source: "mcgill1999", who: "31 young men", flexorS: 144, extensorS: 146, rightSideS: 94, leftSideS: 97 },
  { source: "mcgill1999", who: "44 young women", flexorS: 149, extensorS: 189, rightSideS: 72, leftSideS: 77 },
  {
    source: "anderson2014",
    who: "76 women and 40 men of 18 to 55",
    flexorS: 160,
    extensorS: 101,
    rightSideS: 54,
    leftSideS: 55,
  },
];

/**
 * The ratios that are looked at between the holds.
 *
 * @returns flexor over extensor, the mean side over extensor, right over left
 * @throws RangeError unless all four times are over 0
 * @source mcgill1999
 * @example trunkRatios(TRUNK_HOLDS[2]!).flexorToExtensor.toFixed(2) //=> "1.58"
 */
export function trunkRatios(holds: Pick<TrunkHolds, "flexorS" | "extensorS" | "rightSideS" | "leftSideS">): {
  readonly flexorToExtensor: number;
  readonly rightToExtensor: number;
  readonly leftToExtensor: number;
  readonly rightToLeft: number;
} {
  const { flexorS, extensorS, rightSideS, leftSideS } = holds;
  if (!(flexorS > 0 && extensorS > 0 && rightSideS > 0 && leftSideS > 0)) {
    throw new RangeError("Cannot tell the ratios of trunk holds as all four times must be over 0");
  }
  return {
    flexorToExtensor: flexorS / extensorS,
    rightToExtensor: rightSideS / extensorS,
    leftToExtensor: leftSideS / extensorS,
    rightToLeft: rightSideS / leftSideS,
  };
}
