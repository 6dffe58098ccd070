import type { Muscle, Span, Status } from "../model/index.ts";
import type { SourceId } from "../sources.ts";

/** One end of a band, in fractional sets a week, and what it rests on. */
export interface BandEnd {
  readonly sets: number;
  readonly source: SourceId;
}

/**
 * Fractional sets for one muscle in a week, by training status. Both ends are included.
 *
 * Three ends are printed figures: about 4 sets where growth can first be told (pelland2024, as reported), 10 as the
 * general least (iusca2021), 20 as the upper end of 12–20 suggested for trained young men (bazValle2022). 10 for
 * novices is the upper end of the 5–10 called effective (pelland2024, as reported). The band between, 8–16, is common
 * practice. No study says that more than the upper end harms; it is where more is not shown to help.
 */
export const WEEKLY_SETS: Readonly<Record<Status, { readonly from: BandEnd; readonly to: BandEnd }>> = {
  novice: { from: { sets: 4, source: "pelland2024" }, to: { sets: 10, source: "pelland2024" } },
  intermediate: { from: { sets: 8, source: "practice" }, to: { sets: 16, source: "practice" } },
  advanced: { from: { sets: 10, source: "iusca2021" }, to: { sets: 20, source: "bazValle2022" } },
};

/** Muscles that need no work of their own: calves and forearms may stand at nothing. Ours, no source. */
export const NO_LEAST: readonly Muscle[] = ["calf", "forearm"];

/**
 * The band of weekly fractional sets for a muscle, where the coach gives none.
 *
 * @returns whole sets, both ends included
 * @source pelland2024, iusca2021, bazValle2022, practice, ours
 * @example
 * weeklyBand("novice", "chest") //=> { from: 4, to: 10 }
 */
export function weeklyBand(status: Status, muscle: Muscle): Span {
  const { from, to } = WEEKLY_SETS[status];
  return { from: NO_LEAST.includes(muscle) ? 0 : from.sets, to: to.sets };
}
