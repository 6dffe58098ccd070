import { expect, test } from "vitest";
import type { ExerciseId, Pattern } from "../model/index.ts";
import { CATALOGUE } from "./catalogue.ts";

/**
 * The base grades as our cautions table prints them, copied from it and not from the entries: ours, unsigned. One row
 * for each movement: id, pattern, marks, grades at a middle dose.
 */
const PRINTED: readonly (readonly [id: ExerciseId, pattern: Pattern, marks: string, grades: string])[] = [
  ["mini-squat-support", "squat", "", "balance 1, pressor 1"],
  ["sit-to-stand-high", "squat", "", "hip_deep 1, knee_deep 1, pressor 1"],
  ["wall-sit-high", "squat", "hold", "hip_deep 1, knee_deep 1, pressor 1"],
  ["sit-to-stand-45", "squat", "", "hip_deep 2, knee_deep 2, ankle_df 1, pressor 1"],
  ["body-squat", "squat", "", "hip_deep 2, knee_deep 2, ankle_df 2, balance 1, pressor 1, abd_press 1"],
  ["goblet-squat", "squat", "", "hip_deep 2, knee_deep 2, ankle_df 2, sp_axial 1, grip 1, pressor 1, abd_press 1"],
  ["leg-press-mid", "squat", "", "hip_deep 1, knee_deep 1, sp_axial 1, supine 1, floor 1, pressor 1, abd_press 1"],
  [
    "leg-press-deep",
    "squat",
    "",
    "hip_deep 3, knee_deep 3, sp_axial 1, sp_flex 1, supine 1, floor 1, pressor 2, abd_press 1",
  ],
  [
    "back-squat",
    "squat",
    "",
    "hip_deep 2, knee_deep 2, ankle_df 2, sp_axial 3, sp_hold 1, sh_abd_er 2, wr_ext 2, neck 1, pressor 2, abd_press 2",
  ],
  [
    "front-rack-squat",
    "squat",
    "",
    "hip_deep 2, knee_deep 2, ankle_df 2, sp_axial 3, wr_ext 2, pressor 2, abd_press 2",
  ],
  ["deep-squat", "squat", "", "hip_deep 3, knee_deep 3, ankle_df 3, sp_axial 2, pressor 2, abd_press 2"],
  ["wall-reach-hinge", "hinge", "", "sp_hold 1, hip_deep 1"],
  ["bag-deadlift-raised", "hinge", "", "sp_hold 1, hip_deep 1, grip 1, pressor 1, abd_press 1"],
  ["standing-hip-extension", "lower isolation", "", "balance 1, pressor 1"],
  ["floor-bridge", "bridge", "", "supine 2, floor 3, pressor 1, abd_press 1"],
  ["band-pull-through", "hinge", "", "sp_hold 1, hip_deep 1, grip 1, head_down 1, pressor 1, abd_press 1"],
  ["dumbbell-rdl", "hinge", "", "sp_hold 2, hip_deep 1, grip 1, head_down 1, sp_axial 1, pressor 1, abd_press 1"],
  ["one-leg-deadlift", "hinge", "", "sp_hold 1, hip_deep 1, grip 1, head_down 1, balance 3, pressor 1, abd_press 1"],
  ["bench-bridge", "bridge", "", "supine 1, floor 1, neck 1, pressor 1, abd_press 1"],
  ["hip-thrust", "bridge", "", "supine 1, floor 1, neck 1, pressor 2, abd_press 2"],
  [
    "barbell-deadlift",
    "hinge",
    "",
    "sp_hold 3, sp_axial 2, hip_deep 2, grip 3, head_down 1, knee_deep 1, pressor 3, abd_press 3",
  ],
  ["kettlebell-swing", "hinge", "", "sp_hold 3, hip_deep 1, grip 2, head_down 1, head_quick 2, pressor 2, abd_press 2"],
  ["back-extension", "hinge", "fixed", "sp_hold 2, sp_ext 1, hip_deep 1, head_down 2, prone 2, pressor 1, abd_press 1"],
  ["split-squat-support", "single leg", "", "knee_deep 1, hip_deep 1, balance 1, pressor 1"],
  ["step-up-low", "single leg", "", "knee_deep 1, hip_deep 1, balance 1, pressor 1"],
  ["one-leg-mini-squat", "single leg", "", "knee_deep 1, balance 1, pressor 1"],
  ["split-squat-free", "single leg", "", "knee_deep 2, hip_deep 1, ankle_df 1, balance 2, pressor 1, abd_press 1"],
  ["reverse-lunge", "single leg", "", "knee_deep 2, hip_deep 1, ankle_df 1, balance 2, pressor 1, abd_press 1"],
  ["lateral-lunge", "single leg", "", "hip_spread 2, hip_deep 2, knee_deep 2, ankle_df 1, balance 2, pressor 1"],
  ["step-down-slow", "single leg", "", "knee_deep 2, ankle_df 2, balance 2, pressor 1"],
  [
    "walking-lunge-loaded",
    "single leg",
    "",
    "knee_deep 2, hip_deep 1, ankle_df 1, sp_axial 1, grip 1, balance 2, pressor 2, abd_press 1",
  ],
  [
    "rear-foot-split-squat",
    "single leg",
    "",
    "knee_deep 2, hip_deep 2, ankle_df 2, balance 2, sp_axial 1, grip 1, pressor 2, abd_press 1",
  ],
  [
    "one-leg-squat-bench",
    "single leg",
    "fixed",
    "knee_deep 3, hip_deep 2, ankle_df 2, balance 3, pressor 2, abd_press 1",
  ],
  ["wall-push-up", "horizontal push", "", "wr_ext 1, elbow 1"],
  ["forearm-wall-push", "horizontal push", "hold", "pressor 1"],
  ["seated-forearm-push", "horizontal push", "hold, seated", "pressor 1"],
  ["bag-press-seated", "horizontal push", "seated", "elbow 1, grip 1, pressor 1"],
  ["bag-floor-press", "horizontal push", "", "supine 3, floor 3, elbow 1, pressor 1"],
  ["counter-push-up", "horizontal push", "", "wr_ext 2, elbow 1, pressor 1, abd_press 1"],
  [
    "knee-push-up",
    "horizontal push",
    "fixed",
    "wr_ext 3, sh_ext 1, kneel 3, floor 3, prone 2, elbow 1, pressor 1, abd_press 1",
  ],
  [
    "floor-push-up",
    "horizontal push",
    "fixed",
    "wr_ext 3, sh_ext 1, floor 3, prone 2, elbow 1, pressor 2, abd_press 2",
  ],
  ["bench-dip", "horizontal push", "fixed, coach only", "sh_ext 3, wr_ext 3, elbow 2, pressor 1"],
  [
    "pike-push-up",
    "vertical push",
    "fixed",
    "sh_overhead 3, wr_ext 3, head_down 3, floor 3, elbow 1, pressor 2, abd_press 1, hip_deep 2",
  ],
  ["band-press-standing", "horizontal push", "", "elbow 1, grip 1, balance 1, pressor 1, abd_press 1"],
  ["band-press-seated", "horizontal push", "seated", "elbow 1, grip 1, pressor 1"],
  ["dumbbell-floor-press", "horizontal push", "", "supine 3, floor 3, elbow 1, grip 1, pressor 1, abd_press 1"],
  [
    "dumbbell-press-seated",
    "vertical push",
    "seated",
    "sh_overhead 3, elbow 1, grip 1, sp_axial 1, pressor 1, abd_press 1",
  ],
  ["chest-press-machine", "horizontal push", "seated", "elbow 1, grip 1, pressor 1"],
  [
    "incline-press-30",
    "horizontal push",
    "",
    "sh_overhead 1, sh_abd_er 1, supine 1, floor 1, elbow 1, grip 1, pressor 1, abd_press 1",
  ],
  [
    "barbell-bench-press",
    "horizontal push",
    "",
    "sh_abd_er 2, sh_ext 1, supine 3, floor 1, elbow 1, grip 1, pressor 2, abd_press 1",
  ],
  [
    "barbell-overhead-press",
    "vertical push",
    "",
    "sh_overhead 3, sp_axial 2, sp_ext 1, elbow 1, grip 1, pressor 2, abd_press 2",
  ],
  [
    "behind-neck-press",
    "vertical push",
    "coach only",
    "sh_overhead 3, sh_abd_er 3, neck 1, sp_axial 2, elbow 1, pressor 2, abd_press 1",
  ],
  ["towel-pull-apart", "horizontal pull", "hold, seated", "grip 1, pressor 1"],
  ["towel-self-row", "horizontal pull", "hold, seated", "grip 1, elbow 1, pressor 1"],
  ["bag-row-supported", "horizontal pull", "", "sp_hold 1, head_down 1, grip 1, elbow 1, pressor 1"],
  ["prone-arm-raise", "horizontal pull", "fixed", "prone 3, floor 3, sp_ext 1"],
  ["band-row-seated", "horizontal pull", "seated", "grip 1, elbow 1, pressor 1"],
  ["band-pull-down", "vertical pull", "seated", "sh_overhead 1, grip 1, elbow 1, pressor 1"],
  ["one-arm-row", "horizontal pull", "", "sp_hold 1, head_down 1, grip 1, elbow 1, pressor 1, abd_press 1"],
  ["cable-row-seated", "horizontal pull", "seated", "sp_hold 1, grip 1, elbow 1, pressor 1, abd_press 1"],
  ["chest-supported-row", "horizontal pull", "", "prone 1, floor 1, grip 1, elbow 1, pressor 1"],
  ["lat-pull-down", "vertical pull", "seated", "sh_overhead 1, grip 1, elbow 1, pressor 1, abd_press 1"],
  ["inverted-row-45", "horizontal pull", "", "grip 1, elbow 1, supine 1, pressor 1, abd_press 1"],
  [
    "bent-over-row",
    "horizontal pull",
    "",
    "sp_hold 3, sp_axial 1, head_down 1, grip 2, elbow 1, pressor 2, abd_press 2",
  ],
  ["pull-up", "vertical pull", "fixed", "sh_overhead 2, grip 3, elbow 2, pressor 2, abd_press 1"],
  [
    "pull-down-behind-neck",
    "vertical pull",
    "seated, coach only",
    "sh_overhead 1, sh_abd_er 3, neck 1, grip 1, elbow 1, pressor 1",
  ],
  ["wall-forearm-plank", "anti-extension", "hold, arms used", "abd_press 1, pressor 1"],
  ["wall-side-plank", "anti-lateral flexion", "hold, arms used", "pressor 1"],
  ["seated-thigh-press", "anti-extension", "hold, seated, arms used", "pressor 1, abd_press 1"],
  ["seated-march", "anti-extension", "", "hip_deep 1, abd_press 1"],
  ["seated-lean-hold", "anti-extension", "hold, seated", "abd_press 1, pressor 1"],
  ["dead-bug", "anti-extension", "", "supine 3, floor 3, abd_press 1, hip_deep 1"],
  ["hands-knees-reach", "anti-rotation", "arms used", "kneel 1, wr_ext 2, floor 3, balance 1, prone 1, abd_press 1"],
  ["side-plank-knees", "anti-lateral flexion", "hold, arms used", "floor 3, kneel 1, abd_press 1, pressor 1"],
  ["forearm-plank", "anti-extension", "fixed, hold, arms used", "floor 3, prone 2, abd_press 2, pressor 1"],
  ["curl-up", "trunk flexion and extension", "fixed", "sp_flex 2, supine 3, floor 3, neck 1, abd_press 2, pressor 1"],
  [
    "sit-up",
    "trunk flexion and extension",
    "fixed",
    "sp_flex 3, supine 3, floor 3, neck 2, abd_press 3, head_quick 1, pressor 1, hip_deep 2",
  ],
  [
    "prone-arms-legs-raise",
    "trunk flexion and extension",
    "fixed, arms used",
    "sp_ext 3, prone 3, floor 3, pressor 1, abd_press 1",
  ],
  ["band-press-out", "anti-rotation", "", "sp_rot 1, grip 1, abd_press 1, pressor 1"],
  ["loaded-twist", "rotation", "seated", "sp_rot 3, sp_flex 2, floor 3, abd_press 2, pressor 1, hip_deep 2"],
  ["cable-chop", "rotation", "", "sp_rot 2, grip 1, abd_press 1, pressor 1"],
  [
    "wheel-roll-out",
    "anti-extension",
    "fixed",
    "abd_press 3, kneel 3, floor 3, sh_overhead 2, wr_ext 1, sp_ext 1, prone 2, pressor 2",
  ],
  [
    "hanging-knee-raise",
    "trunk flexion and extension",
    "fixed",
    "sp_flex 2, sh_overhead 2, grip 3, abd_press 2, pressor 2, hip_deep 2",
  ],
  ["walk-easy", "locomotion", "", ""],
  ["walk-brisk", "locomotion", "", "impact 1"],
  ["stair-walk", "locomotion", "", "impact 1, knee_deep 1, balance 1, pressor 1"],
  ["seated-arm-drive", "locomotion", "seated, arms used", "pressor 1"],
  ["seated-air-punch", "locomotion", "seated, arms used", "elbow 1, pressor 1"],
  ["bag-hug-carry", "carry", "arms used", "sp_axial 1, abd_press 1, pressor 1"],
  ["carry-two-hand", "carry", "", "grip 2, sp_axial 1, abd_press 1, pressor 1"],
  ["suitcase-carry", "carry", "", "grip 2, sp_axial 1, sp_rot 1, balance 1, abd_press 1, pressor 1"],
  ["overhead-carry", "carry", "", "sh_overhead 3, sp_axial 1, grip 1, balance 1, abd_press 1, pressor 1"],
  ["cycle-upright", "locomotion", "", "knee_deep 1, hip_deep 1, pressor 1"],
  ["rowing-machine", "locomotion", "", "sp_flex 1, sp_hold 1, hip_deep 2, knee_deep 2, grip 1, pressor 1, abd_press 1"],
  ["wheel-push", "locomotion", "seated, wheelchair only, arms used", "sh_ext 1, grip 1, pressor 1"],
  ["run", "locomotion", "arms used", "impact 2, pressor 1"],
  ["skip-rope", "locomotion", "arms used", "impact 2, head_quick 2, ankle_df 1, balance 1, pressor 1, abd_press 1"],
  [
    "squat-thrust-jump",
    "locomotion",
    "fixed",
    "impact 2, head_quick 3, head_down 1, wr_ext 3, floor 3, hip_deep 2, knee_deep 2, pressor 2, abd_press 2, sp_flex 2",
  ],
  ["jump-squat", "jump", "fixed", "impact 2, knee_deep 2, hip_deep 1, balance 1, head_quick 1, pressor 1, abd_press 2"],
  ["leg-extension", "lower isolation", "", "knee_open 3, pressor 1, hip_deep 1"],
  ["upright-row", "upper isolation", "coach only", "sh_ir_elev 3, grip 1, elbow 1, pressor 1"],
  ["band-external-rotation", "upper isolation", "seated", "grip 1"],
  [
    "floor-to-stand",
    "mixed hold",
    "",
    "hip_deep 2, knee_deep 2, head_quick 2, floor 3, kneel 2, sh_overhead 3, wr_ext 2, balance 2, abd_press 1, pressor 1",
  ],
];

