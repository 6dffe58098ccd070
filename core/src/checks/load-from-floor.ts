import { distance } from "../exercises/index.ts";
import type { Exercise, ExerciseId } from "../model/index.ts";
import { canBeDoneAt } from "./cures/new-slot.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { aboutPlace, pathOf } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string };

/** Forms that begin or end with the load on the floor. Ours, by what each asks for. */
export const FROM_FLOOR: readonly ExerciseId[] = [
  "kettlebell-deadlift",
  "hex-bar-deadlift",
  "barbell-deadlift",
  "barbell-deadlift-pause",
  "barbell-deadlift-deficit",
  "power-clean",
  "ball-slam",
];

/** At most so many other forms are offered. */
const FORMS_OFFERED = 3;

/** Forms of the same ladder that leave the load off the floor, the nearest first, the easier of two as near. */
function raisedForms(look: Look, exercise: Exercise): readonly Exercise[] {
  const found = [...look.catalogue.exercises.values()].flatMap((other) => {
    const steps = distance(look.catalogue, exercise.id, other.id);
    const alike = other.amounts === exercise.amounts && other.eachSide === exercise.eachSide && !other.coachOnly;
    const suits = steps !== undefined && alike && !FROM_FLOOR.includes(other.id) && canBeDoneAt(other, look.place);
    return suits ? [{ other, steps }] : [];
  });
  return found
    .sort((a, b) => Math.abs(a.steps) - Math.abs(b.steps) || a.steps - b.steps)
    .map(({ other }) => other)
    .slice(0, FORMS_OFFERED);
}

/**
 * A load lifted from the floor or put down there, for a person with thin bones: lifting from the floor is to be avoided
 * with them. Judged only where a person and a day are given.
 *
 * The remedy takes a near form of the same ladder that begins raised.
 */
export const loadFromFloor: Check<"person/load-from-floor", Data> = {
  id: "person/load-from-floor",
  severity: "warn",
  sources: ["giangregorio2014", "ours"],
  run(look) {
    const { person, on, catalogue } = look;
    if (person === undefined || on === undefined) return [];
    if (!person.cautions.some(({ statement, from }) => statement === "bone" && from <= on)) return [];
    return look.slots.flatMap((place): readonly Found<Data>[] => {
      const exercise = catalogue.exercises.get(place.slot.first);
      if (exercise === undefined || !FROM_FLOOR.includes(exercise.id)) return [];
      const at = [...pathOf(place), "first"];
      return [
        {
          at,
          data: { ...aboutPlace(place), exercise: exercise.id, name: exercise.name },
          cures: (): readonly Cure[] =>
            raisedForms(look, exercise).map(({ id, name }) => ({
              id: "take-near-name",
              data: { id, name },
              changes: [{ op: "set", at, value: id }],
            })),
        },
      ];
    });
  },
};
