/** Seeded numbers from 0 to below 1: a 32-bit linear congruence, high bits first; near seeds begin far apart. */
export function numbers(seed: number): () => number {
  let state = Math.imul(seed + 1, 2_654_435_761) >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
