import type { Catalogue, Exercise, ExerciseId, Grade, StressTag } from "../model/index.ts";
import { assemble } from "./catalogue.ts";
import { type EntryFault, entryFaults } from "./own-rules.ts";

/** What a coach's file says otherwise of an entry of the catalogue; what is left out stays. */
export interface OwnChange {
  readonly id: ExerciseId;
  readonly setUp?: string;
  readonly move?: string;
  readonly cues?: Exercise["cues"];
  readonly faults?: Exercise["faults"];
  /** Grades at a middle dose; none under that of the catalogue. */
  readonly stress?: Readonly<Partial<Record<StressTag, Grade>>>;
  /** What has to be true besides. */
  readonly conditions?: readonly string[];
  readonly coachOnly?: boolean;
  readonly secondsPerRep?: number;
  readonly setupS?: number;
}

function changed(entry: Exercise, { conditions = [], id: _, ...said }: OwnChange): Exercise {
  const need = { ...entry.need, conditions: [...new Set([...entry.need.conditions, ...conditions])] };
  return { ...entry, ...said, stress: { ...entry.stress, ...said.stress }, need };
}

/** A stress that is graded lower would let the form through where somebody's caution sets it aside. */
function loweredIn(entry: Exercise, { stress = {} }: OwnChange): readonly EntryFault[] {
  return (Object.entries(stress) as [StressTag, Grade][]).flatMap(([tag, grade]): readonly EntryFault[] => {
    const least = entry.stress[tag] ?? 0;
    if (grade >= least) return [];
    return [{ at: ["stress", tag], code: "own/stress-lower", found: String(grade), allowed: `${least}–3` }];
  });
}

/**
 * A catalogue with entries that a coach says otherwise, or hides. Every entry that is changed keeps the rules of the
 * catalogue. A hidden one stays known by its name, for records hold on to it, and is offered only by hand.
 *
 * @returns the catalogue, and for each change what is wrong with it
 */
export function changeEntries(
  base: Catalogue,
  changes: readonly OwnChange[],
  hidden: readonly ExerciseId[],
): { readonly catalogue: Catalogue; readonly faults: readonly (readonly EntryFault[])[] } {
  const entries = new Map(base.exercises);
  const faults = changes.map((change, at): readonly EntryFault[] => {
    const entry = base.exercises.get(change.id);
    if (entry === undefined) return [];
    if (changes.findIndex(({ id }) => id === change.id) < at)
      return [{ at: ["id"], code: "own/changed-twice", found: change.id }];
    const now = changed(entry, change);
    entries.set(change.id, now);
    return [...loweredIn(entry, change), ...entryFaults(now)];
  });
  for (const id of hidden) {
    const entry = entries.get(id);
    if (entry !== undefined) entries.set(id, { ...entry, coachOnly: true });
  }
  return { catalogue: assemble([...entries.values()], base.ladders), faults };
}
