import type { StressTag } from "../model/index.ts";

/** A dose is middle when none of these holds. */
export type DoseWord = "heavy" | "lowering" | "near failure" | "breath" | "hold" | "light";

interface Rule {
  readonly raisedBy: readonly DoseWord[];
  readonly lightLowers: boolean;
}

function rule(lightLowers: boolean, ...raisedBy: DoseWord[]): Rule {
  return { raisedBy, lightLowers };
}

/**
 * Which words of a dose raise the grade of a tag, and whether a light dose lowers it.
 *
 * @source ours
 */
export const RAISED_BY: Readonly<Record<StressTag, Rule>> = {
  sh_overhead: rule(true, "heavy", "near failure"),
  sh_abd_er: rule(false, "heavy", "near failure"),
  sh_ir_elev: rule(false, "heavy", "near failure"),
  sh_ext: rule(false, "heavy", "lowering", "near failure"),
  elbow: rule(true, "heavy", "lowering", "near failure"),
  wr_ext: rule(true, "heavy", "hold"),
  grip: rule(true, "heavy", "hold", "near failure"),
  neck: rule(true, "heavy", "near failure"),
  sp_axial: rule(true, "heavy"),
  sp_hold: rule(true, "heavy", "lowering", "hold", "near failure"),
  sp_flex: rule(false, "heavy", "near failure"),
  sp_ext: rule(false, "heavy", "hold", "near failure"),
  sp_rot: rule(true, "heavy"),
  hip_deep: rule(false),
  hip_spread: rule(false, "heavy", "lowering"),
  knee_deep: rule(false, "heavy", "lowering"),
  knee_open: rule(false, "heavy", "near failure"),
  kneel: rule(false, "hold"),
  ankle_df: rule(false),
  impact: rule(false),
  balance: rule(false, "near failure"),
  supine: rule(false, "hold"),
  prone: rule(false, "hold"),
  floor: rule(false),
  head_down: rule(false, "hold"),
  head_quick: rule(false),
  pressor: rule(true, "heavy", "breath", "hold", "near failure"),
  abd_press: rule(true, "heavy", "breath", "near failure"),
};
