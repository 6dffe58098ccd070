import type { Ladder } from "../../model/index.ts";

/** From a march on the spot to the arm overhead; more load and more metres are a dose, not a form. Ours, unsigned. */
export const CARRY_LADDER: Ladder = {
  id: "carry",
  name: "Carry",
  start: "loaded-march",
  steps: [
    { from: "loaded-march", to: "carry-two-hand", branch: "main" },
    { from: "loaded-march", to: "bag-hug-carry", branch: "bag" },
    { from: "carry-two-hand", to: "goblet-carry", branch: "front" },
    { from: "carry-two-hand", to: "suitcase-carry", branch: "one side" },
    { from: "suitcase-carry", to: "rack-carry", branch: "one side" },
    { from: "rack-carry", to: "overhead-carry", branch: "one side" },
    { from: "carry-two-hand", to: "hex-bar-carry", branch: "main" },
    { from: "suitcase-carry", to: "carry-mixed", branch: "mixed" },
    { from: "overhead-carry", to: "carry-mixed", branch: "mixed" },
  ],
};
