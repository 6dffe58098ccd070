import type { Conditioning, Dose } from "../model/index.ts";
import { runWalkDose } from "../tables/index.ts";

/** @returns what conditioning asks for: its own dose, or the bouts and walks of its level */
export function conditioningDose(item: Conditioning): Dose {
  return "runWalk" in item ? runWalkDose(item.runWalk) : item.dose;
}

/**
 * What a form asks for that stands in for a run: the minutes of the level at a stretch, since its walks rest from running
 * and from nothing else. Rounded up to whole minutes.
 *
 * @source ours
 * @example
 * atAStretch(runWalkDose(1)) // 8 × 30 s with 90 s between, 14:30 in all: 1 × 15 min
 */
export function atAStretch({ sets, restS = 0 }: Dose): Dose {
  const bouts = sets.reduce((sum, { amount }) => sum + (amount.kind === "time" ? amount.span.to : 0), 0);
  const seconds = 60 * Math.ceil((bouts + (sets.length - 1) * restS) / 60);
  return { sets: [{ amount: { kind: "time", span: { from: seconds, to: seconds } }, eachSide: false }] };
}
