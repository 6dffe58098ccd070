import { type Asked, lifter, type Written } from "./lifter.ts";
import type { World } from "./world.ts";

/**
 * What a person would have done and said in every set, had they written all of it down without a slip: the day, its luck
 * and the answers are the same.
 */
export function doneInFull(
  world: World,
  seed: number,
  index: number,
): (day: number, asked: Asked) => readonly Required<Written>[] {
  const one = lifter({ ...world, hidesFailure: 0, slips: 0, reserveUnsaid: 0 }, seed, index);
  return (day, asked) => one.train(day, asked) as readonly Required<Written>[];
}

/** @returns whether so many repetitions were done and left what was asked, as the person felt it */
export function isDone({ reps, reserve }: Required<Written>, least: number, asked: Pick<Asked, "reserve">): boolean {
  // Who went on after that many had more than enough left.
  return reps > least || (reps === least && reserve >= asked.reserve);
}
