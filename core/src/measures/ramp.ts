import type { Dose, Exercise, LoadMeaning } from "../model/index.ts";

/** Repetitions and rest of a lighter set before the work. Practice, no source. */
const RAMP_REPS = 5;
const RAMP_REST_S = 45;

/** Kinds of load that can be made lighter step by step. */
const IN_STEPS: readonly LoadMeaning[] = ["total", "per hand", "one implement", "stack", "added to body"];

/** @returns what so many lighter sets before the work ask for */
export function rampDose(sets: number, eachSide = false): Dose {
  const one = { amount: { kind: "reps", span: { from: RAMP_REPS, to: RAMP_REPS } }, eachSide } as const;
  return { sets: Array.from({ length: sets }, () => one), restS: RAMP_REST_S };
}

/**
 * The lighter sets that lead up to an exercise.
 *
 * @returns their dose, or undefined where there is nothing to make lighter: body mass alone, bands, heights
 * @source practice
 * @example
 * rampOf(barbellSquat, 2)?.sets.length //=> 2
 */
export function rampOf(exercise: Exercise, sets: number): Dose | undefined {
  const loaded = IN_STEPS.includes(exercise.loadMeaning) && exercise.amounts === "reps";
  return loaded && sets > 0 ? rampDose(sets, exercise.eachSide) : undefined;
}
