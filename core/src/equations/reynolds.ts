import { inKg, kg, type Mass } from "../units.ts";
import type { About } from "./about.ts";

const TRIED = { who: "men and women, trained and not", people: 70, ageY: { from: 18, to: 69 } } as const;

/** Two lifts, each from a load that could be lifted five times and not six. */
export const REYNOLDS: Readonly<Record<"bench press" | "leg press", About>> = {
  "bench press": {
    source: "reynolds2006",
    ...TRIED,
    miss: { kind: "standard error of estimate", from: 2.98, unit: "kg", source: "reynolds2006" },
  },
  "leg press": {
    source: "reynolds2006",
    ...TRIED,
    miss: { kind: "standard error of estimate", from: 16.16, unit: "kg", source: "reynolds2006" },
  },
};

const LINE = { "bench press": [1.1307, 0.6999], "leg press": [1.097, 14.2546] } as const;

/**
 * The one-repetition maximum (1RM) from a five-repetition maximum, after Reynolds, Gordon & Robergs: the load that best
 * foretold it in their people.
 *
 *   bench press: 1RM = 1.1307 × 5RM + 0.6999 kg; leg press: 1RM = 1.0970 × 5RM + 14.2546 kg
 *
 * @param fiveRm the load that was lifted exactly five times to failure, over 0
 * @returns the estimate; standard error 2.98 kg in the bench press, 16.16 kg in the leg press
 * @throws RangeError for a load of 0 or less
 * @source reynolds2006
 * @example
 * inKg(reynolds("bench press", kg(80))).toFixed(2) //=> "91.16"
 */
export function reynolds(lift: "bench press" | "leg press", fiveRm: Mass): Mass {
  if (!(fiveRm > 0)) {
    throw new RangeError(`Cannot estimate the 1RM as the load must be over 0: current value is ${fiveRm}`);
  }
  const [slope, plus] = LINE[lift];
  return Math.round(slope * fiveRm + plus * kg(1)) as Mass;
}

/** reynolds turned round: the share of the 1RM, in per cent, that a five-repetition maximum is. */
export function fiveRmPercent(lift: "bench press" | "leg press", fiveRm: Mass): number {
  return (100 * inKg(fiveRm)) / inKg(reynolds(lift, fiveRm));
}
