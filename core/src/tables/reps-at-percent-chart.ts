import type { RepsAtPercent } from "./reps-at-percent.ts";

/**
 * Repetitions at a share of the 1RM as the one-page chart prints them: the same as the book's table up to 10, then 12
 * at 70 % where the book has 11. Kept apart and never averaged with it.
 *
 * @source nscaChart
 */
export const REPS_AT_PERCENT_CHART: RepsAtPercent = {
  source: "nscaChart",
  rows: [
    { reps: 1, percent: 100 },
    { reps: 2, percent: 95 },
    { reps: 3, percent: 93 },
    { reps: 4, percent: 90 },
    { reps: 5, percent: 87 },
    { reps: 6, percent: 85 },
    { reps: 7, percent: 83 },
    { reps: 8, percent: 80 },
    { reps: 9, percent: 77 },
    { reps: 10, percent: 75 },
    { reps: 12, percent: 70 },
  ],
};
