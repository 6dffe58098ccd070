import { type Catalogue, MUSCLES, type Muscle } from "../model/index.ts";
import type { AskedSession } from "./asked-session.ts";
import { directSets, HARD_SETS } from "./hard-muscles.ts";

/** One session that trains a muscle directly. */
export interface Exposure {
  /** Position of the session in the sequence, 0 = first. */
  readonly session: number;
  readonly direct: number;
  readonly hard: boolean;
  /** Wall hours from the start of the one before; undefined for the first, NaN when a start is not known. */
  readonly hoursSince?: number;
  /** Wall hours from the last hard one before; undefined when there is none. */
  readonly hoursSinceHard?: number;
}

/**
 * When each muscle is trained directly, how much, how hard, and how long after the last time. The question behind
 * "does every muscle get its days off": judge with `!(hours >= 48)`, so that an unknown gap never passes for a long one.
 *
 * @param sessions in order of time, with the wall hour each begins at, from any fixed zero
 * @example
 * exposures([{ startsAtHour: 9, session: legs }, { startsAtHour: 57, session: legs }], catalogue)
 * // front thigh: hoursSince 48
 */
export function exposures(
  sessions: readonly { readonly startsAtHour: number; readonly session: AskedSession }[],
  catalogue: Catalogue,
): ReadonlyMap<Muscle, readonly Exposure[]> {
  const found = new Map<Muscle, Exposure[]>();
  const last = new Map<Muscle, number>();
  const lastHard = new Map<Muscle, number>();
  sessions.forEach(({ startsAtHour, session }, index) => {
    const counts = directSets(session, catalogue);
    for (const muscle of MUSCLES) {
      const count = counts.get(muscle);
      if (count === undefined) continue;
      const hard = count.near >= HARD_SETS;
      const before = last.get(muscle);
      const beforeHard = lastHard.get(muscle);
      const exposure: Exposure = {
        session: index,
        direct: count.direct,
        hard,
        ...(before === undefined ? {} : { hoursSince: startsAtHour - before }),
        ...(beforeHard === undefined ? {} : { hoursSinceHard: startsAtHour - beforeHard }),
      };
      found.set(muscle, [...(found.get(muscle) ?? []), exposure]);
      last.set(muscle, startsAtHour);
      if (hard) lastHard.set(muscle, startsAtHour);
    }
  });
  return found;
}
