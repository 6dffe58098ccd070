/** How often something happened, with a 95 % interval, in so many cases. */
export interface ShareSeen {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly n: number;
}

/** Two-sided 95 % point of the normal distribution. */
const Z95 = 1.96;

/**
 * How often something happens, from how often it happened in independent cases, by Wilson's interval.
 *
 *   (p + z²/2n ± z √(p(1 − p)/n + z²/4n²)) / (1 + z²/n)
 *
 * @returns shares of 1; undefined without a case
 * @source wilson1927
 * @example shareSeen(81, 263) //=> 0.308, 0.255 to 0.366
 */
export function shareSeen(happened: number, n: number): ShareSeen | undefined {
  if (!(n > 0)) return undefined;
  const p = happened / n;
  const middle = (p + Z95 ** 2 / (2 * n)) / (1 + Z95 ** 2 / n);
  const reach = (Z95 * Math.sqrt((p * (1 - p)) / n + Z95 ** 2 / (4 * n * n))) / (1 + Z95 ** 2 / n);
  return { value: p, low: Math.max(0, middle - reach), high: Math.min(1, middle + reach), n };
}
