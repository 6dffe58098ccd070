import { distance, harderOf } from "../exercises/index.ts";
import type { ExerciseId } from "../model/index.ts";
import type { Check, Cure, Facts, Found } from "./run/check.ts";
import type { Look } from "./run/look.ts";
import { aboutPlace, pathOf } from "./run/walk.ts";

type Data = Facts & { readonly exercise: string; readonly name: string; readonly steps: number };

/** Steps of a ladder that a phase may go up from the one before. Ours, no source. */
const MOST_STEPS = 2;

interface Jump {
  readonly from: ExerciseId;
  readonly steps: number;
}

/** First choices of each phase, each once. */
function firstsOf({ slots, programme }: Look): readonly ReadonlySet<ExerciseId>[] {
  const firsts = programme.phases.map(() => new Set<ExerciseId>());
  for (const { phaseAt, slot } of slots) firsts[phaseAt]!.add(slot.first);
  return firsts;
}

/** The form of the phase before that is nearest below another; undefined where one is near enough or none is known. */
function jumpFrom(look: Look, before: ReadonlySet<ExerciseId>, to: ExerciseId): Jump | undefined {
  let nearest: Jump | undefined;
  for (const from of before) {
    const steps = distance(look.catalogue, from, to);
    if (steps === undefined) continue;
    if (steps <= MOST_STEPS) return undefined;
    if (nearest === undefined || steps < nearest.steps) nearest = { from, steps };
  }
  return nearest;
}

/** Forms two steps above the one before, on the way to the one asked for. */
function between({ catalogue }: Look, from: ExerciseId, to: ExerciseId, steps: number): readonly ExerciseId[] {
  const two = harderOf(catalogue, from).flatMap((id) => harderOf(catalogue, id));
  return [...new Set(two)].filter((id) => distance(catalogue, id, to) === steps - MOST_STEPS);
}

/**
 * A first choice more than two steps of its ladder above everything that the phase before had of it. Slots of which the
 * phase before had nothing on the same way cannot be judged.
 *
 * The remedy takes a form two steps up.
 */
export const jumpInRungs: Check<"phase/jump-in-rungs", Data> = {
  id: "phase/jump-in-rungs",
  severity: "warn",
  sources: ["ours"],
  run(look) {
    const firsts = firstsOf(look);
    return look.slots.flatMap((place): readonly Found<Data>[] => {
      const before = firsts[place.phaseAt - 1];
      if (before === undefined || before.has(place.slot.first)) return [];
      const jump = jumpFrom(look, before, place.slot.first);
      if (jump === undefined) return [];
      const { from, steps } = jump;
      const nameOf = (id: ExerciseId) => look.catalogue.exercises.get(id)?.name ?? id;
      const at = [...pathOf(place), "first"];
      const exercise = place.slot.first;
      return [
        {
          at,
          data: { ...aboutPlace(place), exercise, name: nameOf(exercise), before: nameOf(from), steps },
          cures: (): readonly Cure[] =>
            between(look, from, exercise, steps).map((id) => ({
              id: "take-near-name",
              group: "two steps up",
              data: { id, name: nameOf(id) },
              changes: [{ op: "set", at, value: id }],
            })),
        },
      ];
    });
  },
};
