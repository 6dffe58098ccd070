import type { SourceId } from "../sources.ts";
import type { Mass } from "../units.ts";
import { brzyckiTimes } from "./brzycki.ts";
import { epleyTimes } from "./epley.ts";
import { landerTimes } from "./lander.ts";
import { lombardiTimes } from "./lombardi.ts";
import { mayhewTimes } from "./mayhew.ts";
import { oconnerTimes } from "./oconner.ts";
import { MAX_BAND_REPS, MAX_REPS, refuseOutsideReps } from "./reps-to-failure.ts";
import { wathenTimes } from "./wathen.ts";

/** Where the one-repetition maximum lies by the equations we have. */
export interface OneRepMax {
  readonly low: Mass;
  readonly high: Mass;
  /** The middle one of the seven: no published value. Left out above 10 repetitions, where none of them is trusted. */
  readonly typical?: Mass;
}

/** The seven equations from repetitions to the 1RM, each as how many times the load it is. */
export const ONE_REP_MAX_EQUATIONS: readonly {
  readonly name: string;
  readonly source: SourceId;
  readonly times: (reps: number) => number;
}[] = [
  { name: "epley", source: "epley1985", times: epleyTimes },
  { name: "brzycki", source: "brzycki1993", times: brzyckiTimes },
  { name: "lander", source: "lander1985", times: landerTimes },
  { name: "lombardi", source: "lombardi1989", times: lombardiTimes },
  { name: "mayhew", source: "mayhew1992", times: mayhewTimes },
  { name: "oconner", source: "oconner1989", times: oconnerTimes },
  { name: "wathen", source: "wathen1994", times: wathenTimes },
];

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
 *   low and high = the least and most of the seven; typical = the middle one
 *
 * @param load the load lifted, over 0
 * @param reps whole repetitions to failure, 1 to 12 (repetitions done plus those left in reserve)
 * @returns low and high, not rounded to loads that exist; typical up to 10 repetitions; the load itself for a single
 * @throws RangeError outside the range
 * @source epley1985, brzycki1993, lander1985, lombardi1989, mayhew1992, oconner1989, wathen1994, mayhew1995
 * @example
 * inKg(oneRepMax(kg(100), 5).low) //=> 112.5
 */
export function oneRepMax(load: Mass, reps: number): OneRepMax {
  refuseOutsideReps(load, reps, MAX_BAND_REPS);
  if (reps === 1) return { low: load, high: load, typical: load };
  const estimates = ONE_REP_MAX_EQUATIONS.map(({ times }) => Math.round(load * times(reps))).sort((a, b) => a - b);
  const band = { low: estimates[0] as Mass, high: estimates.at(-1) as Mass };
  return reps > MAX_REPS ? band : { ...band, typical: estimates[(estimates.length - 1) / 2] as Mass };
}
