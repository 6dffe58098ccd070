import type { Dose, Exercise, SetDose } from "../model/index.ts";
import { askedAmount } from "./asked-amount.ts";

/** What the clock needs to know of an exercise. */
export type Timing = Pick<Exercise, "secondsPerRep" | "switchS" | "setupS" | "changeS" | "moveS">;

/** Seconds of one bout. An exercise's seconds per repetition are per metre or contact where it is counted so. */
function boutSeconds(kind: SetDose["amount"]["kind"], count: number, timing: Timing, pacedRepS: number): number {
  if (kind === "hold" || kind === "time") return count;
  const paced = pacedRepS > 0 && (kind === "reps" || kind === "most");
  return count * (paced ? pacedRepS : timing.secondsPerRep);
}

/**
 * Seconds that one set takes, without the rest after it.
 *
 *   amount * seconds per repetition * sides + switch of sides + short rests inside the set
 *
 * A tempo replaces the exercise's own seconds per repetition. Of a range the middle is taken, rounded up. "As many as
 * possible" takes the least number said, or 12.
 *
 * @returns whole seconds, rounded up, and whether the amount was said
 * @source ours
 * @example
 * setSeconds(barbellSquat, set, dose) // 10 repetitions at 4 s: 40
 */
export function setSeconds(timing: Timing, set: SetDose, tempo: Dose["tempo"]): { seconds: number; said: boolean } {
  const pacedRepS = tempo === undefined ? 0 : tempo.reduce((sum, part) => sum + part, 0);
  const { kind } = set.amount;
  const asked = askedAmount(set.amount);
  let oneSide = boutSeconds(kind, asked.count, timing, pacedRepS);
  if (set.within !== undefined) {
    for (const count of set.within.bouts) oneSide += set.within.restS + boutSeconds(kind, count, timing, pacedRepS);
  }
  return { seconds: Math.ceil(set.eachSide ? 2 * oneSide + timing.switchS : oneSide), said: asked.said };
}
