import { printDose, type SetDose } from "../model/index.ts";
import { leastLeft } from "../offer/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutDose, pathOfDose } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly statements: readonly string[] };

/** Share of the 1RM from which nobody lifts without holding the breath, and repetitions left from which few do. Ours. */
const HEAVY_PERCENT = 85;
const MOST_LEFT = 1;

/** A set during which the breath is held: heavy, or close to its end. Holds are another matter. */
function invitesBreathHold(set: SetDose): boolean {
  if (set.amount.kind !== "reps" && set.amount.kind !== "most") return false;
  return (set.percent ?? 0) >= HEAVY_PERCENT || (leastLeft(set) ?? MOST_LEFT + 1) <= MOST_LEFT;
}

/**
 * A dose that nobody gets through without holding the breath, for a person whose stated condition forbids it: a share of
 * 85 % or more, or at most one repetition left. Judged only where a person and a day are given.
 *
 * The remedy cuts the dose to what the condition allows.
 */
export const breathHold: Check<"person/breath-hold", Data> = {
  id: "person/breath-hold",
  severity: "warn",
  sources: ["liftingPressure2024", "ours"],
  run({ doses, catalogue, health }) {
    if (health === undefined) return [];
    const { clearance, cut } = health;
    // What young people are given is another check's matter.
    const statements = clearance.noBreathHold.filter((statement) => statement !== "young");
    if (statements.length === 0) return [];
    return doses.flatMap((place): readonly Found<Data>[] => {
      const exercise = catalogue.exercises.get(place.exercise);
      if (exercise === undefined || !place.dose.sets.some(invitesBreathHold)) return [];
      const at = pathOfDose(place);
      const after = cut(exercise, place.dose).dose;
      const { id, name } = exercise;
      const dose = printDose(place.dose);
      return [
        {
          at,
          data: { ...aboutDose(place), exercise: id, name, dose, statements },
          cures: () => [
            {
              id: "within-limits",
              data: { from: dose, to: printDose(after) },
              changes: [{ op: "set", at, value: after }],
            },
          ],
        },
      ];
    });
  },
};
