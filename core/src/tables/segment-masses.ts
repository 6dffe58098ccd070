import type { SourceId } from "../sources.ts";

/** Parts of the body whose mass is tabulated; limbs are of one side. */
export const SEGMENTS = ["head", "trunk", "upper arm", "forearm", "hand", "thigh", "shank", "foot"] as const;
export type Segment = (typeof SEGMENTS)[number];

/** Mass of each segment as a share of body mass, by one source. */
export interface SegmentMasses {
  readonly source: SourceId;
  readonly sex?: "men" | "women";
  readonly share: Readonly<Record<Segment, number>>;
}

function masses(...shares: readonly number[]): SegmentMasses["share"] {
  return Object.fromEntries(SEGMENTS.map((segment, i) => [segment, shares[i]!])) as SegmentMasses["share"];
}

/** @source deLeva1996, winter2009, hartmannTunnemann */
export const SEGMENT_MASSES = {
  "de Leva, men": {
    source: "deLeva1996",
    sex: "men",
    share: masses(0.0694, 0.4346, 0.0271, 0.0162, 0.0061, 0.1416, 0.0433, 0.0137),
  },
  "de Leva, women": {
    source: "deLeva1996",
    sex: "women",
    share: masses(0.0668, 0.4257, 0.0255, 0.0138, 0.0056, 0.1478, 0.0481, 0.0129),
  },
  Winter: { source: "winter2009", share: masses(0.081, 0.497, 0.028, 0.016, 0.006, 0.1, 0.0465, 0.0145) },
  "Hartmann and Tünnemann": {
    source: "hartmannTunnemann",
    share: masses(0.07, 0.43, 0.035, 0.023, 0.007, 0.114, 0.053, 0.018),
  },
} as const satisfies Record<string, SegmentMasses>;

/** What moves with the load: everything but what stays on the floor, or in the hands. */
export const MOVED_FORMS = ["squat", "one-leg squat", "pull-up or dip", "head, trunk and arms", "one leg"] as const;
export type MovedForm = (typeof MOVED_FORMS)[number];

const MOVED: Readonly<Record<MovedForm, (share: SegmentMasses["share"]) => number>> = {
  squat: ({ shank, foot }) => 1 - 2 * (shank + foot),
  "one-leg squat": ({ shank, foot }) => 1 - (shank + foot),
  "pull-up or dip": ({ forearm, hand }) => 1 - 2 * (forearm + hand),
  "head, trunk and arms": ({ head, trunk, "upper arm": upper, forearm, hand }) =>
    head + trunk + 2 * (upper + forearm + hand),
  "one leg": ({ thigh, shank, foot }) => thigh + shank + foot,
};

/**
 * The share of body mass that moves, by segment masses: two-leg squat without shanks and feet, one-leg squat without one
 * shank and foot, pull-up and dip without forearms and hands.
 *
 * @returns a share of body mass; what is carried besides comes on top
 * @source deLeva1996, winter2009, hartmannTunnemann
 * @example movedShare("squat", SEGMENT_MASSES["de Leva, men"]).toFixed(3) //=> "0.886"
 */
export function movedShare(form: MovedForm, { share }: SegmentMasses): number {
  return MOVED[form](share);
}
