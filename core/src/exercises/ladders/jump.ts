import type { Ladder } from "../../model/index.ts";

/** From a quick half squat without a jump to a drop from 60 cm; higher drops have no entry. Ours, unsigned. */
export const JUMP_LADDER: Ladder = {
  id: "jump",
  name: "Jump and landing",
  start: "snap-down",
  steps: [
    { from: "snap-down", to: "low-box-jump", branch: "main" },
    { from: "low-box-jump", to: "jump-squat", branch: "main" },
    { from: "jump-squat", to: "two-jumps", branch: "main" },
    { from: "two-jumps", to: "standing-long-jump", branch: "main" },
    { from: "standing-long-jump", to: "drop-stick-60", branch: "main" },
    { from: "snap-down", to: "pogo", branch: "hops" },
    { from: "jump-squat", to: "drop-jump-30", branch: "drop" },
    { from: "drop-jump-30", to: "drop-stick-60", branch: "drop" },
  ],
};
