import { nearExercises } from "../exercises/index.ts";
import type { Exercise, ExerciseId, Path, Pattern } from "../model/index.ts";
import type { Check, CheckInput, Cure, Facts, Found } from "./run/check.ts";
import { itemPlaces, slotPlaces } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string };

interface Named {
  readonly exercise: ExerciseId;
  readonly at: Path;
  readonly about: Facts;
  readonly pattern?: Pattern;
}

/** Every exercise that the programme names, with where. */
function namedExercises(input: CheckInput): readonly Named[] {
  const slots = slotPlaces(input.programme).map(({ slot, at, phase, session }) => ({
    exercise: slot.first,
    at: [...at, "first"],
    about: { phase: phase.key, session: session.key, slot: slot.slot },
    pattern: slot.pattern,
  }));
  const items = itemPlaces(input.programme).flatMap(({ exercise, others, at, phase, session, item }) => [
    { exercise, at: [...at, "do"], about: { phase, session, item } },
    ...others.map((other, index) => ({
      exercise: other,
      at: [...at, "or", index],
      about: { phase, session, item: `${item}, or ${index + 1}` },
    })),
  ]);
  return [...slots, ...items];
}

/** Names that may have been meant, those of the wanted pattern first. */
function nearNames({ catalogue }: CheckInput, exercise: ExerciseId, pattern: Pattern | undefined) {
  const meant = nearExercises(catalogue, exercise);
  const suits = (each: Exercise) => pattern !== undefined && each.pattern === pattern;
  return [...meant.filter(suits), ...meant.filter((each) => !suits(each))].map(({ id, name }) => ({ id, name }));
}

/**
 * An exercise that the catalogue does not know: nobody can be given it, and nothing can be counted of it.
 *
 * The remedy takes one of the names that may have been meant, those of the slot's own pattern first.
 */
export const unknownExercise: Check<"slot/unknown-exercise", Data> = {
  id: "slot/unknown-exercise",
  severity: "stop",
  sources: ["ours"],
  always: true,
  run(input) {
    return namedExercises(input).flatMap(({ exercise, at, about, pattern }): Found<Data>[] => {
      if (input.catalogue.exercises.has(exercise)) return [];
      let known: ReturnType<typeof nearNames> | undefined;
      const near = () => {
        known ??= nearNames(input, exercise, pattern);
        return known;
      };
      const cures = (): readonly Cure[] =>
        near().map(({ id, name }) => ({
          id: "take-near-name",
          data: { exercise, id, name },
          changes: [{ op: "set", at, value: id }],
        }));
      return [{ at, data: { ...about, exercise }, more: () => ({ near: near() }), cures }];
    });
  },
};
