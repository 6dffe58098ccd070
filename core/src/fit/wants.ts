import { distance, ladderOf } from "../exercises/index.ts";
import {
  areNeighbours,
  type Catalogue,
  type Exercise,
  type ExerciseId,
  type Ladder,
  MUSCLES,
  type Muscle,
  type Person,
  type Slot,
  type StressTag,
} from "../model/index.ts";
import type { Line } from "./task.ts";

/** What the value of a form in a slot may depend on. */
export interface WantContext {
  readonly slot: Slot;
  readonly exercise: Exercise;
  readonly person: Person;
  readonly catalogue: Catalogue;
  readonly watch: readonly StressTag[];
  /** The heaviest load here cannot make the asked repetitions hard. */
  readonly tooLight: boolean;
  /** The slot had this form when it was fitted last. */
  readonly kept: boolean;
}

type Want = (context: WantContext) => Line | undefined;

function want(id: string, points: number, data: Line["data"] = {}): Line | undefined {
  return points === 0 ? undefined : { id, level: "want", points, data };
}

/** Steps of the ladder from the slot's first choice: below negative, above positive; undefined when not on its ladder. */
function stepsFromFirst({ slot, exercise, catalogue }: WantContext): number | undefined {
  return exercise.id === slot.first ? 0 : distance(catalogue, slot.first, exercise.id);
}

/** The highest forms that a person has under them on a ladder: where they stand, and what their records show. */
function standsOn({ person }: WantContext, ladder: Ladder): readonly ExerciseId[] {
  const on = (id: ExerciseId) => ladder.start === id || ladder.steps.some(({ to }) => to === id);
  const rung = person.rungs[ladder.id];
  const shown = person.lifts.filter((lift) => on(lift.exercise)).map((lift) => lift.exercise);
  return [...(rung === undefined ? [] : [rung]), ...shown];
}

/**
 * Where on the first choice's ladder this person's work belongs: at the highest form they stand on or have on record, as
 * far as the slot lets the coach's choice move. Who was never assessed starts at the start as a novice, and at the
 * coach's choice otherwise.
 */
function stepsWanted(context: WantContext): number {
  const { slot, person, catalogue } = context;
  const ladder = ladderOf(catalogue, slot.first);
  if (ladder === undefined) return 0;
  const known = standsOn(context, ladder);
  const stands = known.length > 0 ? known : [person.status === "novice" ? ladder.start : slot.first];
  const steps = stands.flatMap((id) => (id === slot.first ? 0 : (distance(catalogue, slot.first, id) ?? [])));
  if (steps.length === 0) return 0;
  return Math.max(-slot.down, Math.min(slot.up, Math.max(...steps)));
}

/** On another ladder than the first choice's: 40 points for a form the person stands on or has on record, 15 fewer a step. */
function ownRung(context: WantContext): Line | undefined {
  const { exercise, person, catalogue } = context;
  if (stepsFromFirst(context) !== undefined) return undefined;
  const ladder = ladderOf(catalogue, exercise.id);
  const recorded = person.lifts.some((lift) => lift.exercise === exercise.id);
  const known = ladder === undefined ? [] : standsOn(context, ladder);
  const steps = known.flatMap((id) => Math.abs(id === exercise.id ? 0 : (distance(catalogue, id, exercise.id) ?? 4)));
  const away = recorded ? 0 : Math.min(4, ...steps);
  return want("fit/own-rung", Math.max(0, 40 - 15 * away), { steps: away });
}

/**
 * On a ladder that nobody assessed them on, people past their first months begin about its middle: 20 points there, 5
 * fewer a step. A ladder of two forms has no middle.
 */
