import type { StressTag } from "./stress.ts";

/**
 * Where it can hurt, in the words of a person, and which stresses reach that place. A movement with one of these tags
 * loads the place. "chest" and "dizzy" are signs to stop everything. Ours, no source; unsigned, as the tags are.
 */
export const HURT_PLACES = {
  neck: ["neck", "head_down", "head_quick"],
  shoulder: ["sh_overhead", "sh_abd_er", "sh_ir_elev", "sh_ext"],
  elbow: ["elbow"],
  "wrist or hand": ["wr_ext", "grip"],
  "upper back": ["sp_axial", "sp_hold", "sp_rot"],
  "low back": ["sp_axial", "sp_hold", "sp_flex", "sp_ext", "sp_rot"],
  belly: ["abd_press"],
  hip: ["hip_deep", "hip_spread"],
  knee: ["knee_deep", "knee_open", "kneel"],
  "ankle or foot": ["ankle_df", "impact"],
  chest: "everything",
  dizzy: "everything",
} as const satisfies Readonly<Record<string, readonly StressTag[] | "everything">>;
export type HurtPlace = keyof typeof HURT_PLACES;

/** @returns the stresses that reach a place; none for words that are not in the list */
export function stressesOf(where: string): readonly StressTag[] | "everything" {
  return Object.hasOwn(HURT_PLACES, where) ? HURT_PLACES[where as HurtPlace] : [];
}
