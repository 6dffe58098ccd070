import type { Exercise } from "../model/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";

/**
 * What the working limbs move.
 *
 *   total, one implement: the load · per hand: 2 × load · added to body: share × body mass + load
 *   assist: share × body mass − help · body only, height: share × body mass
 *
 * Body mass that a barbell squat or a lunge also moves is not counted here: loads are compared as people write them.
 *
 * @param load in the meaning of the exercise; for assist the help, where less is harder
 * @param bodyMass on the date of the load; masses of other dates mislead
 * @returns the mass, 0 where help is more than the body; undefined where it is not known: a stack or band, no body mass,
 * no published share, no load
 * @source ours
 * @example
 * movedBy(assistedPullUp, { value: 64, unit: "kg" }, kg(82)) // 18 kg, where the share is 1
 */
export function movedBy(exercise: Exercise, load: Load | undefined, bodyMass?: Mass): Mass | undefined {
  const own = bodyPart(exercise, bodyMass);
  const mass = load === undefined ? undefined : massOf(load);
  switch (exercise.loadMeaning) {
    case "total":
    case "one implement":
      return mass;
    case "per hand":
      return mass === undefined ? undefined : ((2 * mass) as Mass);
    case "added to body":
      return own === undefined ? undefined : ((own + (mass ?? 0)) as Mass);
    case "assist":
      return own === undefined || mass === undefined ? undefined : (Math.max(0, own - mass) as Mass);
    case "body only":
    case "height":
      return own;
    default:
      return undefined;
  }
}

/**
 * The load, in the meaning of an exercise, that makes the working limbs move a mass: movedBy turned round. Used when a
 * number is taken from one tool to another.
 *
 * @returns the mass to set, at least 0 (rounded down per hand); undefined where movedBy is, and for body mass alone
 * @source ours
 * @example
 * loadToMove(dumbbellPress, kg(14)) // 7 kg in each hand
 */
export function loadToMove(exercise: Exercise, moved: Mass, bodyMass?: Mass): Mass | undefined {
  const own = bodyPart(exercise, bodyMass);
  switch (exercise.loadMeaning) {
    case "total":
    case "one implement":
      return moved;
    case "per hand":
      return Math.floor(moved / 2) as Mass;
    case "added to body":
      return own === undefined ? undefined : (Math.max(0, moved - own) as Mass);
    case "assist":
      return own === undefined ? undefined : (Math.max(0, own - moved) as Mass);
    default:
      return undefined;
  }
}

function bodyPart({ bodyShare }: Exercise, bodyMass: Mass | undefined): Mass | undefined {
  if (bodyShare === undefined || bodyMass === undefined) return undefined;
  return Math.round(bodyShare.share * bodyMass) as Mass;
}
