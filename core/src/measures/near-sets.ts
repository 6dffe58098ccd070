import type { Catalogue, Muscle } from "../model/index.ts";
import { askedReserve } from "./asked-amount.ts";
import { type AskedSession, workOf } from "./asked-session.ts";
import { HARD_RESERVE } from "./hard-muscles.ts";
import { isDirectSet } from "./set-quarters.ts";

/** Whole sets of a session that end near the limit. */
export interface NearSets {
  /** Sets whose movement the muscle drives. */
  readonly direct: number;
  /** Sets that it helps in. */
  readonly helping: number;
}

/**
 * Sets of a session that end near the limit, with at most 3 in reserve or none said, per muscle: those it drives and
 * those it helps in. Ballistic work and short holds are left out, as in `directSets`.
 *
 * @returns a muscle with none is left out
 * @source ours
 * @example
 * nearSets(benchDay, catalogue).get("triceps") //=> { direct: 0, helping: 4 }
 */
export function nearSets(session: AskedSession, catalogue: Catalogue): ReadonlyMap<Muscle, NearSets> {
  const counts = new Map<Muscle, NearSets>();
  for (const slot of workOf(session)) {
    const exercise = catalogue.exercises.get(slot.exercise);
    if (exercise === undefined) continue;
    const near = slot.dose.sets.filter((set) => {
      const reserve = askedReserve(set);
      return isDirectSet(exercise, set) && (reserve === undefined || reserve <= HARD_RESERVE);
    }).length;
    if (near === 0) continue;
    for (const name in exercise.muscles) {
      const muscle = name as Muscle;
      const before = counts.get(muscle) ?? { direct: 0, helping: 0 };
      const isDirect = exercise.muscles[muscle] === 1;
      counts.set(muscle, {
        direct: before.direct + (isDirect ? near : 0),
        helping: before.helping + (isDirect ? 0 : near),
      });
    }
  }
  return counts;
}
