import type { SlotSession } from "../measures/index.ts";
import { chance } from "./chance.ts";
import { type Asked, lifter, type Written } from "./lifter.ts";
import { mostReps } from "./most-reps.ts";
import { recorded, SESSION_DAYS } from "./recorded.ts";
import { firstAsked, onStack, shareFor } from "./start.ts";
import type { Moment } from "./ways.ts";
import type { World } from "./world.ts";

/** Before a session: what was recorded until then, what is asked, the day, and for how many repetitions a load is wanted. */
export interface Occasion extends Moment {
  /** Repetitions to failure. */
  readonly reps: number;
}

/** The load, in kilograms, with which so many repetitions can just be done, and where it lies with 80 % chance. */
export interface Forecast {
  readonly middle: number;
  readonly low: number;
  readonly high: number;
}
export type Forecaster = (occasion: Occasion) => Forecast | undefined;

/** How sure it is that so many repetitions will be done in a set (0 = first) with a load, leaving the reserve asked. */
export type Chancer = (
  occasion: Occasion,
  what: { readonly loadKg: number; readonly reps: number; readonly set: number },
) => number | undefined;

/** What is said of a change against six weeks before: whether it is told from noise. */
export type Changer = (occasion: Occasion) => "gain" | "fall" | "level" | "unclear" | undefined;

/** One session of one person, foretold twice from the same record. */
export interface Foretold {
  readonly person: number;
  /** How many forecasts this person had before. */
  readonly before: number;
  /** The load with which that many repetitions could just be done on that day, kg; nobody in the world knows it. */
  readonly truth: number;
  /** Undefined: nothing is said. */
  readonly ours: Forecast | undefined;
  readonly average: Forecast | undefined;
  /** Every six weeks: what was said of the last six, and by how much this person rose in them, logarithm, luck aside. */
  readonly change: { readonly told: ReturnType<Changer>; readonly rose: number } | undefined;
  /** How sure ours was of repetitions in the last set with a load, both drawn around what was asked; whether they came. */
  readonly sure: { readonly chance: number; readonly happened: boolean } | undefined;
}

/** Sessions with a record before the first forecast counts. */
const WARM_UP = 6;
const DRAW_RANGE = 12;
const DRAW_REPS = 14;
/** Days over which a change is told, and after which it is asked about again. */
const CHANGE_DAYS = 42;
/** Loads about which it is asked how sure it is, as shares of the one asked, so that all certainties come up. Ours. */
const LIGHTER = [0.78, 1.04] as const;
/** Asked of a person all the time; each of the three is as likely. With the reserve never over 10 repetitions. */
const RANGES = [
  { from: 3, to: 5 },
  { from: 4, to: 6 },
  { from: 5, to: 8 },
] as const;

/** A plain coach: a pin more when the first set reached the top of the range, a pin less when it missed the bottom. */
function afterwards(asked: Asked, first: Written | undefined, { stepKg }: World): Asked {
  if (first === undefined) return asked;
  const { from, to } = asked.reps;
  const pins = first.reps >= to ? 1 : first.reps < from ? -1 : 0;
  return { ...asked, loadKg: Math.max(stepKg, asked.loadKg + pins * stepKg) };
}

/**
 * The record of one made-up person under a plain coach who asks neither forecaster, and what both foretold before each
 * of its sessions.
 */
export function foretell(
  world: World,
  seed: number,
  index: number,
  weeks: number,
  ours: { readonly forecast: Forecaster; readonly chance: Chancer; readonly change: Changer },
  average: Forecaster,
): readonly Foretold[] {
  const most = mostReps(world, seed, index);
  const one = lifter(world, seed, index);
  const reps = RANGES[Math.floor(chance(seed, index, DRAW_RANGE).even(0, RANGES.length))]!;
  let asked = firstAsked(one, world, seed, index, { reps, reserve: 2, sets: 3 });
  const middle = (reps.from + reps.to) / 2 + asked.reserve;
  const history: SlotSession[] = [];
  const told: Foretold[] = [];
  let next = 2 * CHANGE_DAYS;
  const changeAt = (occasion: Occasion): Foretold["change"] => {
    const { day } = occasion;
    if (!(day >= next)) return undefined;
    next += CHANGE_DAYS;
    return { told: ours.change(occasion), rose: Math.log(one.trend(day) / one.trend(day - CHANGE_DAYS)) };
  };
  const sureOf = (occasion: Occasion, number: number): Foretold["sure"] => {
    const set = asked.sets - 1;
    const draw = chance(seed, index, number, DRAW_REPS);
    const least = Math.floor(draw.even(reps.from, reps.to + 1));
    const loadKg = onStack(asked.loadKg * draw.even(...LIGHTER), world);
    const sure = ours.chance(occasion, { loadKg, reps: least, set });
    if (sure === undefined) return undefined;
    return { chance: sure, happened: most(occasion.day, { ...asked, loadKg })[set]! >= least + asked.reserve };
  };
  for (let day = 0; day < weeks * 7; day += SESSION_DAYS) {
    if (!one.comes(day)) continue;
    if (history.length >= WARM_UP) {
      const occasion = { history, asked, day, world, reps: middle };
      told.push({
        person: index,
        before: told.length,
        truth: one.maximum(day) * shareFor(middle, world.curve),
        ours: ours.forecast(occasion),
        average: average(occasion),
        change: changeAt(occasion),
        sure: sureOf(occasion, history.length),
      });
    }
    const written = one.train(day, asked);
    history.push(recorded(history.length, day, asked, written));
    asked = afterwards(asked, written[0], world);
  }
  return told;
}
