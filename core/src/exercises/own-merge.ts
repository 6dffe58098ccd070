import type { Catalogue, Exercise, ExerciseId, Ladder, Step, StressTag } from "../model/index.ts";
import { assemble } from "./catalogue.ts";
import { type EntryFault, entryFaults } from "./own-rules.ts";

/** A coach's own entry, with the forms of a ladder that lie on either side of it. */
export interface OwnEntry {
  readonly exercise: Exercise;
  readonly easier: readonly ExerciseId[];
  readonly harder: readonly ExerciseId[];
  /** Stresses that were said not to be there. */
  readonly none: readonly StressTag[];
}

/** The branch on which a coach's own forms stand. */
const BRANCH = "own";

function formsOf(ladder: Ladder): ReadonlySet<ExerciseId> {
  return new Set([ladder.start, ...ladder.steps.flatMap(({ from, to }) => [from, to])]);
}

/** @returns whether from some form of the ladder a way up leads back to it */
function turnsBack({ steps }: Ladder): boolean {
  let left = steps;
  for (;;) {
    const into = new Set(left.map(({ to }) => to));
    const rest = left.filter(({ from }) => into.has(from));
    if (rest.length === 0) return false;
    if (rest.length === left.length) return true;
    left = rest;
  }
}

function lineOf({ see, why, fix }: Exercise["faults"][number]): string {
  return `${see} | ${why} | ${fix}`.toLowerCase();
}

/**
 * Stresses that every form beside an entry has and that it says nothing of. Beside it are its easier and harder forms, or
 * else those of its pattern and position; fewer than two tell nothing.
 */
function unsaid({ exercise, easier, harder, none }: OwnEntry, before: Catalogue): readonly StressTag[] {
  const named = [...easier, ...harder].flatMap((id) => before.exercises.get(id) ?? []);
  const kin = [...before.exercises.values()].filter(
    ({ pattern, position }) => pattern === exercise.pattern && position === exercise.position,
  );
  const beside = named.length > 0 ? named : kin;
  if (named.length === 0 && beside.length < 2) return [];
  const tags = Object.keys(beside[0]?.stress ?? {}) as StressTag[];
  const shared = tags.filter((tag) => beside.every(({ stress }) => (stress[tag] ?? 0) >= 1));
  return shared.filter((tag) => exercise.stress[tag] === undefined && !none.includes(tag));
}

function placed(own: OwnEntry, before: Catalogue): { readonly ladders: readonly Ladder[] } | EntryFault {
  const { exercise, easier, harder } = own;
  const { ladders } = before;
  if (easier.length + harder.length === 0) return { ladders };
  if (easier.length === 0) return { at: ["harder"], code: "own/no-easier", found: harder.join(", ") };
  const beside = [...easier, ...harder];
  const on = ladders.findIndex((ladder) => beside.every((id) => formsOf(ladder).has(id)));
  if (on === -1) return { at: ["easier"], code: "own/not-on-ladder", found: beside.join(", ") };
  const steps: readonly Step[] = [
    ...easier.map((from) => ({ from, to: exercise.id, branch: BRANCH })),
    ...harder.map((to) => ({ from: exercise.id, to, branch: BRANCH })),
  ];
  const ladder = { ...ladders[on]!, steps: [...ladders[on]!.steps, ...steps] };
  if (turnsBack(ladder)) return { at: ["harder"], code: "own/cycle", found: beside.join(", ") };
  return { ladders: ladders.with(on, ladder) };
}

function faultsBeside(own: OwnEntry, before: Catalogue): readonly EntryFault[] {
  const { exercise } = own;
  const all = [...before.exercises.values()];
  const sameName = all.find(({ name }) => name.toLowerCase() === exercise.name.toLowerCase());
  const taken = new Map(all.flatMap(({ id, faults }) => faults.map((fault) => [lineOf(fault), id] as const)));
  const missing = unsaid(own, before);
  return [
    ...(before.exercises.has(exercise.id) ? [{ at: ["id"], code: "own/taken" as const, found: exercise.id }] : []),
    ...(sameName === undefined ? [] : [{ at: ["name"], code: "own/name-taken" as const, found: sameName.id }]),
    ...exercise.faults.flatMap((fault, at) =>
      taken.has(lineOf(fault))
        ? [{ at: ["faults", at], code: "own/fault-taken" as const, found: taken.get(lineOf(fault))! }]
        : [],
    ),
    ...(missing.length === 0
      ? []
      : [{ at: ["stress"], code: "own/stress-unsaid" as const, found: missing.join(", "), allowed: "0–3" }]),
  ];
}

/**
 * A catalogue with a coach's own entries after it, each under the rules that the catalogue itself keeps. An entry may name
 * forms that stand in the catalogue or before it among the own ones; easier and harder are one step, so that what is easier
 * than the one has it as harder, and no way up turns back.
 *
 * @returns the catalogue, or for each entry what is wrong with it
 */
export function mergeOwn(
  base: Catalogue,
  own: readonly OwnEntry[],
):
  | { readonly ok: true; readonly catalogue: Catalogue }
  | { readonly ok: false; readonly faults: readonly (readonly EntryFault[])[] } {
  let merged = base;
  const faults = own.map((entry): readonly EntryFault[] => {
    const place = placed(entry, merged);
    const wrong = [...entryFaults(entry.exercise), ...faultsBeside(entry, merged), ...("code" in place ? [place] : [])];
    const { id } = entry.exercise;
    if (!merged.exercises.has(id)) {
      const ladders = "code" in place ? merged.ladders : place.ladders;
      merged = assemble([...merged.exercises.values(), entry.exercise], ladders);
    }
    return wrong;
  });
  return faults.every((each) => each.length === 0) ? { ok: true, catalogue: merged } : { ok: false, faults };
}
