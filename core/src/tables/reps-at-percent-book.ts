import type { RepsAtPercent } from "./reps-at-percent.ts";

/**
 * Repetitions at a share of the 1RM as the handbook's table prints them. Preferred over the one-page chart, which
 * gives 70 % for 12 repetitions.
 *
 * Read in restatements only; the row of 12 follows from its neighbours and the book's own rule for endurance
 * (67 % or less for 12 or more).
 *
 * @source nscaEssentialsTable
 */
export const REPS_AT_PERCENT_BOOK: RepsAtPercent = {
  source: "nscaEssentialsTable",
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
    { reps: 11, percent: 70 },
    { reps: 12, percent: 67 },
    { reps: 15, percent: 65 },
  ],
};
