import type { Ladder } from "../../model/index.ts";

/**
 * From a band above the chair to a loaded pull-up. Pull-downs by band and by machine are one form, and so are pull-ups
 * helped by a band and by a machine. Ours, unsigned.
 */
export const PULL_UP_LADDER: Ladder = {
  id: "pull-up",
  name: "Pull-down and pull-up",
  start: "band-pull-down",
  steps: [
    { from: "band-pull-down", to: "lat-pull-down", branch: "main" },
    { from: "lat-pull-down", to: "assisted-pull-up", branch: "main" },
    { from: "assisted-pull-up", to: "lowering-pull-up", branch: "main" },
    { from: "lowering-pull-up", to: "chin-up", branch: "main" },
    { from: "chin-up", to: "pull-up", branch: "main" },
    { from: "pull-up", to: "pull-up-loaded", branch: "load" },
    { from: "lat-pull-down", to: "band-assisted-pull-up", branch: "band" },
    { from: "band-assisted-pull-up", to: "lowering-pull-up", branch: "band" },
    { from: "band-pull-down", to: "band-assisted-pull-up", branch: "band" },
    { from: "band-pull-down", to: "assisted-pull-up", branch: "machine" },
    { from: "lat-pull-down", to: "box-hang", branch: "hang" },
    { from: "box-hang", to: "dead-hang", branch: "hang" },
    { from: "dead-hang", to: "hang-blades-down", branch: "hang" },
    { from: "hang-blades-down", to: "assisted-pull-up", branch: "hang" },
    { from: "band-pull-down", to: "box-hang", branch: "hang" },
    { from: "hang-blades-down", to: "band-assisted-pull-up", branch: "hang" },
  ],
};
