import type { SourceId } from "../sources.ts";
import type { Mass } from "../units.ts";
import { brzycki } from "./brzycki.ts";
import { epley } from "./epley.ts";

/** Where the one-repetition maximum lies by the equations we have. */
export interface OneRepMax {
  readonly low: Mass;
  readonly high: Mass;
  /** The mean of the equations: no published value, but averaging two was found to cut the error (mayhew1995). */
  readonly typical: Mass;
}

/** What was found when equations from repetitions to the 1RM were tried on people: spans are over the equations. */
export interface OneRepMaxTrial {
  readonly source: SourceId;
  readonly people: number;
  readonly sex: "men";
  readonly lift: string;
  readonly correlation: { readonly from: number; readonly to: number };
  /** Error of prediction in kilograms, where printed. */
  readonly errorKg?: { readonly from: number; readonly to: number };
}

export const ONE_REP_MAX_TRIALS: readonly OneRepMaxTrial[] = [
  { source: "mayhew1995", people: 220, sex: "men", lift: "bench press", correlation: { from: 0.82, to: 0.98 } },
  {
    source: "hutchinsGearhart2010",
    people: 27,
    sex: "men",
    lift: "bench press",
    correlation: { from: 0.81, to: 0.97 },
    errorKg: { from: 5.4, to: 6.8 },
  },
  {
    source: "hutchinsGearhart2010",
    people: 27,
    sex: "men",
    lift: "curl",
    correlation: { from: 0.7, to: 0.91 },
    errorKg: { from: 5.3, to: 6.9 },
  },
];

/**
 * The one-repetition maximum as a band, from a set taken to failure. The band is how far the equations differ; a
 * person's own error is larger (ONE_REP_MAX_TRIALS), so a first load is set from the low end.
 *
 *   low and high = the least and most of Epley and Brzycki; typical = their mean
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 10 (repetitions done plus those left in reserve)
 * @returns low, high and typical, not rounded to loads that exist
 * @throws RangeError outside the range
 * @source epley1985, brzycki1993, mayhew1995
 * @example
 * inKg(oneRepMax(kg(100), 5).low) //=> 112.5
 */
export function oneRepMax(load: Mass, reps: number): OneRepMax {
  const estimates = [epley(load, reps), brzycki(load, reps)];
  const sum = estimates.reduce((total, each) => total + each, 0);
  return {
    low: Math.min(...estimates) as Mass,
    high: Math.max(...estimates) as Mass,
    typical: Math.round(sum / estimates.length) as Mass,
  };
}
