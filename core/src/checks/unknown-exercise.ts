import { nearExercises } from "../exercises/index.ts";
import type { Exercise, ExerciseId, Path, Pattern } from "../model/index.ts";
import type { Check, CheckInput, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { aboutPlace, pathOf } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string };

/** An exercise that the programme names. */
interface Named {
  readonly exercise: ExerciseId;
  readonly at: Path;
  readonly about: Facts;
  readonly pattern?: Pattern;
}

/** Every exercise that the programme names and the catalogue does not, with where. */
function unknownIn({ slots, items, catalogue }: Look): readonly Named[] {
  const isUnknown = (id: ExerciseId) => !catalogue.exercises.has(id);
  const named: Named[] = [];
  for (const place of slots) {
    const { first: exercise, pattern } = place.slot;
    if (!isUnknown(exercise)) continue;
    named.push({ exercise, at: [...pathOf(place), "first"], about: aboutPlace(place), pattern });
  }
  for (const place of items) {
    const about = aboutPlace(place);
    if (isUnknown(place.exercise)) named.push({ exercise: place.exercise, at: [...pathOf(place), "do"], about });
    place.others.forEach((exercise, index) => {
      if (!isUnknown(exercise)) return;
      const item = `${about["item"]}, or ${index + 1}`;
      named.push({ exercise, at: [...pathOf(place), "or", index], about: { ...about, item } });
    });
  }
  return named;
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
  run(look) {
    return unknownIn(look).map(({ exercise, at, about, pattern }): Found<Data> => {
      let known: ReturnType<typeof nearNames> | undefined;
      const near = () => {
        known ??= nearNames(look, exercise, pattern);
        return known;
      };
      const cures = (): readonly Cure[] =>
        near().map(({ id, name }) => ({
          id: "take-near-name",
          data: { exercise, id, name },
          changes: [{ op: "set", at, value: id }],
        }));
      return { at, data: { ...about, exercise }, more: () => ({ near: near() }), cures };
    });
  },
};
