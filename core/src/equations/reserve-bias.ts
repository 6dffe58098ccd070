import type { About } from "./about.ts";

/** How far the repetitions that people say they have left lie under those they have. */
export const RESERVE_BIAS: About & { readonly mean: number; readonly low: number; readonly high: number } = {
  source: "halperin2022",
  who: "people who lift, 12 studies",
  people: 414,
  mean: 0.95,
  low: 0.17,
  high: 1.73,
};

/** Repetitions that a set may have, those left included, up to which the bias was near its mean: beyond, it grows. */
const MAX_SET = 12;

/**
 * The repetitions that were left when somebody says how many: people say too few by about one.
 *
 *   left = stated + 0.95, 95 % interval of the mean bias 0.17 to 1.73
 *
 * The interval is that of the mean over many people. One person, and one set, differ more; the studies disagree widely
 * (I² 97.9 %). Sets past 12 repetitions are judged worse, so they are refused.
 *
 * @param stated repetitions left as said, 0 or more
 * @param done repetitions done
 * @returns the mean-corrected repetitions left and the ends of its interval
 * @throws RangeError for a negative or unknown number, or when done and stated are over 12 together
 * @source halperin2022
 * @example reserveLeft(2, 8).mean //=> 2.95
 */
export function reserveLeft(
  stated: number,
  done: number,
): { readonly mean: number; readonly low: number; readonly high: number } {
  if (!(stated >= 0 && done >= 0 && stated + done <= MAX_SET)) {
    throw new RangeError(
      `Cannot correct a stated reserve as repetitions done and left must be 0 or more and together at most ${MAX_SET}: current values are ${done} and ${stated}`,
    );
  }
  const { mean, low, high } = RESERVE_BIAS;
  return { mean: stated + mean, low: stated + low, high: stated + high };
}
