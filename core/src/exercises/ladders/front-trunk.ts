import type { Ladder } from "../../model/index.ts";

/**
 * From a lean on the wall to the kneeling wheel and the hollow hold. The wall comes first, so that nobody who cannot
 * get down to the floor has to begin there. Ours, unsigned.
 */
export const FRONT_TRUNK_LADDER: Ladder = {
  id: "front-trunk",
  name: "Front of the trunk",
  start: "wall-forearm-plank",
  steps: [
    { from: "wall-forearm-plank", to: "bench-plank", branch: "main" },
    { from: "bench-plank", to: "knee-plank", branch: "main" },
    { from: "knee-plank", to: "forearm-plank", branch: "main" },
    { from: "forearm-plank", to: "long-lever-plank", branch: "main" },
    { from: "wall-forearm-plank", to: "hands-knees-brace", branch: "lying" },
    { from: "hands-knees-brace", to: "dead-bug", branch: "lying" },
    { from: "dead-bug", to: "dead-bug-opposite", branch: "lying" },
    { from: "dead-bug-opposite", to: "hollow-hold", branch: "lying" },
    { from: "hands-knees-brace", to: "bench-plank", branch: "from hands and knees" },
    { from: "forearm-plank", to: "ball-roll-out", branch: "rolling" },
    { from: "ball-roll-out", to: "wheel-roll-out", branch: "rolling" },
    { from: "long-lever-plank", to: "body-saw", branch: "main" },
    { from: "wheel-roll-out", to: "standing-roll-out", branch: "rolling" },
  ],
};
