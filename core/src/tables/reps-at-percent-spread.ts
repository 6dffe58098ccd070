import type { SourceId } from "../sources.ts";

/** Repetitions to failure that a group of people really did at a share of their 1RM. */
export interface RepsSpread {
  readonly source: SourceId;
  readonly lift: "back squat" | "leg press";
  readonly who: string;
  readonly people?: number;
  readonly percent: number;
  readonly mean: number;
  readonly sd: number;
  readonly range?: { readonly from: number; readonly to: number };
}

/**
 * How far people differ at one share of the 1RM. It stands beside the tables of repetitions, which give one number for
 * everybody: at 70 % the book prints 11, and these people did from 6 to 26.
 *
 * @source cooke2019, richensCleather2014, shimano2006
 */
export const REPS_SPREAD: readonly RepsSpread[] = [
  {
    source: "cooke2019",
    lift: "back squat",
    who: "trained",
    people: 58,
    percent: 70,
    mean: 14,
    sd: 4,
    range: { from: 6, to: 26 },
  },
  { source: "shimano2006", lift: "back squat", who: "trained men", percent: 60, mean: 29.9, sd: 7.4 },
  {
    source: "richensCleather2014",
    lift: "leg press",
    who: "weightlifters",
    people: 8,
    percent: 70,
    mean: 17.9,
    sd: 2.8,
  },
  {
    source: "richensCleather2014",
    lift: "leg press",
    who: "weightlifters",
    people: 8,
    percent: 80,
    mean: 11.8,
    sd: 2.7,
  },
  { source: "richensCleather2014", lift: "leg press", who: "weightlifters", people: 8, percent: 90, mean: 7, sd: 2.1 },
  { source: "richensCleather2014", lift: "leg press", who: "runners", people: 8, percent: 70, mean: 39.9, sd: 17.6 },
  { source: "richensCleather2014", lift: "leg press", who: "runners", people: 8, percent: 80, mean: 19.8, sd: 6.4 },
  { source: "richensCleather2014", lift: "leg press", who: "runners", people: 8, percent: 90, mean: 10.8, sd: 3.9 },
];

/**
 * The spread measured at a share of the 1RM in one lift.
 *
 * @param percent per cent of the 1RM
 * @returns every row for that lift and share; empty where nobody measured it, never interpolated
 * @source cooke2019
 * @example
 * repsSpread("back squat", 70)[0]?.range //=> { from: 6, to: 26 }
 */
export function repsSpread(lift: RepsSpread["lift"], percent: number): readonly RepsSpread[] {
  return REPS_SPREAD.filter((row) => row.lift === lift && row.percent === percent);
}
