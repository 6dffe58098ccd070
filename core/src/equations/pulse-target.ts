import { refuseOutside } from "./refuse.ts";

/** The highest heart rate, and whether it was measured or comes from an equation of age. */
export interface HighestPulse {
  readonly bpm: number;
  readonly measured: boolean;
}

/** How far single people lie from an equation of age, beats a minute. Source: loe2013. */
const DEVIATION_BPM = 10;

/**
 * The heart rate at a share of the heart-rate reserve (Karvonen).
 *
 *   target = rest + share × (highest − rest)
 *
 * Off for anybody on a medicine that slows the heart, unless the highest rate was measured while taking it: equations of
 * age are wrong for them, and the one made on them misses by 18 beats (brawner2004). Effort and talking tell instead.
 *
 * @param highest 100 to 220 beats a minute
 * @param restBpm 30 to 100, and under the highest
 * @param share of the reserve, 0 to 1
 * @param slowed whether any medicine slows the heart
 * @returns beats a minute, not rounded; low and high are one standard deviation of an equation away, or the same as
 *   the target where the highest rate was measured
 * @throws RangeError outside the ranges, and for slowed hearts without a measured highest rate
 * @source karvonen1957, loe2013, brawner2004
 * @example pulseTarget({ bpm: 180, measured: true }, 60, 0.6, false).bpm //=> 132
 */
export function pulseTarget(
  highest: HighestPulse,
  restBpm: number,
  share: number,
  slowed: boolean,
): { readonly bpm: number; readonly low: number; readonly high: number } {
  if (slowed && !highest.measured) {
    throw new RangeError(
      "Cannot set a pulse target as no medicine may slow the heart, or the highest rate must be measured while taking it: use effort and talking",
    );
  }
  refuseOutside("a pulse target", "the highest heart rate in beats/min", highest.bpm, 100, 220);
  refuseOutside("a pulse target", "the resting heart rate in beats/min", restBpm, 30, Math.min(100, highest.bpm - 1));
  refuseOutside("a pulse target", "the share of the reserve", share, 0, 1);
  const bpm = restBpm + share * (highest.bpm - restBpm);
  const miss = highest.measured ? 0 : share * DEVIATION_BPM;
  return { bpm, low: bpm - miss, high: bpm + miss };
}

/**
 * The share of the heart-rate reserve that a heart rate is: pulseTarget turned round.
 *
 * @throws RangeError outside the ranges of pulseTarget
 * @source karvonen1957
 * @example pulseReserve({ bpm: 180, measured: true }, 60, 130).toFixed(3) //=> "0.583"
 */
export function pulseReserve({ bpm: most }: HighestPulse, restBpm: number, bpm: number): number {
  refuseOutside("a share of the reserve", "the highest heart rate in beats/min", most, 100, 220);
  refuseOutside("a share of the reserve", "the resting heart rate in beats/min", restBpm, 30, Math.min(100, most - 1));
  refuseOutside("a share of the reserve", "the heart rate in beats/min", bpm, restBpm, most);
  return (bpm - restBpm) / (most - restBpm);
}

/** Oxygen uptake sitting still, mL/kg/min: one MET. */
export const REST_ML_KG_MIN = 3.5;

/**
 * The oxygen uptake at a share of the uptake reserve.
 *
 *   target = share × (highest − 3.5) + 3.5
 *
 * @param highestMlKgMin highest oxygen uptake, 10 to 90 mL/kg/min
 * @param share 0 to 1
 * @returns mL/kg/min, not rounded
 * @throws RangeError outside the ranges
 * @source garber2011
 * @example oxygenTarget(42, 0.6).toFixed(1) //=> "26.6"
 */
export function oxygenTarget(highestMlKgMin: number, share: number): number {
  refuseOutside("a target of oxygen uptake", "the highest uptake in mL/kg/min", highestMlKgMin, 10, 90);
  refuseOutside("a target of oxygen uptake", "the share of the reserve", share, 0, 1);
  return share * (highestMlKgMin - REST_ML_KG_MIN) + REST_ML_KG_MIN;
}
