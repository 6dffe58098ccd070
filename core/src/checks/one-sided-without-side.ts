import { type Dose, type Exercise, printDose } from "../model/index.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import { aboutDose, type DosePlace, pathOfDose } from "./run/walk.ts";

type Data = Facts & {
  readonly exercise: string;
  readonly name: string;
  /** True when each side should be said, false when it should not. */
  readonly wanted: boolean;
};

/** Turns that change sides by themselves may be counted either way. */
function saysWrong(exercise: Exercise, dose: Dose): boolean {
  if (exercise.eachSide) return dose.sets.some((set) => !set.eachSide);
  return exercise.limb !== "alternating" && dose.sets.some((set) => set.eachSide);
}

function withSides(dose: Dose, eachSide: boolean): Dose {
  return { ...dose, sets: dose.sets.map((set) => ({ ...set, eachSide })) };
}

/**
 * A movement done one side at a time whose dose does not say "each side", or the reverse. Read by two people it is two
 * different doses, one twice the other.
 *
 * The remedy says it, or leaves it out.
 */
export const oneSidedWithoutSide: Check<"dose/one-sided-without-side", Data> = {
  id: "dose/one-sided-without-side",
  severity: "warn",
  sources: ["practice"],
  run({ doses, items, catalogue }) {
    const found: Found<Data>[] = [];
    const look = (place: DosePlace) => {
      const exercise = catalogue.exercises.get(place.exercise);
      if (exercise === undefined || !saysWrong(exercise, place.dose)) return;
      const { eachSide: wanted, name } = exercise;
      const at = pathOfDose(place);
      const after = withSides(place.dose, wanted);
      const cure: Cure = {
        id: wanted ? "say-each-side" : "drop-each-side",
        data: { from: printDose(place.dose), to: printDose(after) },
        changes: [{ op: "set", at, value: after }],
      };
      const data = { ...aboutDose(place), exercise: place.exercise, name, wanted };
      found.push({ at, data, cures: () => [cure] });
    };
    for (const place of doses) look(place);
    for (const item of items) look({ dose: item.dose, exercise: item.exercise, of: item });
    return found;
  },
};
