import { atOrBelow } from "../exercises/index.ts";
import type { Catalogue, Exercise, ExerciseId, Ladder, Person, Reason } from "../model/index.ts";
import { reason } from "./reasons.ts";

/** Whether a person has earned a form: with what must be said beside it, or why not. */
export type Earned =
  | { readonly ok: true; readonly notes: readonly Reason[] }
  | { readonly ok: false; readonly why: readonly Reason[] };

const YES: Earned = { ok: true, notes: [] };

/**
 * Which forms a person has under them.
 *
 * On a ladder: the form they stand on and all easier ones on the way to it. A novice who was never assessed on it
 * has its start and what is easier; anybody else may have any form of it, with the note that nobody has assessed them.
 * A form on several ladders is earned on any one of them. On no ladder: a novice may have what asks for no count
 * first, anybody else all.
 *
 * @source ours
 */
export function earnedBy(person: Person, catalogue: Catalogue): (exercise: Exercise) => Earned {
  const novice = person.status === "novice";
  const standings = catalogue.ladders.map((ladder) => standingOn(ladder, person, catalogue));
  return (exercise) => {
    const on = standings.filter(({ forms }) => forms.has(exercise.id));
    if (on.length === 0) return novice ? withoutLadder(exercise) : YES;
    if (on.some(({ owned }) => owned.has(exercise.id))) return YES;
    const free = on.filter(({ assessed }) => !assessed && !novice);
    if (free.length > 0) {
      return { ok: true, notes: free.map(({ ladder }) => reason("offer/not-assessed", { ladder: ladder.id })) };
    }
    return {
      ok: false,
      why: on.map(({ ladder, stands, assessed }) =>
        reason("offer/above-rung", { ladder: ladder.id, stands, assessed }),
      ),
    };
  };
}

interface Standing {
  readonly ladder: Ladder;
  readonly stands: ExerciseId;
  readonly assessed: boolean;
  readonly forms: ReadonlySet<ExerciseId>;
  readonly owned: ReadonlySet<ExerciseId>;
}

/** A rung that is not on its ladder says nothing: the person counts as never assessed there. */
function standingOn(ladder: Ladder, person: Person, catalogue: Catalogue): Standing {
  const forms = new Set([ladder.start, ...ladder.steps.flatMap(({ from, to }) => [from, to])]);
  const rung = person.rungs[ladder.id];
  const assessed = rung !== undefined && forms.has(rung);
  const stands = assessed ? rung : ladder.start;
  return { ladder, stands, assessed, forms, owned: new Set(atOrBelow(catalogue, ladder.id, stands)) };
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
