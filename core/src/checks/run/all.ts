import { oneSidedWithoutSide } from "../one-sided-without-side.ts";
import { overItsMinutes } from "../over-its-minutes.ts";
import { patternNeverTrained } from "../pattern-never-trained.ts";
import { repsUnlikelyAtShare } from "../reps-unlikely-at-share.ts";
import { setsOutsideBand } from "../sets-outside-band.ts";
import { unknownExercise } from "../unknown-exercise.ts";

/** Every check, in the order in which their findings at one place are told. */
export const CHECKS = [
  unknownExercise,
  patternNeverTrained,
  setsOutsideBand,
  overItsMinutes,
  repsUnlikelyAtShare,
  oneSidedWithoutSide,
] as const;

export type CheckId = (typeof CHECKS)[number]["id"];
