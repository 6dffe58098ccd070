import type { SlotSession } from "../measures/index.ts";
import type { Dose } from "../model/index.ts";
import { type Asked, lifter } from "./lifter.ts";
import { recorded, SESSION_DAYS } from "./recorded.ts";
import { ASKED_ALWAYS, firstAsked, isWithin } from "./start.ts";
import type { Way } from "./ways.ts";
import type { World } from "./world.ts";

/** A step up that was taken, and what came of it. */
export interface StepUp {
  /** How sure the way was, where it said so. */
  readonly certainty?: number;
  /** Whether a first set can do the bottom of the range with the reserve asked for, luck aside. */
  readonly within: boolean;
}

/** What became of one person under one way of coaching. */
export interface Coached {
  readonly steps: readonly StepUp[];
  readonly stepsBack: number;
  /** Weeks in which they trained; half a week for each session. */
  readonly weeks: number;
  /** Weeks in which the next load would have been within already. */
  readonly late: number;
  /** Weeks in which the load that was asked was not within. */
  readonly heavy: number;
}

/**
 * One made-up person coached for so many weeks. The same person comes on the same days with the same luck whatever way
 * they are coached.
 *
 * A load is within reach when a first set can do the bottom of the range with it and leave the reserve asked for, by
 * what the person can do without the day's luck; what later sets cost comes off what is left.
 */
export function coach(world: World, seed: number, index: number, weeks: number, way: Way): Coached {
  const one = lifter(world, seed, index);
  const home = (loadKg: number): Asked => ({ ...ASKED_ALWAYS, loadKg });
  let dose: Dose | undefined;
  let asked = firstAsked(one, world, seed, index, ASKED_ALWAYS);
  const history: SlotSession[] = [];
  const steps: StepUp[] = [];
  let [stepsBack, trained, late, heavy] = [0, 0, 0, 0];
  for (let day = 0; day < weeks * 7; day += SESSION_DAYS) {
    if (!one.comes(day)) continue;
    if (history.length > 0) {
      const { certainty, ...next } = way({ history, asked, day, world, ...(dose === undefined ? {} : { dose }) });
      if (next.asked.loadKg > asked.loadKg) {
        const within = isWithin(one, world, day, home(next.asked.loadKg));
        steps.push({ within, ...(certainty === undefined ? {} : { certainty }) });
      }
      if (next.asked.loadKg < asked.loadKg) stepsBack++;
      ({ asked, dose } = next);
    }
    trained++;
    if (isWithin(one, world, day, home(asked.loadKg + world.stepKg))) late++;
    if (!isWithin(one, world, day, home(asked.loadKg))) heavy++;
    history.push(recorded(history.length, day, asked, one.train(day, asked), dose));
  }
  return { steps, stepsBack, weeks: trained / 2, late: late / 2, heavy: heavy / 2 };
}
