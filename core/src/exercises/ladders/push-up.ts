import type { Ladder } from "../../model/index.ts";

/**
 * From the wall to one arm. The upside-down branch of the overhead press begins on a push-up, so its step stands here
 * and not on that ladder. Ours, unsigned.
 */
export const PUSH_UP_LADDER: Ladder = {
  id: "push-up",
  name: "Push-up",
  start: "wall-push-up",
  steps: [
    { from: "wall-push-up", to: "counter-push-up", branch: "main" },
    { from: "counter-push-up", to: "push-up-60", branch: "main" },
    { from: "push-up-60", to: "push-up-30", branch: "main" },
    { from: "push-up-30", to: "floor-push-up", branch: "main" },
    { from: "floor-push-up", to: "push-up-feet-30", branch: "main" },
    { from: "push-up-feet-30", to: "push-up-feet-60", branch: "main" },
    { from: "push-up-60", to: "knee-push-up", branch: "knees" },
    { from: "knee-push-up", to: "floor-push-up", branch: "knees" },
    { from: "floor-push-up", to: "push-up-loaded", branch: "load" },
    { from: "floor-push-up", to: "strap-push-up", branch: "unstable" },
    { from: "push-up-feet-60", to: "uneven-push-up", branch: "one arm" },
    { from: "uneven-push-up", to: "one-arm-push-up", branch: "one arm" },
    { from: "push-up-feet-30", to: "pike-push-up", branch: "upside-down" },
    { from: "pike-push-up", to: "pike-push-up-feet-raised", branch: "upside-down" },
    { from: "pike-push-up-feet-raised", to: "wall-handstand-push-up", branch: "upside-down" },
    { from: "pike-push-up-feet-raised", to: "wall-handstand-hold", branch: "upside-down hold" },
    { from: "wall-handstand-hold", to: "wall-handstand-push-up", branch: "upside-down hold" },
  ],
};
