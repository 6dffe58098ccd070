import type { Ladder } from "../../model/index.ts";

/** From a seated press to eye height to the standing bar. Ours, unsigned. */
export const OVERHEAD_LADDER: Ladder = {
  id: "overhead",
  name: "Overhead press",
  start: "dumbbell-press-partial",
  steps: [
    { from: "dumbbell-press-partial", to: "band-overhead-press-seated", branch: "main" },
    { from: "band-overhead-press-seated", to: "dumbbell-press-seated", branch: "main" },
    { from: "dumbbell-press-seated", to: "dumbbell-press-standing", branch: "main" },
    { from: "dumbbell-press-standing", to: "barbell-overhead-press", branch: "main" },
    { from: "dumbbell-press-partial", to: "half-kneeling-angled-press", branch: "angled" },
    { from: "half-kneeling-angled-press", to: "half-kneeling-press", branch: "angled" },
    { from: "half-kneeling-press", to: "dumbbell-press-seated", branch: "angled" },
  ],
};
