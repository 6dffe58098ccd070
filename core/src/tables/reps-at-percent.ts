import type { SourceId } from "../sources.ts";
import { REPS_AT_PERCENT_BOOK } from "./reps-at-percent-book.ts";

/** Most repetitions possible at a share of the one-repetition maximum, as one source prints it, shares falling. */
export interface RepsAtPercent {
  readonly source: SourceId;
  readonly rows: readonly { readonly reps: number; readonly percent: number }[];
}

/** Repetitions that lie around a share: `most` is left out below the lowest row, where the table says nothing more. */
export interface RepsBracket {
  readonly least: number;
  readonly most?: number;
}

/**
 * How many repetitions the table prints for a share of the 1RM.
 *
 * @param percent per cent of the 1RM
 * @param table the book's by default; the one-page chart differs at 12 repetitions and is never mixed in
 * @returns repetitions as printed, or undefined where the table has no such row; never interpolated
 * @source nscaEssentialsTable
 * @example
 * repsAt(75) //=> 10
 */
export function repsAt(percent: number, table: RepsAtPercent = REPS_AT_PERCENT_BOOK): number | undefined {
  return table.rows.find((row) => row.percent === percent)?.reps;
}

/**
 * Which share of the 1RM the table prints for a number of repetitions.
 *
 * @param reps repetitions to failure: those done and those left in reserve
 * @returns per cent as printed, or undefined where the table has no such row; never interpolated
 * @source nscaEssentialsTable
 * @example
 * percentFor(7) //=> 83
 */
export function percentFor(reps: number, table: RepsAtPercent = REPS_AT_PERCENT_BOOK): number | undefined {
  return table.rows.find((row) => row.reps === reps)?.percent;
}

/**
 * Which repetitions lie around a share of the 1RM: from the row at or above it to the row at or below it. On a row both
 * are that row's. Below the lowest row only the least is known. People differ widely around every row: see
 * REPS_SPREAD.
 *
 * @param percent per cent of the 1RM, over 0 to 100
 * @returns least and most repetitions, as printed
 * @throws RangeError outside 0 to 100
 * @source nscaEssentialsTable
 * @example
 * repsBracket(82) //=> { least: 7, most: 8 }
 */
export function repsBracket(percent: number, table: RepsAtPercent = REPS_AT_PERCENT_BOOK): RepsBracket {
  if (!(percent > 0 && percent <= 100)) {
    throw new RangeError(
      `Cannot look up repetitions as the share must be over 0 and up to 100 %: current value is ${percent}`,
    );
  }
  const least = Math.max(...table.rows.filter((row) => row.percent >= percent).map((row) => row.reps));
  const below = table.rows.filter((row) => row.percent <= percent).map((row) => row.reps);
  return below.length === 0 ? { least } : { least, most: Math.min(...below) };
}

/**
 * The share of the 1RM at which so many repetitions are surely possible by the table: the row itself, or the next row
 * with more repetitions. Used to choose a first load, so it errs to the light side.
 *
 * @param reps repetitions to failure, whole, 1 or more
 * @returns per cent, or undefined beyond the last row
 * @source nscaEssentialsTable
 * @example
 * percentToAllow(13) //=> 65
 */
export function percentToAllow(reps: number, table: RepsAtPercent = REPS_AT_PERCENT_BOOK): number | undefined {
  if (!(reps >= 1)) {
    throw new RangeError(`Cannot look up a share as repetitions must be 1 or more: current value is ${reps}`);
  }
  return table.rows.find((row) => row.reps >= reps)?.percent;
}
