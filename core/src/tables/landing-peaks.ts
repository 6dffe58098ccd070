import type { SourceId } from "../sources.ts";

/**
 * Peak force of a landing in body weights, 14 trained men. A standing long jump lands harder than a drop jump from 30 cm.
 *
 * @source wallace2010
 */
export const LANDING_PEAKS: {
  readonly source: SourceId;
  readonly rows: readonly { readonly exercise: string; readonly bodyWeights: number }[];
} = {
  source: "wallace2010",
  rows: [
    { exercise: "drop-jump-30", bodyWeights: 2.78 },
    { exercise: "jump-squat", bodyWeights: 3.34 },
    { exercise: "standing-long-jump", bodyWeights: 4.22 },
    { exercise: "drop-stick-60", bodyWeights: 4.3 },
  ],
};
