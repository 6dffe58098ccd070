import { type Catalogue, MUSCLES, type Muscle } from "../model/index.ts";
import { askedReserve } from "./asked-amount.ts";
import { type AskedSession, workOf } from "./asked-session.ts";
import { isDirectSet } from "./set-quarters.ts";

/** Direct sets in one session that load a muscle hard. Ours, no source. */
export const HARD_SETS = 3;
/** A set that ends with more than this in reserve is not hard. Ours, no source. */
export const HARD_RESERVE = 3;

export interface DirectSets {
  /** Whole direct sets: those where the muscle drives the movement. */
  readonly direct: number;
  /** Of these, sets that end with at most 3 in reserve, or do not say. */
  readonly near: number;
}

/** @returns direct sets of a session per muscle; a muscle with none is left out */
export function directSets(session: AskedSession, catalogue: Catalogue): ReadonlyMap<Muscle, DirectSets> {
  const counts = new Map<Muscle, DirectSets>();
  for (const slot of workOf(session)) {
    const exercise = catalogue.exercises.get(slot.exercise);
    if (exercise === undefined) continue;
    for (const set of slot.dose.sets) {
      const reserve = askedReserve(set);
      const near = reserve === undefined || reserve <= HARD_RESERVE ? 1 : 0;
      if (!isDirectSet(exercise, set)) continue;
      for (const muscle in exercise.muscles) {
        const name = muscle as Muscle;
        if (exercise.muscles[name] !== 1) continue;
        const before = counts.get(name) ?? { direct: 0, near: 0 };
        counts.set(name, { direct: before.direct + 1, near: before.near + near });
      }
    }
  }
  return counts;
}

/**
 * Muscles that a session loads hard: three direct sets or more that end with at most 3 in reserve. The calendar keeps
 * two such sessions for one muscle apart.
 *
 * @source ours
 * @example
 * hardMuscles(legDay, catalogue) //=> ["buttocks", "front thigh"]
 */
export function hardMuscles(session: AskedSession, catalogue: Catalogue): readonly Muscle[] {
  const counts = directSets(session, catalogue);
  return MUSCLES.filter((muscle) => (counts.get(muscle)?.near ?? 0) >= HARD_SETS);
}
