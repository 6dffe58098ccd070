/** Share of the standard normal under a value, to seven digits: Abramowitz and Stegun 26.2.17. @source abramowitzStegun */
export function normalShare(z: number): number {
  if (z < 0) return 1 - normalShare(-z);
  const t = 1 / (1 + 0.231_641_9 * z);
  const series =
    t * (0.319_381_53 + t * (-0.356_563_782 + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
  return 1 - normalHeight(z) * series;
}

/** Height of the standard normal density. */
export function normalHeight(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** Value above which one in ten lies: 80 % lie within ± so many standard deviations. */
export const Z80 = 1.281_552;

/** @returns the mean of the standard normal above a value, always over it */
export function meanAbove(z: number): number {
  // Far out the share rounds to nothing, and the mean nears the value itself.
  return z > 5 ? z + 1 / z : normalHeight(z) / (1 - normalShare(z));
}
