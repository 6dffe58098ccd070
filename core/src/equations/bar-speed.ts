import { refuseOutside } from "./refuse.ts";

/**
 * The share of the 1RM at a mean speed of the bar in the bench press: one curve through 120 men. Constants from memory; at
 * the speed that was measured for one repetition, 0.16 m/s, it gives 101 %. Single people have curves of their own, and
 * their own one-repetition speed differs from day to day by a fifth.
 *
 *   per cent = 8.4326 v² − 73.501 v + 112.33
 *
 * @param mPerS 0.16 to 1.3 m/s
 * @returns per cent of the 1RM
 * @throws RangeError outside the range
 * @source gonzalezBadillo2010
 * @example percentAtSpeed(0.5).toFixed(1) //=> "77.7"
 */
export function percentAtSpeed(mPerS: number): number {
  refuseOutside("a share of the 1RM", "bar speed in m/s", mPerS, 0.16, 1.3);
  return 8.4326 * mPerS ** 2 - 73.501 * mPerS + 112.33;
}
