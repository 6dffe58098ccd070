import { type ExerciseId, type Patch, RUN_WALK_BOUNDS, readDose, readLoad, type SlotKey } from "@stave/core/model";

/** A slip in what was typed; `offset` counts characters from the first. */
export interface Slip {
  readonly code: string;
  readonly offset: number;
  readonly found: string;
  readonly allowed: string;
  readonly maybe?: string;
}

export type TypedAnswer =
  | { readonly ok: true; readonly patch: Patch }
  | { readonly ok: false; readonly slips: readonly Slip[] };

/** One number and perhaps a word behind it: that is how a load looks. */
const LIKE_A_LOAD = /^\s*[\d.,]+\s*(?:[a-z]*\.?)\s*$/i;

/** "level 3", or the number alone: a run takes nothing else. */
export function typedLevel(slot: SlotKey, text: string): TypedAnswer {
  const { from, to } = RUN_WALK_BOUNDS;
  const level = Number(/^\s*(?:level\s*)?(\d{1,2})\s*$/i.exec(text)?.[1] ?? Number.NaN);
  if (level >= from && level <= to) return { ok: true, patch: { slot, change: "run-walk", level } };
  return { ok: false, slips: [{ code: "value/choice", offset: 0, found: text, allowed: `level ${from} to ${to}` }] };
}

/**
 * Reads what a coach typed over a slot: a load, or a dose.
 *
 * @param form the exercise that the load or dose is for: under another one it means nothing
 * @returns a patch, or every slip with its place
 * @example
 * typedAnswer("squat", "goblet-squat", "14 kg").patch.load //=> { value: 14, unit: "kg" }
 */
export function typedAnswer(slot: SlotKey, form: ExerciseId, text: string): TypedAnswer {
  const load = readLoad(text);
  if (load.ok) return { ok: true, patch: { slot, change: "load", load: load.value, exercise: form } };
  const dose = readDose(text);
  if (dose.ok) return { ok: true, patch: { slot, change: "reps", dose: dose.value, exercise: form } };
  return { ok: false, slips: LIKE_A_LOAD.test(text) ? [load.slip] : dose.problems };
}
