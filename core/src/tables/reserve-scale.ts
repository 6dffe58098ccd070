import type { Span } from "../model/index.ts";
import type { SourceId } from "../sources.ts";

/** One mark of a 1-to-10 rating of a set, by what was left. Where the scale gives no count, `left` is missing. */
export interface ReserveMark {
  readonly rating: Span;
  readonly left?: Span;
  /** No repetition more was possible, only a little more load. */
  readonly loadLeft?: true;
  readonly source: SourceId;
}

const span = (from: number, to = from): Span => ({ from, to });

/**
 * The rating of effort by repetitions in reserve, hardest first. Ratings of 7 and more are tied to a count; 5 to 6 only
 * loosely; below 5 to none. 9.5 means no repetition more and a little more load, and not "perhaps one more".
 *
 * @source zourdos2016, helms2016
 */
export const RESERVE_SCALE: readonly ReserveMark[] = [
  { rating: span(10), left: span(0), source: "zourdos2016" },
  { rating: span(9.5), left: span(0), loadLeft: true, source: "helms2016" },
  { rating: span(9), left: span(1), source: "zourdos2016" },
  { rating: span(8.5), left: span(1, 2), source: "helms2016" },
  { rating: span(8), left: span(2), source: "zourdos2016" },
  { rating: span(7.5), left: span(2, 3), source: "helms2016" },
  { rating: span(7), left: span(3), source: "zourdos2016" },
  { rating: span(5, 6), left: span(4, 6), source: "helms2016" },
  { rating: span(3, 4), source: "helms2016" },
  { rating: span(1, 2), source: "helms2016" },
];

/**
 * What a rating says of the repetitions left.
 *
 * @param rating 1 to 10, as printed: whole, and halves from 7.5 to 9.5
 * @returns the mark; undefined for a rating that the scale does not print
 * @source zourdos2016, helms2016
 * @example reserveMark(8.5)?.left //=> { from: 1, to: 2 }
 */
export function reserveMark(rating: number): ReserveMark | undefined {
  const printed =
    Number.isInteger(rating) || RESERVE_SCALE.some(({ rating: { from, to } }) => from === to && from === rating);
  return printed ? RESERVE_SCALE.find(({ rating: { from, to } }) => rating >= from && rating <= to) : undefined;
}
