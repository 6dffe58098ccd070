import type { SourceId } from "../sources.ts";

/** Share of body mass on the straps in a row with straight arms, by degrees of lean from upright: 40 students. */
export const LEAN_ROW_SHARES: {
  readonly source: SourceId;
  readonly rows: readonly { readonly degrees: number; readonly share: number; readonly sd: number }[];
} = {
  source: "melroseDawes2015",
  rows: [
    { degrees: 30, share: 0.3744, sd: 0.0145 },
    { degrees: 45, share: 0.5288, sd: 0.0059 },
    { degrees: 60, share: 0.6808, sd: 0.0195 },
    { degrees: 75, share: 0.7938, sd: 0.0214 },
  ],
};

/**
 * The share of body mass in a strap row at a measured lean.
 *
 * @param degrees from upright: 30, 45, 60 or 75
 * @returns the share, undefined for a lean that nobody measured; never interpolated
 * @source melroseDawes2015
 * @example leanRowShare(45) //=> 0.5288
 */
export function leanRowShare(degrees: number): number | undefined {
  return LEAN_ROW_SHARES.rows.find((row) => row.degrees === degrees)?.share;
}
