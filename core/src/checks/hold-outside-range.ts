import { printDose, type SetDose, type Span } from "../model/index.ts";
import type { Check, Facts, Found } from "./run/check.ts";
import { aboutDose, pathOfDose } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly asked: Span & Facts };

function isOutside(set: SetDose, range: Span): boolean {
  return set.amount.kind === "hold" && !(set.amount.span.from >= range.from && set.amount.span.to <= range.to);
}

function within(set: SetDose, range: Span): SetDose {
  if (set.amount.kind !== "hold") return set;
  const into = (seconds: number) => Math.min(range.to, Math.max(range.from, seconds));
  const { from, to } = set.amount.span;
  return { ...set, amount: { kind: "hold", span: { from: into(from), to: into(to) } } };
}

/**
 * A hold of fewer seconds than do anything, or of so many that a harder form would do more: outside the useful range of
 * its form. Whoever gets it is given seconds within the range.
 *
 * The remedy writes seconds within the range.
 */
export const holdOutsideRange: Check<"dose/hold-outside-range", Data> = {
  id: "dose/hold-outside-range",
  severity: "warn",
  sources: ["ours"],
  run({ doses, catalogue }) {
    return doses.flatMap((place): readonly Found<Data>[] => {
      const exercise = catalogue.exercises.get(place.exercise);
      const range = exercise?.hold;
      if (exercise === undefined || range === undefined) return [];
      const { dose } = place;
      const worst = dose.sets.find((set) => isOutside(set, range));
      if (worst === undefined || worst.amount.kind !== "hold") return [];
      const at = pathOfDose(place);
      const after = { ...dose, sets: dose.sets.map((set) => within(set, range)) };
      const { from, to } = worst.amount.span;
      const figures = { asked: { from, to }, range: { from: range.from, to: range.to } };
      return [
        {
          at,
          data: { ...aboutDose(place), exercise: exercise.id, name: exercise.name, ...figures },
          cures: () => [
            {
              id: "hold-that-fits",
              data: { from: printDose(dose), to: printDose(after) },
              changes: [{ op: "set", at, value: after }],
            },
          ],
        },
      ];
    });
  },
};
