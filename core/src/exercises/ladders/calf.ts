import type { Ladder } from "../../model/index.ts";

/** From a chair to one leg on a step. Ours, unsigned. */
export const CALF_LADDER: Ladder = {
  id: "calf",
  name: "Calf raise",
  start: "calf-raise-seated",
  steps: [
    { from: "calf-raise-seated", to: "calf-raise-wall", branch: "main" },
    { from: "calf-raise-wall", to: "calf-raise-step", branch: "main" },
    { from: "calf-raise-step", to: "calf-raise-two-up", branch: "main" },
    { from: "calf-raise-two-up", to: "one-leg-calf-raise", branch: "main" },
    { from: "one-leg-calf-raise", to: "one-leg-calf-raise-step", branch: "main" },
    { from: "one-leg-calf-raise-step", to: "one-leg-calf-raise-loaded", branch: "main" },
    { from: "calf-raise-wall", to: "calf-raise-bent-knee", branch: "bent knee" },
    { from: "one-leg-calf-raise", to: "pogo", branch: "hop" },
  ],
};