function usualRung(context: WantContext): Line | undefined {
  const { exercise, person, catalogue } = context;
  const ladder = ladderOf(catalogue, exercise.id);
  if (person.status === "novice" || ladder === undefined || stepsFromFirst(context) !== undefined) return undefined;
  if (standsOn(context, ladder).length > 0) return undefined;
  const depth = (id: ExerciseId) => Math.max(0, distance(catalogue, ladder.start, id) ?? 0);
  const deepest = Math.max(...ladder.steps.map(({ to }) => depth(to)));
  if (deepest < 2) return undefined;
  const away = Math.abs(depth(exercise.id) - Math.floor(deepest / 2));
  return want("fit/usual-rung", Math.max(0, 20 - 5 * away), { steps: away });
}

/** The right rung for this person: 100 points there, 30 fewer a step away, never under 0. */
function suits(context: WantContext): Line | undefined {
  const at = stepsFromFirst(context);
  if (at === undefined) return undefined;
  const wanted = stepsWanted(context);
  return want("fit/suits", Math.max(0, 100 - 30 * Math.abs(at - wanted)), { steps: at, wanted });
}

/** The movement pattern asked for, or a neighbour that may stand in. */
function pattern({ slot, exercise }: WantContext): Line | undefined {
  if (exercise.pattern === slot.pattern) return want("fit/pattern", 60, { pattern: slot.pattern });
  const near = exercise.alsoCounts === slot.pattern || areNeighbours(exercise.pattern, slot.pattern);
  return want("fit/neighbour-pattern", near ? 25 : 0, { pattern: exercise.pattern });
}

/** How alike the muscles are to those the slot is for: 40 × the cosine of the two counts. */
function muscles({ slot, exercise, catalogue }: WantContext): Line | undefined {
  const first = catalogue.exercises.get(slot.first)?.muscles ?? {};
  const intent = (muscle: Muscle) =>
    slot.muscles === undefined ? (first[muscle] ?? 0) : slot.muscles.includes(muscle) ? 1 : 0;
  let [dot, a, b] = [0, 0, 0];
  for (const muscle of MUSCLES) {
    const [x, y] = [intent(muscle), exercise.muscles[muscle] ?? 0];
    dot += x * y;
    a += x * x;
    b += y * y;
  }
  return want("fit/muscles", a > 0 && b > 0 ? Math.round((40 * dot) / Math.sqrt(a * b)) : 0);
}

/** Each step of the ladder beyond what the slot allows down or up costs 10. */
function stepsOutside(context: WantContext): Line | undefined {
  const at = stepsFromFirst(context);
  if (at === undefined) return undefined;
  const outside = Math.max(0, -context.slot.down - at, at - context.slot.up);
  return want("fit/steps-outside", -10 * outside, { steps: outside });
}

function liked({ exercise, person }: WantContext): Line | undefined {
  return want("fit/liked", person.likes.includes(exercise.id) ? 15 : 0);
}

function disliked({ exercise, person }: WantContext): Line | undefined {
  return want("fit/disliked", person.dislikes.includes(exercise.id) ? -25 : 0);
}

/** A stress at the very ceiling of a caution is offered, but every one costs 5: several together less than a step of the ladder. */
function watched({ watch }: WantContext): Line | undefined {
  return want("fit/watch", -5 * watch.length, { tags: watch });
}

function tooLight(context: WantContext): Line | undefined {
  return want("fit/too-light", context.tooLight ? -60 : 0);
}

/** What somebody does already is changed for a step of the ladder, and not for a few quarter-sets of a band. */
function kept(context: WantContext): Line | undefined {
  return want("fit/kept", context.kept ? 20 : 0);
}

/** Every want that a form in a slot is scored by. Points are ours, no source. */
const WANTS: readonly Want[] = [
  suits,
  ownRung,
  usualRung,
  pattern,
  muscles,
  stepsOutside,
  liked,
  disliked,
  watched,
  tooLight,
  kept,
];

/** @returns a line for each want that has a say about this form in this slot */
export function wantLines(context: WantContext): readonly Line[] {
  return WANTS.flatMap((each) => each(context) ?? []);
}
