import { type Day, printDay } from "../day.ts";
import { MAX_REPS, oneRepMax } from "../equations/index.ts";
import type { Json, Lift } from "../model/index.ts";
import type { Mass } from "../units.ts";
import { plain } from "./reasons.ts";

/** Days after which a record says little of today: 12 weeks off cost people over 60 an eighth of it. Ours, no source. */
const OLD_AFTER_DAYS = 84;

/** A person's 1RM as one record gives it. `old` records tell what somebody once could. */
export interface Strength {
  readonly lift: Lift;
  readonly low: Mass;
  readonly high: Mass;
  readonly old: boolean;
}

/** @returns true when a record is too old to set a load by, or its day is not known */
export function isOld(lift: Lift, on: Day): boolean {
  return !(on - lift.on <= OLD_AFTER_DAYS);
}

/** @returns repetitions that were possible at least: those done and those said to be left, unsaid ones counted as none */
export function repsPossible(lift: Lift): number | undefined {
  return lift.reps === undefined ? undefined : lift.reps + Math.floor(lift.reserve ?? 0);
}

/**
 * The one-repetition maximum from somebody's records: the latest that an equation can take (10 repetitions at most, with
 * those in reserve), and of one day the strongest.
 *
 * @param lifts records of one exercise, or of several that `massOfLift` puts on one scale
 * @param massOfLift what was moved; undefined where it is not known
 * @param on today
 * @returns undefined when no record gives a figure
 * @source oconner1989, brzycki1993
 * @example
 * strengthFrom(lifts, (lift) => lift.load && massOf(lift.load), day("2027-03-01"))?.low
 */
export function strengthFrom(
  lifts: readonly Lift[],
  massOfLift: (lift: Lift) => Mass | undefined,
  on: Day,
): Strength | undefined {
  const figures = lifts.flatMap((lift): Strength[] => {
    const mass = massOfLift(lift);
    const reps = repsPossible(lift);
    if (mass === undefined || !(mass > 0) || reps === undefined || !(reps >= 1 && reps <= MAX_REPS)) return [];
    const { low, high } = oneRepMax(mass, reps);
    return [{ lift, low, high, old: isOld(lift, on) }];
  });
  return figures.sort((a, b) => b.lift.on - a.lift.on || b.low - a.low)[0];
}

/** @returns a record as plain data */
export function plainRecord(lift: Lift): Json {
  return {
    exercise: lift.exercise,
    load: plain(lift.load),
    reps: lift.reps ?? null,
    reserve: lift.reserve ?? null,
    on: printDay(lift.on),
  };
}
