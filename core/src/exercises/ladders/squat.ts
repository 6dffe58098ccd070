import type { Ladder } from "../../model/index.ts";

/** From a high seat to the paused bar. Ours, unsigned. */
export const SQUAT_LADDER: Ladder = {
  id: "squat",
  name: "Squat",
  start: "sit-to-stand-high",
  steps: [
    { from: "sit-to-stand-high", to: "sit-to-stand-45", branch: "main" },
    { from: "sit-to-stand-45", to: "touch-and-go-squat", branch: "main" },
    { from: "touch-and-go-squat", to: "body-squat", branch: "main" },
    { from: "body-squat", to: "goblet-squat", branch: "main" },
    { from: "goblet-squat", to: "double-dumbbell-front-squat", branch: "main" },
    { from: "double-dumbbell-front-squat", to: "back-squat", branch: "main" },
    { from: "back-squat", to: "back-squat-pause", branch: "main" },
    { from: "double-dumbbell-front-squat", to: "front-rack-squat", branch: "bar in front" },
    { from: "body-squat", to: "body-squat-pause", branch: "pause" },
  ],
};
