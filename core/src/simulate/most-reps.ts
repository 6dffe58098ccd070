import { type Asked, lifter } from "./lifter.ts";
import type { World } from "./world.ts";

/** More than anybody does. */
const NO_END = 999;

/**
 * How many repetitions a person could have done in every set of a day, had they gone on until nothing went any more: the
 * same day with the same luck, whatever is written down.
 */
export function mostReps(
  world: World,
  seed: number,
  index: number,
): (day: number, asked: Pick<Asked, "loadKg" | "sets">) => readonly number[] {
  const one = lifter({ ...world, hidesFailure: 0, slips: 0 }, seed, index);
  return (day, { loadKg, sets }) =>
    one.train(day, { loadKg, sets, reps: { from: NO_END, to: NO_END }, reserve: 0 }).map(({ reps }) => reps);
}
