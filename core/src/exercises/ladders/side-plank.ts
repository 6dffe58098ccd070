import type { Ladder } from "../../model/index.ts";

/** From the wall to the lifted top leg. Ours, unsigned. */
export const SIDE_PLANK_LADDER: Ladder = {
  id: "side-plank",
  name: "Side plank",
  start: "wall-side-plank",
  steps: [
    { from: "wall-side-plank", to: "side-plank-knees", branch: "main" },
    { from: "side-plank-knees", to: "side-plank-staggered", branch: "main" },
    { from: "side-plank-staggered", to: "side-plank", branch: "main" },
    { from: "side-plank", to: "side-plank-leg-lift", branch: "main" },
    { from: "side-plank", to: "side-plank-reach-under", branch: "moving" },
    { from: "side-plank", to: "adductor-side-plank-short", branch: "inner thigh" },
    { from: "adductor-side-plank-short", to: "adductor-side-plank-long", branch: "inner thigh" },
    { from: "side-plank-leg-lift", to: "side-plank-feet-bench", branch: "feet up" },
  ],
};
