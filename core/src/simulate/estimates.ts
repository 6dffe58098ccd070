import { chance } from "./chance.ts";

/** A figure of a simulation with its 95 % interval, and on how many people or cases it rests. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly n: number;
}

const RESAMPLES = 400;
const DRAW_RESAMPLE = 13;

/**
 * A ratio of two sums over people, with the middle 95 % of what comes out when as many people are drawn again from the
 * same, each with all that is theirs. Cases of one person hang together, so that people are drawn and not cases.
 *
 * @param parts of each person: what is summed above and below the line
 * @returns undefined when nothing is below the line
 * @source efron1979
 */
export function ratioOf(
  parts: readonly (readonly [above: number, below: number])[],
  seed: number,
): Estimate | undefined {
  const ratio = (some: readonly (readonly [number, number])[]) => {
    const [above, below] = some.reduce(([a, b], [above, below]) => [a + above, b + below], [0, 0]);
    return above / below;
  };
  const value = ratio(parts);
  if (!Number.isFinite(value)) return undefined;
  const drawn = Array.from({ length: RESAMPLES }, (_, again) => {
    const draw = chance(seed, again, DRAW_RESAMPLE);
    return ratio(parts.map(() => parts[Math.floor(draw.even(0, parts.length))]!));
  })
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  const at = (share: number) => drawn[Math.min(drawn.length - 1, Math.floor(share * drawn.length))] ?? value;
  return { value, low: at(0.025), high: at(0.975), n: parts.length };
}

/** The mean over people, drawn again in the same way. */
export function meanOf(values: readonly number[], seed: number): Estimate | undefined {
  return ratioOf(
    values.map((value) => [value, 1] as const),
    seed,
  );
}
