/**
 * Seeded chance that depends on nothing but its keys: the same person on the same day draws the same, whatever was
 * asked of them before. Two ways of coaching so meet the same people with the same good and bad days.
 */
export interface Chance {
  /** Even on [from, to). */
  readonly even: (from: number, to: number) => number;
  /** Normal with mean 0 and this standard deviation. */
  readonly normal: (sd: number) => number;
  /** True with this probability. */
  readonly happens: (probability: number) => boolean;
}

/** One round of a 32-bit mixing function: every bit of the input moves about half of the output. */
function mix(value: number): number {
  let hash = value | 0;
  hash = Math.imul(hash ^ (hash >>> 16), 0x7feb352d);
  hash = Math.imul(hash ^ (hash >>> 15), 0x846ca68b);
  return hash ^ (hash >>> 16);
}

/** @param keys whole numbers: seed, person, day, what is drawn */
export function chance(...keys: readonly number[]): Chance {
  let state = keys.reduce((hash, key) => mix(hash ^ mix(key + 0x9e3779b9)), 0x243f6a88);
  const draw = () => {
    state = (state + 0x9e3779b9) | 0;
    return (mix(state) >>> 0) / 2 ** 32;
  };
  return {
    even: (from, to) => from + (to - from) * draw(),
    normal: (sd) => sd * Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw()),
    happens: (probability) => draw() < probability,
  };
}
