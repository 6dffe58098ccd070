import type { Ladder } from "../../model/index.ts";

/**
 * Split squats, lunges and one-leg squats. Ours, unsigned.
 *
 * The one-leg squats go on from the elevated split squat, so they stand here and not on the squat's ladder, where nobody
 * could reach them from its start.
 */
export const SINGLE_LEG_LADDER: Ladder = {
  id: "single-leg",
  name: "Split squat, lunge and one leg",
  start: "split-squat-support",
  steps: [
    { from: "split-squat-support", to: "split-squat-support-full", branch: "main" },
    { from: "split-squat-support-full", to: "split-squat-free", branch: "main" },
    { from: "split-squat-free", to: "reverse-lunge", branch: "main" },
    { from: "reverse-lunge", to: "forward-lunge", branch: "main" },
    { from: "forward-lunge", to: "walking-lunge", branch: "main" },
    { from: "walking-lunge", to: "walking-lunge-loaded", branch: "walking with load" },
    { from: "split-squat-free", to: "split-squat-dumbbell", branch: "load" },
    { from: "split-squat-dumbbell", to: "rear-foot-split-squat-body", branch: "elevated" },
    { from: "rear-foot-split-squat-body", to: "rear-foot-split-squat", branch: "elevated" },
    { from: "rear-foot-split-squat-body", to: "one-leg-squat-bench", branch: "one leg" },
    { from: "one-leg-squat-bench", to: "one-leg-squat-free", branch: "one leg" },
    { from: "split-squat-free", to: "lateral-lunge", branch: "sideways" },
    { from: "lateral-lunge", to: "lateral-lunge-loaded", branch: "sideways" },
    { from: "reverse-lunge", to: "reverse-lunge-deficit", branch: "deficit" },
    { from: "forward-lunge", to: "jump-lunge", branch: "jump" },
  ],
};
