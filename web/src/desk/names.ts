import { CATALOGUE } from "@stave/core/exercises";
import type { Reason } from "@stave/core/model";
import { type Names, namesFrom, sayReason } from "@stave/core/text";

const CATALOGUED = namesFrom(CATALOGUE);

/** How ids are called on a page: the server's names first, then the catalogue's. */
export function namesWith(given: {
  readonly exercises?: readonly { readonly id: string; readonly name: string }[];
  /** What stands in each slot, so that a slot is called by it. */
  readonly slots?: readonly { readonly slot: string; readonly exercise: string }[];
}): Names {
  const exercises = new Map(given.exercises?.map(({ id, name }) => [id, name]));
  const exercise = (id: string) => exercises.get(id) ?? CATALOGUED.exercise(id);
  const slots = new Map(given.slots?.map(({ slot, exercise: id }) => [slot, exercise(id)]));
  return { ...CATALOGUED, exercise, slot: (key) => slots.get(key) ?? key };
}

/** What is proposed or was decided, as a title: without the stop at the end of a sentence. */
export function sayTitle(reason: Reason, names: Names): string {
  return sayReason(reason, names).replace(/\.$/, "");
}

/** Several reasons as one run of sentences. */
export function sayReasons(reasons: readonly Reason[], names: Names): string {
  return reasons.map((reason) => sayReason(reason, names)).join(" ");
}
