import type { Ladder } from "../../model/index.ts";

/** From a standing band row to one arm near flat. Ours, unsigned. */
export const ROW_LADDER: Ladder = {
  id: "row",
  name: "Inverted row",
  start: "band-row-standing",
  steps: [
    { from: "band-row-standing", to: "inverted-row-30", branch: "main" },
    { from: "inverted-row-30", to: "inverted-row-45", branch: "main" },
    { from: "inverted-row-45", to: "inverted-row-60", branch: "main" },
    { from: "inverted-row-60", to: "inverted-row-knees-bent", branch: "main" },
    { from: "inverted-row-knees-bent", to: "inverted-row-75", branch: "main" },
    { from: "inverted-row-75", to: "inverted-row-feet-raised", branch: "main" },
    { from: "inverted-row-feet-raised", to: "inverted-row-loaded", branch: "main" },
    { from: "inverted-row-feet-raised", to: "one-arm-inverted-row", branch: "one arm" },
    { from: "one-arm-inverted-row", to: "one-arm-inverted-row-flat", branch: "one arm" },
  ],
};

/** A line of its own beside the inverted rows; the barbell comes last because it loads the low back most. Ours, unsigned. */
export const LOADED_ROW_LADDER: Ladder = {
  id: "loaded-row",
  name: "Row with a load",
  start: "chest-supported-row",
  steps: [
    { from: "chest-supported-row", to: "one-arm-row", branch: "main" },
    { from: "one-arm-row", to: "cable-row-seated", branch: "main" },
    { from: "cable-row-seated", to: "bent-over-row", branch: "main" },
  ],
};
