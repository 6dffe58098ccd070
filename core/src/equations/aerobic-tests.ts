import { inLb, type Mass } from "../units.ts";
import type { About } from "./about.ts";
import { refuseOutside } from "./refuse.ts";

/** On whom each field test was made, as far as we could read. */
export const AEROBIC_TESTS = {
  "12-minute run": { source: "cooper1968", who: "airmen; everything depends on a real best effort" },
  "1.5-mile run": { source: "acsmGetp10", who: "not stated; everything depends on a real best effort" },
  "1-mile walk": {
    source: "kline1987",
    who: "adults; reads fit young people low: 50.1 for a measured 53.3",
    ageY: { from: 30, to: 69 },
  },
  "3-minute step": { source: "mcardle1972", who: "students of one college" },
} as const satisfies Record<string, About>;

/**
 * Highest oxygen uptake from the distance run in 12 minutes. Vigorous: screen first.
 *
 *   mL/kg/min = (metres − 504.9) / 44.73
 *
 * @param metres 1000 to 4500
 * @returns mL/kg/min, not rounded
 * @throws RangeError outside the range
 * @source cooper1968
 * @example twelveMinuteRun(2400).toFixed(2) //=> "42.37"
 */
export function twelveMinuteRun(metres: number): number {
  refuseOutside("the highest oxygen uptake", "metres run in 12 minutes", metres, 1000, 4500);
  return (metres - 504.9) / 44.73;
}

/**
 * Highest oxygen uptake from the time of 1.5 miles (2.4 km) run. Vigorous: screen first.
 *
 *   mL/kg/min = 3.5 + 483 / minutes
 *
 * @param minutes 6 to 25
 * @returns mL/kg/min, not rounded
 * @throws RangeError outside the range
 * @source acsmGetp10
 * @example mileAndHalfRun(12).toFixed(2) //=> "43.75"
 */
export function mileAndHalfRun(minutes: number): number {
  refuseOutside("the highest oxygen uptake", "minutes for 1.5 miles", minutes, 6, 25);
  return 3.5 + 483 / minutes;
}

/**
 * Highest oxygen uptake from the time of 1.5 miles run, body mass and sex. From memory.
 *
 *   mL/kg/min = 88.02 − 0.1656 × kg − 2.76 × minutes + 3.716 for men
 *
 * @param massKg 40 to 150 kg
 * @param minutes 6 to 25
 * @param ageY 18 to 29: made on college students
 * @throws RangeError outside the ranges
 * @source george1993
 * @example collegeRun("man", 80, 12, 20).toFixed(2) //=> "45.37"
 */
export function collegeRun(sex: "man" | "woman", massKg: number, minutes: number, ageY: number): number {
  refuseOutside("the highest oxygen uptake", "age in years", ageY, 18, 29);
  refuseOutside("the highest oxygen uptake", "body mass in kg", massKg, 40, 150);
  refuseOutside("the highest oxygen uptake", "minutes for 1.5 miles", minutes, 6, 25);
  return 88.02 - 0.1656 * massKg - 2.76 * minutes + (sex === "man" ? 3.716 : 0);
}

/** What a mile's walk gives: the clock, and the heart rate of the last quarter of the way in beats a minute. */
export interface MileWalk {
  readonly sex: "man" | "woman";
  readonly mass: Mass;
  readonly ageY: number;
  readonly minutes: number;
  readonly bpm: number;
}

/** The bare formula, also outside its ages: mL/kg/min. @source kline1987 */
export function mileWalkFormula({ sex, mass, ageY, minutes, bpm }: MileWalk): number {
  return 132.853 - 0.0769 * inLb(mass) - 0.3877 * ageY + (sex === "man" ? 6.315 : 0) - 3.2649 * minutes - 0.1565 * bpm;
}

/**
 * Highest oxygen uptake from one mile walked as fast as can be, and what the other printing of it gives in litres.
 *
 *   mL/kg/min = 132.853 − 0.0769 lb − 0.3877 age + 6.315 for men − 3.2649 min − 0.1565 heart rate
 *   L/min = 6.9652 + 0.0091 lb − 0.0257 age + 0.5955 for men − 0.2240 min − 0.0115 heart rate
 *
 * The heart rate is beats a minute; a count of 10 seconds put in its place gives nonsense, so under 60 is refused.
 *
 * @param walk age 30 to 69, 8 to 30 minutes, 60 to 220 beats a minute
 * @returns mL/kg/min by the relative form, L/min by the absolute one
 * @throws RangeError outside the ranges
 * @source kline1987
 * @example mileWalk({ sex: "man", mass: lb(170), ageY: 40, minutes: 14.5, bpm: 130 }).mlKgMin.toFixed(2) //=> "42.90"
 */
export function mileWalk(walk: MileWalk): { readonly mlKgMin: number; readonly lMin: number } {
  const { sex, mass, ageY, minutes, bpm } = walk;
  const { from, to } = AEROBIC_TESTS["1-mile walk"].ageY;
  refuseOutside("the highest oxygen uptake", "age in years", ageY, from, to);
  refuseOutside("the highest oxygen uptake", "body mass in lb", inLb(mass), 66, 660);
  refuseOutside("the highest oxygen uptake", "minutes for a mile", minutes, 8, 30);
  refuseOutside("the highest oxygen uptake", "heart rate in beats/min", bpm, 60, 220);
  const lMin =
    6.9652 + 0.0091 * inLb(mass) - 0.0257 * ageY + (sex === "man" ? 0.5955 : 0) - 0.224 * minutes - 0.0115 * bpm;
  return { mlKgMin: mileWalkFormula(walk), lMin };
}

/**
 * Highest oxygen uptake from the heart rate after three minutes of stepping on 41.3 cm: men 24 steps a minute, women 22.
 * The rate is a count of 15 seconds, from 5 to 20 seconds after the end, times four.
 *
 *   men 111.33 − 0.42 × heart rate, women 65.81 − 0.1847 × heart rate
 *
 * @param bpm 80 to 210 beats a minute
 * @returns mL/kg/min; r −0.75
 * @throws RangeError outside the range
 * @source mcardle1972
 * @example stepTest("man", 140).toFixed(2) //=> "52.53"
 */
export function stepTest(sex: "man" | "woman", bpm: number): number {
  refuseOutside("the highest oxygen uptake", "heart rate in beats/min", bpm, 80, 210);
  return sex === "man" ? 111.33 - 0.42 * bpm : 65.81 - 0.1847 * bpm;
}
