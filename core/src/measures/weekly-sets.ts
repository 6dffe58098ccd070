import type { Catalogue, ExerciseId, Muscle, Programme } from "../model/index.ts";
import type { Quarters } from "../units.ts";
import { type AskedSession, askedWeek } from "./asked-session.ts";
import { type MuscleQuarters, slotQuarters } from "./set-quarters.ts";

export interface WeeklySets {
  /** Quarter-sets per muscle. */
  readonly quarters: MuscleQuarters;
  /** Exercises that the catalogue does not know: their sets are missing from the count. */
  readonly unknown: readonly ExerciseId[];
}

/**
 * Fractional sets per muscle in one week. Only the work counts, not warm-up and conditioning.
 *
 * @param sessions the sessions of the week, of a programme (`askedWeek`) or of a plan
 * @source pelland2024
 */
export function weeklySets(sessions: readonly AskedSession[], catalogue: Catalogue): WeeklySets {
  const sum: Partial<Record<Muscle, Quarters>> = {};
  const unknown: ExerciseId[] = [];
  for (const { blocks } of sessions) {
    for (const { slots } of blocks) {
      for (const slot of slots) {
        const exercise = catalogue.exercises.get(slot.exercise);
        if (exercise === undefined) unknown.push(slot.exercise);
        else slotQuarters(exercise, slot.dose, sum);
      }
    }
  }
  return { quarters: sum, unknown };
}

/**
 * Fractional sets per muscle in one week of a phase, dose changes and light weeks included.
 *
 * @param phaseIndex position of the phase, 0 = first
 * @param week week of the phase, 1 = first
 * @throws RangeError when the programme has no such phase or week
 */
export function phaseWeekSets(
  programme: Programme,
  phaseIndex: number,
  week: number,
  catalogue: Catalogue,
): WeeklySets {
  const phase = programme.phases[phaseIndex];
  if (phase === undefined || !(week >= 1 && week <= phase.weeks)) {
    throw new RangeError(
      `Cannot count sets as phase and week must be in the programme: current values are ${phaseIndex} and ${week}`,
    );
  }
  return weeklySets(askedWeek(phase, week), catalogue);
}
