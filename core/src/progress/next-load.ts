import { movedBy } from "../loads/index.ts";
import type { Exercise, Person } from "../model/index.ts";
import { type Load, massOf } from "../units.ts";

/** Largest step at once, per cent of the load. Source: acsm2009. */
export const MOST_STEP_PERCENT = 10;

export interface LoadStep {
  readonly from: Load;
  readonly to: Load;
  /** Of what is moved, one decimal; undefined where the body's part of it is not known. */
  readonly percent?: number;
}

/**
 * The next harder load that exists and is allowed, and how large a step it is: in per cent of the load, or of load and
 * body together where the load is added to the body or helps it.
 *
 * @param loads easiest first, as limits leave them
 * @returns undefined when none is harder
 * @source acsm2009
 * @example from 5 kg to 7.5 kg in each hand: 50 %
 */
export function nextLoad(exercise: Exercise, person: Person, loads: readonly Load[], from: Load): LoadStep | undefined {
  const harder = exercise.loadMeaning === "assist" ? -1 : 1;
  const to = loads.find((load) => harder * (massOf(load) - massOf(from)) > 0);
  if (to === undefined) return undefined;
  const withBody = exercise.loadMeaning === "assist" || exercise.loadMeaning === "added to body";
  const body = person.mass && massOf(person.mass.load);
  const [now, then] = [from, to].map((load) => (withBody ? movedBy(exercise, load, body) : massOf(load)));
  if (now === undefined || then === undefined || !(now > 0)) return { from, to };
  return { from, to, percent: Math.round((then / now - 1) * 1000) / 10 };
}

/**
 * Repetitions with a load that leave `least` with one that is so much heavier, by Epley's equation turned round.
 *
 *   ⌈(1 + percent / 100) × (30 + least) − 30⌉
 *
 * It is used to say how long to stay, not what somebody can lift: past 10 repetitions no equation is sure.
 *
 * @source epley1985, ours
 * @example repsToEarn(50, 10) //=> 30
 */
export function repsToEarn(percent: number, least: number): number {
  return Math.ceil((1 + percent / 100) * (30 + least) - 30 - 1e-9);
}

/** The same turned round: about how many repetitions are left with the heavier load. @example repsAfter(50, 27) //=> 8 */
export function repsAfter(percent: number, reps: number): number {
  return Math.max(0, Math.floor((30 + reps) / (1 + percent / 100) - 30 + 1e-9));
}
