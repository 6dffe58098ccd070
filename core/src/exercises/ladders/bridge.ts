import type { Ladder } from "../../model/index.ts";

/** Hip extension with the back supported: from the floor to the bar across the hips. Ours, unsigned. */
export const BRIDGE_LADDER: Ladder = {
  id: "bridge",
  name: "Bridge and hip thrust",
  start: "floor-bridge",
  steps: [
    { from: "floor-bridge", to: "floor-bridge-pause", branch: "main" },
    { from: "floor-bridge-pause", to: "bench-bridge", branch: "main" },
    { from: "bench-bridge", to: "hip-thrust", branch: "main" },
    { from: "floor-bridge-pause", to: "floor-bridge-load", branch: "floor load" },
    { from: "floor-bridge-pause", to: "one-leg-bridge", branch: "one leg" },
    { from: "one-leg-bridge", to: "one-leg-hip-thrust", branch: "one leg" },
    { from: "hip-thrust", to: "one-leg-hip-thrust", branch: "one leg, from the bench" },
    { from: "floor-bridge-pause", to: "floor-bridge-feet-raised", branch: "feet up" },
    { from: "floor-bridge-pause", to: "marching-bridge", branch: "marching" },
  ],
};
