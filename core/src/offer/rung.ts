import { atOrBelow } from "../exercises/index.ts";
import type { Catalogue, Exercise, ExerciseId, Ladder, LoadMeaning, Person, Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";

/** Whether a person has earned a form: with what must be said beside it, or why not. */
export type Earned =
  | { readonly ok: true; readonly notes: readonly Reason[] }
  | { readonly ok: false; readonly why: readonly Reason[] };

/** Forms that no choice of load makes easier. */
const OWN_WEIGHT: ReadonlySet<LoadMeaning> = new Set(["body only", "added to body", "height", "none"]);

const YES: Earned = { ok: true, notes: [] };

/** A record of fewer repetitions than this, or of a shorter hold, is a try and earns nothing. Ours, no source. */
const EARNING_REPS = 5;
const EARNING_HOLD_S = 10;

/**
 * Which forms a person has under them.
 *
 * On a ladder: the form they stand on, every easier one on the way to it, and what lies fewer steps from the start on
 * another branch (as few, for people past their first months). A novice who was never assessed on it has its start and
 * what is easier; where the place cannot serve the start, the next forms that ask for nothing. Anybody else may have
 * any form whose load can begin light, and those of body mass alone below the hardest third of the ladder, with the
 * note that nobody has assessed them. A form on several ladders is earned on any one of them.
 * On no ladder: a novice may have what asks for no count first, anybody else all. What is on record was done, so it is
 * earned, and what leads to it.
 *
 * @param served whether the place has what a form needs; without it every form counts as served
 * @source ours
 */
export function earnedBy(
  person: Person,
  catalogue: Catalogue,
  served: (exercise: Exercise) => boolean = () => true,
): (exercise: Exercise) => Earned {
  const novice = person.status === "novice";
  const done = recorded(person);
  const standings = catalogue.ladders.map((ladder) => standingOn(ladder, person, catalogue, done, served));
  return (exercise) => {
    if (done.has(exercise.id)) return YES;
    const on = standings.filter(({ forms }) => forms.has(exercise.id));
    if (on.length === 0) return novice ? withoutLadder(exercise) : YES;
    if (on.some(({ owned }) => owned.has(exercise.id))) return YES;
    const free = novice ? [] : on.filter((one) => !one.assessed && maySettle(one, exercise));
    if (free.length > 0) {
      return { ok: true, notes: free.map(({ ladder }) => reason("offer/not-assessed", { ladder: ladder.id })) };
    }
    return {
      ok: false,
      why: on.map(({ ladder, stands, assessed }) =>
        assessed || novice
          ? reason("offer/above-rung", { ladder: ladder.id, stands, assessed })
          : reason("offer/not-shown", { ladder: ladder.id }),
      ),
    };
  };
}

/** Whether a first set can be made easy enough for somebody whom nobody has assessed. */
function maySettle({ depth }: Standing, exercise: Exercise): boolean {
  return (
    !OWN_WEIGHT.has(exercise.loadMeaning) ||
    (depth.get(exercise.id) ?? 0) <= Math.max(1, (Math.max(...depth.values()) * 2) / 3)
  );
}

/** Forms that the person's records show. */
function recorded(person: Person): ReadonlySet<ExerciseId> {
  const shown = person.lifts.filter(({ reps, holdS }) => (reps ?? 0) >= EARNING_REPS || (holdS ?? 0) >= EARNING_HOLD_S);
  return new Set(shown.map(({ exercise }) => exercise));
}

interface Standing {
  readonly ladder: Ladder;
  readonly stands: ExerciseId;
  readonly assessed: boolean;
  /** Steps from the start to each form. */
  readonly depth: ReadonlyMap<ExerciseId, number>;
  readonly forms: ReadonlySet<ExerciseId>;
  readonly owned: ReadonlySet<ExerciseId>;
}

/** A rung that is not on its ladder says nothing: the person counts as never assessed there. */
function standingOn(
  ladder: Ladder,
  person: Person,
  catalogue: Catalogue,
  done: ReadonlySet<ExerciseId>,
  served: (exercise: Exercise) => boolean,
): Standing {
  const forms = new Set([ladder.start, ...ladder.steps.flatMap(({ from, to }) => [from, to])]);
  const rung = person.rungs[ladder.id];
  const assessed = rung !== undefined && forms.has(rung);
  const stands = assessed ? rung : ladder.start;
  const under = [stands, ...[...done].filter((id) => forms.has(id))].flatMap((id) =>
    atOrBelow(catalogue, ladder.id, id),
  );
  const depth = depthsOf(ladder);
  const beside = assessed ? otherBranches(depth, stands, person.status !== "novice", catalogue) : [];
  const instead = assessed ? [] : insteadOfStart(ladder, catalogue, served);
  return { ladder, stands, assessed, depth, forms, owned: new Set([...under, ...beside, ...instead]) };
}

function depthsOf(ladder: Ladder): ReadonlyMap<ExerciseId, number> {
  const depth = new Map([[ladder.start, 0]]);
  // A Map hands out what is added while it is walked, so this goes on until nothing new is reached.
  for (const [here, count] of depth) {
    for (const { from, to } of ladder.steps) if (from === here && !depth.has(to)) depth.set(to, count + 1);
  }
  return depth;
}

/** Forms of a ladder that lie fewer steps from its start than the one stood on, or as few, and ask for no count. */
function otherBranches(
  depth: ReadonlyMap<ExerciseId, number>,
  stands: ExerciseId,
  orEqual: boolean,
  catalogue: Catalogue,
): readonly ExerciseId[] {
  const mine = depth.get(stands);
  if (mine === undefined) return [];
  return [...depth]
    .filter(([, count]) => count < mine || (orEqual && count === mine))
    .map(([id]) => id)
    .filter((id) => catalogue.exercises.get(id)?.need.count === undefined);
}

/** The forms on from a start that the place cannot serve, up to the first that it can, as long as they ask for nothing. */
function insteadOfStart(
  ladder: Ladder,
  catalogue: Catalogue,
  served: (exercise: Exercise) => boolean,
): readonly ExerciseId[] {
  const owned = new Set([ladder.start]);
  for (const here of owned) {
    const exercise = catalogue.exercises.get(here);
    if (exercise === undefined || served(exercise)) continue;
    for (const { from, to } of ladder.steps) {
      const need = catalogue.exercises.get(to)?.need;
      if (from === here && need?.count === undefined && need?.conditions.length === 0) owned.add(to);
    }
  }
  return [...owned];
}

function withoutLadder(exercise: Exercise): Earned {
  const { count } = exercise.need;
  if (count === undefined) return YES;
  const { of, reps, holdS, sets } = count;
  const needs = {
    of,
    ...(reps === undefined ? {} : { reps }),
    ...(holdS === undefined ? {} : { holdS }),
    ...(sets === undefined ? {} : { sets }),
  };
  return { ok: false, why: [reason("offer/count-not-shown", { needs })] };
}
