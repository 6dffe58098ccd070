import type { Exercise } from "../model/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";

/**
 * What a person lifts beside their own body at one moment, for limits that a clinician wrote.
 *
 *   2 × load per hand; otherwise the load
 *
 * @param load in the meaning of the exercise; undefined when it is not known yet
 * @returns the mass; 0 for body mass alone; undefined where nobody knows it (a stack, a band, a machine that helps, a
 * load not known yet). What is unknown is never under a limit
 * @source ours
 * @example
 * heldTotal(dumbbellPress, { value: 6, unit: "kg" }) // 12 kg
 */
export function heldTotal({ loadMeaning }: Exercise, load: Load | undefined): Mass | undefined {
  switch (loadMeaning) {
    case "body only":
    case "height":
    case "none":
      return 0 as Mass;
    case "per hand":
      return load === undefined ? undefined : ((2 * massOf(load)) as Mass);
    case "total":
    case "one implement":
    case "added to body":
      return load === undefined ? undefined : massOf(load);
    default:
      return undefined;
  }
}

/**
 * What one hand holds at most, for limits that a clinician wrote per hand.
 *
 * A bar in two hands is half in each. One implement counts whole, though two hands may hold it, since one hand often
 * picks it up and puts it down.
 *
 * @param load in the meaning of the exercise; undefined when it is not known yet
 * @returns the mass, rounded up; undefined where nobody knows it: a stack, a band, help, a load not known yet, and
 * wherever hands carry an unknown part of body mass (a push-up, a hang)
 * @source ours
 * @example
 * heldPerHand(barbellPress, { value: 20, unit: "kg" }) // 10 kg
 */
export function heldPerHand(exercise: Exercise, load: Load | undefined): Mass | undefined {
  const total = heldTotal(exercise, load);
  if (total === undefined) return undefined;
  switch (exercise.loadMeaning) {
    case "per hand":
      return (total / 2) as Mass;
    case "total":
      return (exercise.hands === "two" ? Math.ceil(total / 2) : total) as Mass;
    case "one implement":
      return total;
    case "added to body":
      return exercise.hands === "none" ? total : undefined;
    default:
      return exercise.hands === "none" ? (0 as Mass) : undefined;
  }
}
