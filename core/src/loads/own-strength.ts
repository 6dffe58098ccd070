import type { Day } from "../day.ts";
import type { Exercise, Lift, Person } from "../model/index.ts";
import { type Load, type Mass, massOf } from "../units.ts";
import { loadToMove, movedBy } from "./moved-by.ts";
import { type Strength, strengthFrom } from "./record.ts";

/**
 * What a load of an exercise weighs on the scale that its records are compared on: what the limbs move, or on a stack
 * what the pin says.
 *
 * @returns undefined where it is not known (movedBy)
 * @example
 * onScale(dumbbellPress, person, { value: 6, unit: "kg" }) // 12 kg
 */
export function onScale(exercise: Exercise, person: Person, load: Load | undefined): Mass | undefined {
  if (exercise.loadMeaning === "stack") return load && massOf(load);
  return movedBy(exercise, load, person.mass && massOf(person.mass.load));
}

/** onScale turned round: the load, in the meaning of the exercise, that weighs so much on the scale. */
export function offScale(exercise: Exercise, person: Person, mass: Mass): Mass | undefined {
  if (exercise.loadMeaning === "stack") return mass;
  return loadToMove(exercise, mass, person.mass && massOf(person.mass.load));
}

/** @returns a person's records of one exercise that say a load, or that none was added to the body; latest first */
export function recordsOf(exercise: Exercise, person: Person): readonly Lift[] {
  const bodyCounts = exercise.loadMeaning === "added to body" || exercise.loadMeaning === "body only";
  return person.lifts
    .filter((lift) => lift.exercise === exercise.id && (lift.load !== undefined || bodyCounts))
    .toSorted((a, b) => b.on - a.on);
}

/** @returns a person's 1RM in one exercise on its scale, undefined when no record gives a figure */
export function ownStrength(exercise: Exercise, person: Person, on: Day): Strength | undefined {
  return strengthFrom(recordsOf(exercise, person), (lift) => onScale(exercise, person, lift.load), on);
}
