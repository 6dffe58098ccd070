import type { Json, Reason } from "../model/index.ts";

/** Why a slot holds what it holds. Each code names one sentence; its data are listed beside it. */
export const FIT_CODES = [
  /** exercise */
  "fit/first-choice",
  /** first, exercise, why: reasons against the first choice */
  "fit/instead",
  /** first, exercise, steps: of the ladder, from the first choice */
  "fit/right-rung",
  /** first, exercise */
  "fit/more-points",
  /** exercise */
  "fit/pinned",
  /** exercise, why */
  "fit/pin-beaten",
  /** exercise */
  "fit/unknown-exercise",
  /** tags */
  "fit/watch",
  /** no data */
  "fit/liked",
  /** no data */
  "fit/disliked",
  /** asked, sets */
  "fit/sets-changed",
  /** first, could: the best form that there was no room for */
  "fit/no-room",
  /** pattern, tried: how many forms were set aside */
  "fit/nothing-fits",
  /** exercise, why */
  "fit/set-aside",
] as const;
export type FitCode = (typeof FIT_CODES)[number];

export function reason(code: FitCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}
