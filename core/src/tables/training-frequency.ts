import type { Span, Status } from "../model/index.ts";
import type { SourceId } from "../sources.ts";

/** Sessions a week by training status, as two bodies print them; they disagree on advanced lifters. */
export const TRAINING_FREQUENCY: readonly {
  readonly source: SourceId;
  readonly days: Readonly<Record<Status, Span>>;
}[] = [
  {
    source: "acsm2009",
    days: { novice: { from: 2, to: 3 }, intermediate: { from: 3, to: 4 }, advanced: { from: 4, to: 5 } },
  },
  {
    source: "haffTriplett2016",
    days: { novice: { from: 2, to: 3 }, intermediate: { from: 3, to: 4 }, advanced: { from: 4, to: 7 } },
  },
];