test("the copy is complete: 103 movements, each once, 499 grades that sum to 759", () => {
  expect(new Set(PRINTED.map(([id]) => id)).size).toBe(103);
  const grades = PRINTED.flatMap(([, , , text]) => Object.values(gradesOf(text)));
  expect([grades.length, grades.reduce((sum, grade) => sum + grade, 0)]).toEqual([499, 759]);
});

test("every printed movement is in the catalogue", () => {
  expect(PRINTED.map(([id]) => id).filter((id) => !CATALOGUE.exercises.has(id))).toEqual([]);
});

test.each(PRINTED)("%s has the printed pattern, marks and grades", (id, pattern, marks, grades) => {
  const exercise = CATALOGUE.exercises.get(id)!;
  expect(exercise.pattern).toBe(pattern);
  expect(exercise.stress).toEqual(gradesOf(grades));
  const flags = [
    ...(exercise.fixed ? ["fixed"] : []),
    ...(exercise.amounts === "hold" ? ["hold"] : []),
    ...(exercise.seated ? ["seated"] : []),
    ...(exercise.coachOnly ? ["coach only"] : []),
    ...(exercise.armsUsed ? ["arms used"] : []),
    ...(exercise.needs.some((group) => group.includes("wheelchair")) ? ["wheelchair only"] : []),
  ];
  expect(flags.sort()).toEqual(marks.split(", ").filter(Boolean).sort());
});

function gradesOf(text: string): Record<string, number> {
  const pairs = text
    .split(", ")
    .filter(Boolean)
    .map((pair) => pair.split(" "));
  return Object.fromEntries(pairs.map(([tag, grade]) => [tag!, Number(grade)]));
}
