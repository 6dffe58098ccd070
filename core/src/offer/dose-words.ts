import type { Exercise, SetDose } from "../model/index.ts";
import type { DoseWord } from "./raised-by.ts";

/** How hard conditioning is meant: whole sentences can be spoken (easy, steady), or only short phrases (hard). */
export type Effort = "easy" | "steady" | "hard";

/** What is known of a set besides its own numbers. */
export interface DoseFacts {
  /** Seconds of the person's best hold of this form. */
  readonly bestHoldS?: number;
  readonly effort?: Effort;
  /** Limits that the set is already cut to; an unknown share cannot pass them. */
  readonly percent?: number;
  readonly reserve?: number;
}

/** Per cent of the best hold at which holds end wherever a least number of repetitions left is asked. */
export const HOLD_PERCENT_UNDER_RESERVE = 75;

/** @returns true when the set is held still, so that seconds and not repetitions say how hard it is */
export function isHold(exercise: Exercise, set: SetDose): boolean {
  return set.amount.kind === "hold" || exercise.mode === "hold";
}

/** @returns seconds of a hold, the longest asked; NaN when the set says none */
export function holdSeconds(set: SetDose): number {
  return set.amount.kind === "hold" || set.amount.kind === "time" ? set.amount.span.to : Number.NaN;
}

/** @returns the fewest repetitions left that the set allows; as many as possible leaves none unless it says so */
export function leastLeft(set: SetDose): number | undefined {
  return set.reserve?.from ?? (set.amount.kind === "most" ? 0 : undefined);
}

/** 3 or more left stand for a middle load, anything else for a heavy one. */
function assumedPercent(set: SetDose): number {
  return (leastLeft(set) ?? 0) >= 3 ? 65 : 90;
}

function knownPercent(exercise: Exercise, set: SetDose, facts: DoseFacts): number | undefined {
  if (set.percent !== undefined) return set.percent;
  if (!isHold(exercise, set) || facts.bestHoldS === undefined) return undefined;
  return (holdSeconds(set) * 100) / facts.bestHoldS;
}

/** Range and readiness and staying up are no strength dose: middle, unless the coach wrote numbers. */
function isPlainPractice(exercise: Exercise, set: SetDose): boolean {
  const noStrength = exercise.pattern === "mobility" || exercise.pattern === "balance";
  return noStrength && set.percent === undefined && leastLeft(set) === undefined;
}

/**
 * The words that a set earns; none means a middle dose.
 *
 *   heavy         not a hold, share >= 80 %
 *   lowering      the form is lowering only
 *   near failure  at most 1 left, or a hold at 90 % of the best or more
 *   breath        not a hold and share >= 85 %, or near failure
 *   hold          a hold over 30 s, or at 80 % of the best or more
 *   light         none of these, the load can be made lighter, and: share <= 50 % with 4 or more left; for holds
 *                 at most 10 s and at most 50 % of the best
 *
 * The share is of today's best single, or seconds of the best hold. Unknown: 65 % when 3 or more are left, else
 * 90 %, and never light. An unknown number left counts as near failure, since the set may end there. Conditioning
 * goes by speech instead: whole sentences are middle, short phrases heavy.
 *
 * @source ours
 * @example
 * doseWords(backSquat, { amount: fiveReps, eachSide: false, percent: 85, reserve: { from: 2, to: 2 } }, {})
 * //=> heavy, breath
 */
export function doseWords(exercise: Exercise, set: SetDose, facts: DoseFacts): ReadonlySet<DoseWord> {
  const words = new Set<DoseWord>();
  if (exercise.lowering) words.add("lowering");
  if (exercise.mode === "cyclic" && (facts.effort !== undefined || facts.reserve !== undefined)) {
    if (facts.effort === "hard" && facts.reserve === undefined) words.add("heavy");
    return words;
  }
  if (isHold(exercise, set)) addHoldWords(words, exercise, set, facts);
  else if (!isPlainPractice(exercise, set)) addLoadWords(words, exercise, set, facts);
  return words;
}

function addLoadWords(words: Set<DoseWord>, exercise: Exercise, set: SetDose, facts: DoseFacts): void {
  const known = knownPercent(exercise, set, facts);
  const percent = Math.min(known ?? assumedPercent(set), facts.percent ?? 100);
  const left = leastLeft(set) ?? Number.NaN;
  if (!(percent < 80)) words.add("heavy");
  if (!(left > 1)) words.add("near failure");
  if (!(percent < 85) || words.has("near failure")) words.add("breath");
  if (words.size === 0 && !exercise.fixed && known !== undefined && known <= 50 && left >= 4) words.add("light");
}

function addHoldWords(words: Set<DoseWord>, exercise: Exercise, set: SetDose, facts: DoseFacts): void {
  const known = knownPercent(exercise, set, facts);
  const most = facts.reserve === undefined ? 100 : HOLD_PERCENT_UNDER_RESERVE;
  const practice = isPlainPractice(exercise, set);
  const percent = Math.min(known ?? (practice ? 65 : assumedPercent(set)), most);
  const left = leastLeft(set);
  if (!(percent < 90) || (left !== undefined && left <= 1)) words.add("near failure");
  if (words.has("near failure")) words.add("breath");
  const held = holdSeconds(set);
  if (!(held <= 30) || !(percent < 80)) words.add("hold");
  if (words.size === 0 && !exercise.fixed && known !== undefined && held <= 10 && known <= 50) words.add("light");
}
