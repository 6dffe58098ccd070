import { type Gate, gateOf, harderOf } from "../exercises/index.ts";
import type { Catalogue, ExerciseId } from "../model/index.ts";

/** A next form of the ladder, with what must be shown before it. */
export interface HarderForm {
  readonly exercise: ExerciseId;
  readonly gate: Gate;
}

/** @returns the forms one step harder, in the order of the ladders, each with its gate */
export function harderForms(catalogue: Catalogue, from: ExerciseId): readonly HarderForm[] {
  return harderOf(catalogue, from).flatMap((exercise) => {
    const steps = catalogue.ladders.flatMap(({ steps }) => steps);
    const step = steps.find((each) => each.from === from && each.to === exercise);
    return step === undefined ? [] : [{ exercise, gate: gateOf(catalogue, step) }];
  });
}
