import type { Span } from "../model/index.ts";
import type { SourceId } from "../sources.ts";

/**
 * An older printing in steps of 5 %: a span of repetitions for each share of the 1RM. It agrees with the book's table to
 * a repetition down to 75 % and parts from it below. Kept apart and never mixed in. The page that restates it works its
 * own example wrongly (times 1.80 where it must divide by 0.80).
 *
 * @source acsmContinuum
 */
export const REPS_AT_PERCENT_CONTINUUM: {
  readonly source: SourceId;
  readonly rows: readonly { readonly reps: Span; readonly percent: number }[];
} = {
  source: "acsmContinuum",
  rows: [
    { reps: { from: 2, to: 3 }, percent: 95 },
    { reps: { from: 4, to: 5 }, percent: 90 },
    { reps: { from: 6, to: 7 }, percent: 85 },
    { reps: { from: 8, to: 9 }, percent: 80 },
    { reps: { from: 10, to: 11 }, percent: 75 },
    { reps: { from: 12, to: 13 }, percent: 70 },
    { reps: { from: 14, to: 15 }, percent: 65 },
    { reps: { from: 16, to: 20 }, percent: 60 },
  ],
};
