import { type DoneSet, leastOf, type SlotSession } from "../measures/index.ts";
import type { Dose } from "../model/index.ts";
import type { Asked } from "./lifter.ts";
import type { World } from "./world.ts";

/** Before a session that is not the first: what was recorded until then, what was asked last, and the day. */
export interface Moment {
  readonly history: readonly SlotSession[];
  readonly asked: Asked;
  /** As it was decided, where it says more than what is asked. */
  readonly dose?: Dose;
  readonly day: number;
  readonly world: World;
}

/** What is asked next. */
export interface Answer {
  readonly asked: Asked;
  readonly dose?: Dose;
  /** How sure the way is that what is asked will be done with the load that it goes up to; a share of 1. */
  readonly certainty?: number;
}

/** A way of coaching: from the record to what is asked next. It sees nothing of the person but the record. */
export type Way = (moment: Moment) => Answer;

/** Repetitions over the goal, in the last set, in so many sessions running. Source: haffTriplett2016. */
const OVER = 2;
const RUNNING = 2;

function lastSet({ asked, sets }: SlotSession): DoneSet | undefined {
  return sets.length < asked.dose.sets.length ? undefined : sets.at(-1);
}

/**
 * The plain published rule: a load more when the last set passed the goal by two repetitions in two sessions running.
 * The goal is the bottom of the range, so that the range asked is the goal and two more. So that nobody stays where a
 * load was too much, it goes a load back when the first set missed the goal by two in two sessions running; that half
 * is ours.
 *
 * @source haffTriplett2016, ours
 */
export const twoForTwoPlain: Way = ({ history, asked, world: { stepKg } }) => {
  const here = history.filter(({ asked: { load } }) => load?.value === asked.loadKg).slice(-RUNNING);
  // Both sessions must be the last ones and with this load.
  const running = here.length === RUNNING && here[0] === history.at(-RUNNING);
  const over = (set: DoneSet | undefined) => (leastOf(set?.reps) ?? asked.reps.from) - asked.reps.from;
  if (running && here.every((session) => over(lastSet(session)) >= OVER))
    return { asked: { ...asked, loadKg: asked.loadKg + stepKg } };
  if (running && asked.loadKg > stepKg && here.every(({ sets: [first] }) => over(first) <= -OVER))
    return { asked: { ...asked, loadKg: asked.loadKg - stepKg } };
  return { asked };
};
