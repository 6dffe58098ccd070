import type { Ladder } from "../../model/index.ts";

/** By height, and downwards. Ours, unsigned. */
export const STEP_UP_LADDER: Ladder = {
  id: "step-up",
  name: "Step-up",
  start: "step-up-low",
  steps: [
    { from: "step-up-low", to: "step-up-20", branch: "main" },
    { from: "step-up-20", to: "step-up-30", branch: "main" },
    { from: "step-up-20", to: "step-down-slow", branch: "down" },
    { from: "step-up-30", to: "step-up-knee-height", branch: "main" },
    { from: "step-up-30", to: "step-up-30-loaded", branch: "load" },
    { from: "step-up-30-loaded", to: "step-up-knee-height-loaded", branch: "load" },
    { from: "step-up-knee-height", to: "step-up-knee-height-loaded", branch: "load, from the high step" },
    { from: "step-up-20", to: "lateral-step-up", branch: "sideways" },
  ],
};
