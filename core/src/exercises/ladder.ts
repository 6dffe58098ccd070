import type { Catalogue, ExerciseId, Ladder, Step } from "../model/index.ts";

/** @returns the forms one step easier, on any ladder, in the order of the ladders' steps */
export function easierOf(catalogue: Catalogue, id: ExerciseId): readonly ExerciseId[] {
  const steps = catalogue.ladders.flatMap((ladder) => ladder.steps);
  return [...new Set(steps.filter((step) => step.to === id).map((step) => step.from))];
}

/** @returns the forms one step harder, on any ladder, in the order of the ladders' steps */
export function harderOf(catalogue: Catalogue, id: ExerciseId): readonly ExerciseId[] {
  const steps = catalogue.ladders.flatMap((ladder) => ladder.steps);
  return [...new Set(steps.filter((step) => step.from === id).map((step) => step.to))];
}

/**
 * The ladder that a form belongs to: the first that starts on it or leads to it.
 *
 * @returns undefined for a form that stands on no ladder
 */
export function ladderOf(catalogue: Catalogue, id: ExerciseId): Ladder | undefined {
  return catalogue.ladders.find((ladder) => ladder.start === id || ladder.steps.some((step) => step.to === id));
}

/**
 * How many steps lie between two forms of one ladder, by the shortest way.
 *
 * @returns steps up as a positive number, steps down as a negative one, 0 for the form itself; undefined when no way
 *   goes only up or only down, as between two branches, between ladders, or from a form that stands on none
 * @example distance(CATALOGUE, "body-squat", "goblet-squat") //=> 1
 */
export function distance(catalogue: Catalogue, from: ExerciseId, to: ExerciseId): number | undefined {
  return distancesFrom(catalogue, from).get(to);
}

/** Ladders of a catalogue never change, and a plan asks for the same ways over and over. */
const KNOWN = new WeakMap<Catalogue, Map<ExerciseId, ReadonlyMap<ExerciseId, number>>>();

function distancesFrom(catalogue: Catalogue, from: ExerciseId): ReadonlyMap<ExerciseId, number> {
  const known = KNOWN.get(catalogue) ?? new Map<ExerciseId, ReadonlyMap<ExerciseId, number>>();
  KNOWN.set(catalogue, known);
  const before = known.get(from);
  if (before !== undefined) return before;
  const found = new Map<ExerciseId, number>();
  for (const { start, steps } of catalogue.ladders) {
    if (start === from || steps.some((step) => step.to === from || step.from === from)) found.set(from, 0);
    const up = stepsFrom(steps, from);
    const down = stepsFrom(steps.map(turned), from);
    for (const [to, count] of [...up, ...[...down].map(([to, count]) => [to, -count] as const)]) {
      const other = found.get(to);
      if (to !== from && (other === undefined || Math.abs(count) < Math.abs(other))) found.set(to, count);
    }
  }
  known.set(from, found);
  return found;
}

/**
 * What a person who stands on a form has under them: the form and every easier form on a way of that ladder to it.
 *
 * @returns nearest first; empty when the ladder or the form on it does not exist
 * @example atOrBelow(CATALOGUE, "squat", "touch-and-go-squat").at(-1) //=> "sit-to-stand-high"
 */
export function atOrBelow(catalogue: Catalogue, ladderId: string, form: ExerciseId): readonly ExerciseId[] {
  const ladder = catalogue.ladders.find(({ id }) => id === ladderId);
  if (!ladder || !(ladder.start === form || ladder.steps.some(({ from, to }) => from === form || to === form))) {
    return [];
  }
  return [...stepsFrom(ladder.steps.map(turned), form).keys()];
}

/** Steps needed from one form to every form it leads to, nearest first, itself at 0. */
function stepsFrom(steps: readonly Step[], start: ExerciseId): ReadonlyMap<ExerciseId, number> {
  const found = new Map([[start, 0]]);
  // A Map hands out what is added while it is walked, so this goes on until nothing new is reached.
  for (const [here, count] of found) {
    for (const { from, to } of steps) if (from === here && !found.has(to)) found.set(to, count + 1);
  }
  return found;
}

function turned({ from, to, branch }: Step): Step {
  return { from: to, to: from, branch };
}
