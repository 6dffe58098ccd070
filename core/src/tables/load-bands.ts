import type { Goal, Span, Status } from "../model/index.ts";
import type { SourceId } from "../sources.ts";

/** Loads and repetitions that a body advises for a goal. Both ends of a band are included. */
export interface LoadBand {
  readonly source: SourceId;
  readonly goal: Goal;
  /** Whom it is meant for; everybody when left out. */
  readonly status?: readonly Status[];
  /** Set apart where one goal has two rows. */
  readonly kind?: "single effort" | "multiple effort";
  /** Per cent of the 1RM. */
  readonly percent: Span;
  readonly reps: Span;
  readonly sets?: Span;
  /** Seconds between sets. */
  readonly restS?: Span;
}

/**
 * Loads by goal as the handbook and the position stand print them. They disagree (a novice's strength work: 60–70 % in
 * the stand, 85 % or more in the handbook), so each row keeps its source and none is averaged. An open end is closed at
 * what the source itself calls the limit: 100 %, 1 repetition; the handbook sets no upper end for endurance
 * repetitions, so that row ends where the stand's does, at 25.
 *
 * @source haffTriplett2016, acsm2009
 */
export const LOAD_BANDS: readonly LoadBand[] = [
  {
    source: "haffTriplett2016",
    goal: "strength",
    percent: { from: 85, to: 100 },
    reps: { from: 1, to: 6 },
    sets: { from: 2, to: 6 },
    restS: { from: 120, to: 300 },
  },
  {
    source: "haffTriplett2016",
    goal: "power",
    kind: "single effort",
    percent: { from: 80, to: 90 },
    reps: { from: 1, to: 2 },
    sets: { from: 3, to: 5 },
    restS: { from: 120, to: 300 },
  },
  {
    source: "haffTriplett2016",
    goal: "power",
    kind: "multiple effort",
    percent: { from: 75, to: 85 },
    reps: { from: 3, to: 5 },
    sets: { from: 3, to: 5 },
    restS: { from: 120, to: 300 },
  },
  {
    source: "haffTriplett2016",
    goal: "size",
    percent: { from: 67, to: 85 },
    reps: { from: 6, to: 12 },
    sets: { from: 3, to: 6 },
    restS: { from: 30, to: 90 },
  },
  {
    source: "haffTriplett2016",
    goal: "endurance",
    percent: { from: 0, to: 67 },
    reps: { from: 12, to: 25 },
    sets: { from: 2, to: 3 },
    restS: { from: 0, to: 30 },
  },
  {
    source: "acsm2009",
    goal: "strength",
    status: ["novice", "intermediate"],
    percent: { from: 60, to: 70 },
    reps: { from: 8, to: 12 },
    sets: { from: 1, to: 3 },
    restS: { from: 120, to: 180 },
  },
  {
    source: "acsm2009",
    goal: "strength",
    status: ["advanced"],
    percent: { from: 80, to: 100 },
    reps: { from: 1, to: 12 },
    restS: { from: 180, to: 300 },
  },
];

/**
 * What the sources advise for a goal and a training status.
 *
 * @returns every row that applies, the handbook's first; empty where nothing printed was read ("general")
 * @source haffTriplett2016, acsm2009
 * @example
 * loadBandsFor("strength", "novice").map((band) => band.percent.from) //=> [85, 60]
 */
export function loadBandsFor(goal: Goal, status: Status): readonly LoadBand[] {
  return LOAD_BANDS.filter((band) => band.goal === goal && (band.status?.includes(status) ?? true));
}
