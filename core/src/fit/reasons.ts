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
  // A single change and what it would gain.
  /** what: a piece of equipment */
  "fit/if-equipment",
  /** more: minutes for every session */
  "fit/if-minutes",
  /** statement or tag, who */
  "fit/if-caution",
  /** kind, who, to, and what it limits */
  "fit/if-limit",
  /** days: training days a week */
  "fit/if-day",
  // A rule that cannot be kept together with others.
  /** place: its name */
  "fit/rule-kit",
  /** no data: what the person has been assessed on or shown */
  "fit/rule-earned",
  /** statement or tag, who */
  "fit/rule-caution",
  /** kind, who, to, and what it limits */
  "fit/rule-limit",
  /** tag */
  "fit/rule-cannot",
  /** muscle, low, high: quarter-sets a week */
  "fit/rule-band",
  /** session, minutes */
  "fit/rule-minutes",
  /** session */
  "fit/rule-once",
  /** no data */
  "fit/rule-stations",
  /** slot */
  "fit/rule-fill",
] as const;
export type FitCode = (typeof FIT_CODES)[number];

export function reason(code: FitCode, data: Readonly<Record<string, Json>> = {}): Reason {
  return { code, data };
}
