import type { Amount, SetDose } from "../model/index.ts";

/** Repetitions taken for "as many as possible" when the coach says no least number. Ours, no source. */
export const REPS_WHEN_OPEN = 12;

/** What one amount comes to as a whole number; `said` is false when we had to take a number of our own. */
export interface Asked {
  readonly count: number;
  readonly said: boolean;
}

/**
 * The number that stands for what is asked: the middle of the range, rounded up, so that estimates err to the long side.
 *
 * @returns repetitions, contacts, seconds or metres, as the amount's kind says
 * @example
 * askedAmount({ kind: "reps", span: { from: 8, to: 11 } }) //=> { count: 10, said: true }
 */
export function askedAmount(amount: Amount): Asked {
  if (amount.kind === "most") {
    return amount.least === undefined ? { count: REPS_WHEN_OPEN, said: false } : { count: amount.least, said: true };
  }
  return { count: Math.ceil((amount.span.from + amount.span.to) / 2), said: true };
}

/** @returns the amount of a whole set, short bouts included: seconds of a hold, repetitions of a set */
export function askedInSet(set: SetDose): Asked {
  const first = askedAmount(set.amount);
  if (set.within === undefined) return first;
  return { count: set.within.bouts.reduce((sum, bout) => sum + bout, first.count), said: first.said };
}

/** @returns repetitions in reserve as one number, the middle of the range; undefined when not said */
export function askedReserve(set: SetDose): number | undefined {
  return set.reserve === undefined ? undefined : (set.reserve.from + set.reserve.to) / 2;
}
