import type { Ladder } from "../../model/index.ts";

/** From learning the fold to the bar on the floor; other ways on from each of its forms are branches. Ours, unsigned. */
export const HINGE_LADDER: Ladder = {
  id: "hinge",
  name: "Hinge and deadlift",
  start: "hip-fold-stick",
  steps: [
    { from: "hip-fold-stick", to: "wall-reach-hinge", branch: "main" },
    { from: "wall-reach-hinge", to: "kettlebell-deadlift-raised", branch: "main" },
    { from: "kettlebell-deadlift-raised", to: "kettlebell-deadlift", branch: "main" },
    { from: "kettlebell-deadlift", to: "dumbbell-rdl", branch: "main" },
    { from: "dumbbell-rdl", to: "barbell-rdl", branch: "main" },
    { from: "wall-reach-hinge", to: "band-pull-through", branch: "band" },
    { from: "band-pull-through", to: "kettlebell-deadlift", branch: "band" },
    { from: "wall-reach-hinge", to: "bag-deadlift-raised", branch: "bag" },
    { from: "bag-deadlift-raised", to: "kettlebell-deadlift", branch: "bag" },
    { from: "kettlebell-deadlift", to: "hex-bar-deadlift", branch: "from the floor" },
    { from: "hex-bar-deadlift", to: "barbell-deadlift", branch: "from the floor" },
    { from: "dumbbell-rdl", to: "barbell-deadlift-blocks", branch: "from blocks" },
    { from: "barbell-deadlift-blocks", to: "barbell-deadlift", branch: "from blocks" },
    { from: "dumbbell-rdl", to: "split-stance-deadlift", branch: "one leg" },
    { from: "split-stance-deadlift", to: "one-leg-deadlift", branch: "one leg" },
    { from: "kettlebell-deadlift", to: "kettlebell-swing", branch: "swing" },
    { from: "barbell-deadlift", to: "barbell-deadlift-pause", branch: "pause" },
    { from: "barbell-deadlift", to: "barbell-deadlift-deficit", branch: "deficit" },
  ],
};
