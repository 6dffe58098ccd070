import type { SourceId } from "../sources.ts";

/** How hard, in five classes; the classes of one table must not be used with the measure of another. */
export const INTENSITIES = ["very light", "light", "moderate", "vigorous", "near the maximum"] as const;
export type Intensity = (typeof INTENSITIES)[number];

/** What the classes are cut by: per cent of heart-rate or uptake reserve, of the maxima, the 6–20 rating, METs. */
export const INTENSITY_MEASURES = [
  "% reserve",
  "% highest heart rate",
  "% highest uptake",
  "rating 6–20",
  "METs",
] as const;
export type IntensityMeasure = (typeof INTENSITY_MEASURES)[number];

/**
 * Where each class but the first begins, read half-open: the next class begins where one ends, so that nothing falls
 * between the printed whole numbers. Other printings cut vigorous at 84 % of the reserve, or near the maximum at 95 % of
 * the highest heart rate; three of four agree on these.
 *
 * @source garber2011
 */
export const INTENSITY_CUTS: {
  readonly source: SourceId;
  readonly from: Readonly<Record<IntensityMeasure, readonly [number, number, number, number]>>;
} = {
  source: "garber2011",
  from: {
    "% reserve": [30, 40, 60, 90],
    "% highest heart rate": [57, 64, 77, 96],
    "% highest uptake": [37, 46, 64, 91],
    "rating 6–20": [9, 12, 14, 18],
    METs: [2, 3, 6, 8.8],
  },
};

const MOST: Readonly<Record<IntensityMeasure, number>> = {
  "% reserve": 100,
  "% highest heart rate": 100,
  "% highest uptake": 100,
  "rating 6–20": 20,
  METs: 30,
};

/**
 * The class of an effort.
 *
 * @param value 0 to 100 per cent, a rating up to 20, or METs up to 30
 * @throws RangeError outside
 * @source garber2011
 * @example intensityOf("% reserve", 60) //=> "vigorous"
 */
export function intensityOf(measure: IntensityMeasure, value: number): Intensity {
  if (!(value >= 0 && value <= MOST[measure])) {
    throw new RangeError(
      `Cannot class an effort as ${measure} must be from 0 to ${MOST[measure]}: current value is ${value}`,
    );
  }
  return INTENSITIES[INTENSITY_CUTS.from[measure].filter((cut) => value >= cut).length]!;
}
