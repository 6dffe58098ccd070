import type { Ladder } from "../../model/index.ts";

/** Down between bars, from the machine to rings. How much the machine helps is a dose, not a form. Ours, unsigned. */
export const DIP_LADDER: Ladder = {
  id: "dip",
  name: "Dip",
  start: "assisted-dip",
  steps: [
    { from: "assisted-dip", to: "lowering-dip", branch: "main" },
    { from: "lowering-dip", to: "dip", branch: "main" },
    { from: "dip", to: "dip-loaded", branch: "main" },
    { from: "assisted-dip", to: "dip-support-hold", branch: "hold" },
    { from: "dip-support-hold", to: "lowering-dip", branch: "hold" },
    { from: "dip", to: "ring-support-hold", branch: "rings" },
    { from: "ring-support-hold", to: "ring-dip", branch: "rings" },
  ],
};

/** The way to push down that needs no bars and no machine. Ours, unsigned. */
export const PRESS_UP_LADDER: Ladder = {
  id: "press-up",
  name: "Pushing down from a chair and an edge",
  start: "chair-press-up",
  steps: [{ from: "chair-press-up", to: "narrow-push-up-60", branch: "main" }],
};
