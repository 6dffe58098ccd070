import { distance } from "../exercises/index.ts";
import type { Dose, Exercise, Reason, StressTag } from "../model/index.ts";
import { type Clearance, cutDose, setAsideByFilters, underCeilings } from "../offer/index.ts";
import { canBeDoneAt } from "./cures/new-slot.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Health, Look } from "./run/look.ts";
import { aboutPlace, pathOf } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly tags: readonly StressTag[] };

/** At most so many other forms are offered. */
const FORMS_OFFERED = 2;

/** Why a form is set aside for this person, whatever the place and the ladder say. */
function setAside(exercise: Exercise, cut: ReturnType<Health["cut"]>, clearance: Clearance): readonly Reason[] {
  return [...setAsideByFilters(exercise, clearance), ...underCeilings(exercise, cut, clearance.ceilings).why];
}

/** Easier forms of the same ladder that are not set aside, the nearest first. */
function easierForms(look: Look, exercise: Exercise, dose: Dose, clearance: Clearance): readonly Exercise[] {
  const found = [...look.catalogue.exercises.values()].flatMap((other) => {
    const steps = distance(look.catalogue, exercise.id, other.id);
    const suits = steps !== undefined && steps < 0 && other.amounts === exercise.amounts && !other.coachOnly;
    const alike = other.eachSide === exercise.eachSide && canBeDoneAt(other, look.place);
    return suits && alike && setAside(other, cutDose(other, dose, clearance, {}), clearance).length === 0
      ? [{ other, steps }]
      : [];
  });
  return found
    .sort((a, b) => b.steps - a.steps)
    .map(({ other }) => other)
    .slice(0, FORMS_OFFERED);
}

/**
 * A first choice that is set aside for a person: it stresses what a stated condition caps, such as loads from the floor
 * and the way down to it, or a lane is withheld until a clinician has written limits. They get another form, so it is a
 * note. Judged only where a person and a day are given.
 *
 * The remedy takes an easier form of the same ladder that is not set aside.
 */
export const aboveCeiling: Check<"person/above-ceiling", Data> = {
  id: "person/above-ceiling",
  severity: "note",
  sources: ["ours"],
  run(look) {
    if (look.health === undefined) return [];
    const { clearance, cut } = look.health;
    return look.slots.flatMap((place): readonly Found<Data>[] => {
      const { first, dose } = place.slot;
      const exercise = look.catalogue.exercises.get(first);
      if (exercise === undefined) return [];
      const why = setAside(exercise, cut(exercise, dose), clearance);
      if (why.length === 0) return [];
      const tags = why.flatMap(({ data }) => (typeof data["tag"] === "string" ? [data["tag"] as StressTag] : []));
      const lanes = why.flatMap(({ code, data }) => (code === "offer/lane-withheld" ? [String(data["lane"])] : []));
      const at = [...pathOf(place), "first"];
      return [
        {
          at,
          data: { ...aboutPlace(place), exercise: exercise.id, name: exercise.name, tags, lanes },
          cures: (): readonly Cure[] =>
            easierForms(look, exercise, dose, clearance).map(({ id, name }) => ({
              id: "take-near-name",
              data: { id, name },
              changes: [{ op: "set", at, value: id }],
            })),
        },
      ];
    });
  },
};
