import type { Ladder } from "../../model/index.ts";

/**
 * From the pull-down machine to a loaded pull-up. The band pull-down is as easy as its start and stands on no ladder, so
 * that nobody has to earn one by the other. Help from a band and from a machine is one form. Ours, unsigned.
 */
export const PULL_UP_LADDER: Ladder = {
  id: "pull-up",
  name: "Pull-down and pull-up",
  start: "lat-pull-down",
  steps: [
    { from: "lat-pull-down", to: "assisted-pull-up", branch: "main" },
    { from: "assisted-pull-up", to: "lowering-pull-up", branch: "main" },
    { from: "lowering-pull-up", to: "chin-up", branch: "main" },
    { from: "chin-up", to: "pull-up", branch: "main" },
    { from: "pull-up", to: "pull-up-loaded", branch: "load" },
    { from: "lat-pull-down", to: "band-assisted-pull-up", branch: "band" },
    { from: "band-assisted-pull-up", to: "lowering-pull-up", branch: "band" },
    { from: "lat-pull-down", to: "box-hang", branch: "hang" },
    { from: "box-hang", to: "dead-hang", branch: "hang" },
    { from: "dead-hang", to: "hang-blades-down", branch: "hang" },
    { from: "hang-blades-down", to: "assisted-pull-up", branch: "hang" },
    { from: "hang-blades-down", to: "band-assisted-pull-up", branch: "hang" },
    { from: "pull-up", to: "pull-up-pause", branch: "main" },
    { from: "pull-up-loaded", to: "uneven-pull-up", branch: "uneven hands" },
  ],
};
