import { chance } from "./chance.ts";
import type { Asked, Lifter } from "./lifter.ts";
import { repsToFailure } from "./lifter.ts";
import type { RepCurve, World } from "./world.ts";

/** How far off a coach's first load is. Ours. */
const FIRST_SD = 0.08;
const DRAW_START = 11;

/** Five to seven repetitions, two left, three times: with the reserve it stays under 10, where equations hold. */
export const ASKED_ALWAYS: Omit<Asked, "loadKg"> = { reps: { from: 5, to: 7 }, reserve: 2, sets: 3 };

/** @returns the share of the maximum with which so many repetitions can just be done: repsToFailure turned round */
export function shareFor(reps: number, curve: RepCurve): number {
  return curve === "thirtieths" ? 30 / (30 + reps) : 0.522 + 0.419 * Math.exp(-0.055 * reps);
}

/** @returns the nearest load that exists, kg; the lightest is one step */
export function onStack(kilograms: number, { stepKg }: World): number {
  return Math.max(1, Math.round(kilograms / stepKg)) * stepKg;
}

/** @returns whether a first set can do the bottom of the range with the reserve asked for, on a day without luck */
export function isWithin(one: Lifter, world: World, day: number, { loadKg, reps, reserve }: Asked): boolean {
  return repsToFailure(loadKg / one.trend(day), world.curve) >= reps.from + reserve;
}

/** What is asked first: a load for the middle of the range, about as well as a first session tells. */
export function firstAsked(
  one: Lifter,
  world: World,
  seed: number,
  index: number,
  asked: Omit<Asked, "loadKg">,
): Asked {
  const middle = (asked.reps.from + asked.reps.to) / 2 + asked.reserve;
  const off = Math.exp(chance(seed, index, DRAW_START).normal(FIRST_SD));
  return { ...asked, loadKg: onStack(one.trend(0) * shareFor(middle, world.curve) * off, world) };
}
