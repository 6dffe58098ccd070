import { aboveCeiling } from "../above-ceiling.ts";
import { activityMinutes } from "../activity-minutes.ts";
import { balanceForOlder } from "../balance-for-older.ts";
import { breathHold } from "../breath-hold.ts";
import { cannotJudge } from "../cannot-judge.ts";
import { closeSessions } from "../close-sessions.ts";
import { comebackLoad } from "../comeback-load.ts";
import { comebackSets } from "../comeback-sets.ts";
import { fastWorkLast } from "../fast-work-last.ts";
import { firstDose } from "../first-dose.ts";
import { holdOutsideRange } from "../hold-outside-range.ts";
import { jumpInConditioning } from "../jump-in-conditioning.ts";
import { jumpInRungs } from "../jump-in-rungs.ts";
import { jumpInSets } from "../jump-in-sets.ts";
import { loadFromFloor } from "../load-from-floor.ts";
import { loadNotHere } from "../load-not-here.ts";
import { longWithoutLight } from "../long-without-light.ts";
import { manyContacts } from "../many-contacts.ts";
import { manySetsAtOnce } from "../many-sets-at-once.ts";
import { moreDaysThanUsual } from "../more-days-than-usual.ts";
import { mostlyToFailure } from "../mostly-to-failure.ts";
import { muscleOnce } from "../muscle-once.ts";
import { neverHappens } from "../never-happens.ts";
import { noNextLoad } from "../no-next-load.ts";
import { noWarmUp } from "../no-warm-up.ts";
import { notServedHere } from "../not-served-here.ts";
import { nothingGoesUp } from "../nothing-goes-up.ts";
import { oneSidedWithoutSide } from "../one-sided-without-side.ts";
import { oneStationTwice } from "../one-station-twice.ts";
import { outsideTable } from "../outside-table.ts";
import { overItsMinutes } from "../over-its-minutes.ts";
import { pairForOneMuscle } from "../pair-for-one-muscle.ts";
import { pastDoseLimits } from "../past-dose-limits.ts";
import { patternNeverTrained } from "../pattern-never-trained.ts";
import { powerForOlder } from "../power-for-older.ts";
import { repsUnlikelyAtShare } from "../reps-unlikely-at-share.ts";
import { restTooShort } from "../rest-too-short.ts";
import { setsOutsideBand } from "../sets-outside-band.ts";
import { singleBeforeMulti } from "../single-before-multi.ts";
import { slowRepetitions } from "../slow-repetitions.ts";
import { strengthOnce } from "../strength-once.ts";
import { tooHeavyForNovice } from "../too-heavy-for-novice.ts";
import { tooHeavyWhenYoung } from "../too-heavy-when-young.ts";
import { tooOftenWhenYoung } from "../too-often-when-young.ts";
import { trunkDirections } from "../trunk-directions.ts";
import { unequalOpposites } from "../unequal-opposites.ts";
import { unknownExercise } from "../unknown-exercise.ts";
import { warmUpTooLong } from "../warm-up-too-long.ts";
import { wayCannot } from "../way-cannot.ts";

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
  trunkDirections,
  unequalOpposites,
  manySetsAtOnce,
  activityMinutes,
  moreDaysThanUsual,
  longWithoutLight,
  nothingGoesUp,
  wayCannot,
  loadNotHere,
  noNextLoad,
  fastWorkLast,
  warmUpTooLong,
  mostlyToFailure,
  pairForOneMuscle,
  manyContacts,
  jumpInConditioning,
  slowRepetitions,
  cannotJudge,
  strengthOnce,
  balanceForOlder,
  powerForOlder,
  tooHeavyWhenYoung,
  tooOftenWhenYoung,
  breathHold,
  pastDoseLimits,
  aboveCeiling,
  loadFromFloor,
  comebackSets,
  comebackLoad,
] as const;

export type CheckId = (typeof CHECKS)[number]["id"];
