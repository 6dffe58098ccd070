import { type Catalogue, LANES, type Lane, laneOf, type Pattern } from "../model/index.ts";
import { type AskedSession, workOf } from "./asked-session.ts";

export interface LaneWork {
  /** Working sets, however hard. */
  readonly sets: number;
  /** Sessions in which the lane is trained. */
  readonly sessions: number;
}

/**
 * Which lanes a week trains: sets and sessions for each. A set counts for the lane of its movement's pattern, practice
 * sets too, since a movement is learned by doing it. Conditioning counts for its lane as one set. An exercise that is
 * not known counts by what the slot is for.
 *
 * @returns every lane, with zeros where nothing is trained
 */
export function lanesTrained(
  sessions: readonly AskedSession[],
  catalogue: Catalogue,
): Readonly<Record<Lane, LaneWork>> {
  const work = Object.fromEntries(LANES.map((lane) => [lane, { sets: 0, sessions: 0 }])) as Record<Lane, LaneWork>;
  for (const session of sessions) {
    const here = new Map<Lane, number>();
    const add = (pattern: Pattern | undefined, sets: number) => {
      const lane = pattern === undefined ? undefined : laneOf(pattern);
      if (lane !== undefined) here.set(lane, (here.get(lane) ?? 0) + sets);
    };
    for (const slot of workOf(session)) {
      add(catalogue.exercises.get(slot.exercise)?.pattern ?? slot.pattern, slot.dose.sets.length);
    }
    for (const item of session.conditioning) add(catalogue.exercises.get(item.exercise)?.pattern, 1);
    for (const [lane, sets] of here) {
      work[lane] = { sets: work[lane].sets + sets, sessions: work[lane].sessions + 1 };
    }
  }
  return work;
}
