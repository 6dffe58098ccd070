import { closeSessions } from "../close-sessions.ts";
import { firstDose } from "../first-dose.ts";
import { holdOutsideRange } from "../hold-outside-range.ts";
import { jumpInRungs } from "../jump-in-rungs.ts";
import { jumpInSets } from "../jump-in-sets.ts";
import { muscleOnce } from "../muscle-once.ts";
import { neverHappens } from "../never-happens.ts";
import { noWarmUp } from "../no-warm-up.ts";
import { notServedHere } from "../not-served-here.ts";
import { oneSidedWithoutSide } from "../one-sided-without-side.ts";
import { oneStationTwice } from "../one-station-twice.ts";
import { outsideTable } from "../outside-table.ts";
import { overItsMinutes } from "../over-its-minutes.ts";
import { patternNeverTrained } from "../pattern-never-trained.ts";
import { repsUnlikelyAtShare } from "../reps-unlikely-at-share.ts";
import { restTooShort } from "../rest-too-short.ts";
import { setsOutsideBand } from "../sets-outside-band.ts";
import { singleBeforeMulti } from "../single-before-multi.ts";
import { tooHeavyForNovice } from "../too-heavy-for-novice.ts";
import { unknownExercise } from "../unknown-exercise.ts";

/** Every check, in the order in which their findings at one place are told. */
export const CHECKS = [
  unknownExercise,
  patternNeverTrained,
  setsOutsideBand,
  overItsMinutes,
  repsUnlikelyAtShare,
  oneSidedWithoutSide,
  holdOutsideRange,
  noWarmUp,
  singleBeforeMulti,
  restTooShort,
  tooHeavyForNovice,
  outsideTable,
  muscleOnce,
  closeSessions,
  jumpInSets,
  jumpInRungs,
  notServedHere,
  oneStationTwice,
  neverHappens,
  firstDose,
] as const;

export type CheckId = (typeof CHECKS)[number]["id"];
