import type { SourceId } from "../sources.ts";
import type { About, Miss } from "./about.ts";
import { refuseOutside } from "./refuse.ts";

/** An equation from age to the highest heart rate. `bpm` is the bare formula, also outside its ages. */
export interface HeartRateEquation extends About {
  readonly sex?: "men" | "women";
  readonly ageY: { readonly from: number; readonly to: number };
  readonly bpm: (ageY: number) => number;
}

/** Single people lie this far from any of them; measured in 3,816 people, 9 to 10 at 20 to 29 years. */
function deviation(from: number, source: SourceId, to?: number): Miss {
  return { kind: "standard deviation", from, ...(to === undefined ? {} : { to }), unit: "beats/min", source };
}

/**
 * Highest heart rate by age. Where a paper's ages could not be read they are ours: 18 to 65 for Fox, 18 to 80 for
 * Tanaka, the mean and two deviations for Gulati. Gellish's line is pinned as its abstract prints it; unrounded it is
 * 206.9 − 0.67 × age, 2 beats off at 70.
 *
 * @source robergsLandwehr2002, tanaka2001, gellish2007, gulati2010, zhu2010, sydo2014, loe2013
 */
export const HEART_RATE_EQUATIONS = {
  fox: {
    source: "robergsLandwehr2002",
    who: "a loose line through about ten data sets of men, mostly under 55; no study's result",
    ageY: { from: 18, to: 65 },
    miss: deviation(10, "gellish2007", 12),
    bpm: (ageY) => 220 - ageY,
  },
  tanaka: {
    source: "tanaka2001",
    who: "healthy adults of 351 studies",
    people: 18_712,
    ageY: { from: 18, to: 80 },
    miss: deviation(10, "loe2013"),
    bpm: (ageY) => 208 - 0.7 * ageY,
  },
  gellish: {
    source: "gellish2007",
    who: "adults followed for 9 years on average",
    people: 132,
    ageY: { from: 27, to: 78 },
    miss: deviation(10, "loe2013"),
    bpm: (ageY) => 207 - 0.7 * ageY,
  },
  gulati: {
    source: "gulati2010",
    sex: "women",
    who: "women without symptoms",
    people: 5437,
    ageY: { from: 30, to: 74 },
    miss: deviation(10, "loe2013"),
    bpm: (ageY) => 206 - 0.88 * ageY,
  },
  zhu: {
    source: "zhu2010",
    who: "young and middle-aged adults, tests ended by symptoms",
    ageY: { from: 18, to: 50 },
    miss: deviation(10, "loe2013"),
    bpm: (ageY) => 179 + 0.29 * ageY - 0.011 * ageY ** 2,
  },
  "sydo-men": {
    source: "sydo2014",
    sex: "men",
    who: "men free of heart disease and of medicines that slow the heart",
    ageY: { from: 40, to: 89 },
    miss: deviation(10, "loe2013"),
    bpm: (ageY) => 220 - 0.95 * ageY,
  },
  "sydo-women": {
    source: "sydo2014",
    sex: "women",
    who: "women free of heart disease and of medicines that slow the heart",
    ageY: { from: 40, to: 89 },
    miss: deviation(10, "loe2013"),
    bpm: (ageY) => 210 - 0.79 * ageY,
  },
} as const satisfies Record<string, HeartRateEquation>;

export type HeartRateEquationName = keyof typeof HEART_RATE_EQUATIONS;

/**
 * The highest heart rate by one equation. Not for anybody on a medicine that slows the heart: see pulseTarget.
 *
 * @param ageY years, within the equation's own ages
 * @returns beats a minute, not rounded; one person in three lies more than 10 away
 * @throws RangeError outside the equation's ages
 * @source tanaka2001, loe2013
 * @example heartRateMax("tanaka", 50) //=> 173
 */
export function heartRateMax(equation: HeartRateEquationName, ageY: number): number {
  const { ageY: ages, bpm } = HEART_RATE_EQUATIONS[equation];
  refuseOutside("the highest heart rate", "age in years", ageY, ages.from, ages.to);
  return bpm(ageY);
}

/**
 * What an equation made on people with heart disease on beta-blockers gives, kept to show why none is used for them:
 * it explains 13 % of the spread between people.
 *
 * @source brawner2004
 */
export const BETA_BLOCKED: HeartRateEquation = {
  source: "brawner2004",
  who: "people with coronary disease on beta-blockers, treadmill",
  people: 334,
  ageY: { from: 40, to: 80 },
  miss: { kind: "standard error of estimate", from: 18, unit: "beats/min", source: "brawner2004" },
  bpm: (ageY) => 164 - 0.7 * ageY,
};
