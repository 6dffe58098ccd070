/** Body-region stresses. Ours, unsigned: a practising coach and a clinician must sign the grades before use. */
export const STRESS_TAGS = [
  "sh_overhead",
  "sh_abd_er",
  "sh_ir_elev",
  "sh_ext",
  "elbow",
  "wr_ext",
  "grip",
  "neck",
  "sp_axial",
  "sp_hold",
  "sp_flex",
  "sp_ext",
  "sp_rot",
  "hip_deep",
  "hip_spread",
  "knee_deep",
  "knee_open",
  "kneel",
  "ankle_df",
  "impact",
  "balance",
  "supine",
  "prone",
  "floor",
  "head_down",
  "head_quick",
  "pressor",
  "abd_press",
] as const;
export type StressTag = (typeof STRESS_TAGS)[number];

/** 0 = not there, 3 = most. A movement's base grade is 1 to 3; its dose moves it by at most 1. */
export type Grade = 0 | 1 | 2 | 3;

/** What a person, or their clinician, may state. Row ids of the cautions table. */
export const STATEMENTS = [
  "pregnant",
  "postnatal",
  "pressure",
  "bone",
  "back",
  "shoulder",
  "knee",
  "wrist",
  "vertigo",
  "eye",
  "hernia",
  "surgery-arm",
  "surgery-leg",
  "surgery-trunk",
  "hip",
  "larger",
  "flare",
  "diabetes",
  "seated",
  "young",
] as const;
export type Statement = (typeof STATEMENTS)[number];
