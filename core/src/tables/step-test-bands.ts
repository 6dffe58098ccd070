import type { SourceId } from "../sources.ts";

/** A class of the recovery heart rate after three minutes of stepping on 30.5 cm, 24 steps a minute. */
export interface StepTestBand {
  readonly class: "excellent" | "good" | "above average" | "average" | "below average" | "poor" | "very poor";
  readonly fromBpm: number;
  readonly toBpm: number;
}

/**
 * Heart rate counted for 60 seconds sitting down, women of 26 to 35 years: the one age group that could be read whole.
 * The printed bands leave gaps. A value in a gap belongs to the band below it in rank: ours.
 *
 * @source golding1986
 */
export const STEP_TEST_BANDS: {
  readonly source: SourceId;
  readonly sex: "woman";
  readonly ageY: { readonly from: number; readonly to: number };
  readonly rows: readonly StepTestBand[];
} = {
  source: "golding1986",
  sex: "woman",
  ageY: { from: 26, to: 35 },
  rows: [
    { class: "excellent", fromBpm: 58, toBpm: 80 },
    { class: "good", fromBpm: 85, toBpm: 92 },
    { class: "above average", fromBpm: 95, toBpm: 101 },
    { class: "average", fromBpm: 104, toBpm: 110 },
    { class: "below average", fromBpm: 113, toBpm: 119 },
    { class: "poor", fromBpm: 122, toBpm: 129 },
    { class: "very poor", fromBpm: 134, toBpm: 171 },
  ],
};

/**
 * The class of a recovery heart rate.
 *
 * @returns undefined for other people than the table's, and for a rate beyond its ends
 * @source golding1986
 * @example stepTestClass("woman", 30, 82) //=> "good"
 */
export function stepTestClass(sex: "man" | "woman", ageY: number, bpm: number): StepTestBand["class"] | undefined {
  const { ageY: ages, rows } = STEP_TEST_BANDS;
  if (sex !== STEP_TEST_BANDS.sex || !(ageY >= ages.from && ageY <= ages.to)) return undefined;
  if (!(bpm >= rows[0]!.fromBpm)) return undefined;
  return rows.find(({ toBpm }) => bpm <= toBpm)?.class;
}
