import { Bundle, type Column } from "./bundle.ts";
import { type Configuration, configurationOf } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import type { Net } from "./net.ts";
import type { Walk } from "./walk.ts";

/** The best of every session by itself at one price for each row. */
export interface Priced {
  readonly price: Float64Array;
  /** Worth of each item at these prices. */
  readonly worth: Float64Array;
  /** Worth of the best of each session, and that best; not a real session where the walk is not exact. */
  readonly best: readonly number[];
  readonly sessions: readonly Configuration[];
  /** No plan is worth more. */
  readonly bound: number;
}

/** @returns undefined when a session has no plan at all */
export function priced(net: Net, goal: Goal, walks: readonly Walk[], price: Float64Array): Priced | undefined {
  const worth = new Float64Array(net.items);
  for (const { steps } of net.sessions) {
    for (const { items } of steps) {
      for (const item of items) {
        let value = goal.value[item]!;
        for (let k = net.rows[item]!; k < net.rows[item + 1]!; k++) value -= price[net.row[k]!]! * net.amount[k]!;
        worth[item] = value;
      }
    }
  }
  const best: number[] = [];
  const sessions: Configuration[] = [];
  let bound = 0;
  for (const walk of walks) {
    const found = walk.best(worth);
    if (found === undefined) return undefined;
    best.push(found.worth);
    sessions.push(configurationOf(net, goal, found.items));
    bound += found.worth;
  }
  for (let r = 0; r < price.length; r++) bound += goal.conjugate(r, price[r]!);
  return { price, worth, best, sessions, bound };
}

/** Looks for better prices at most; a count of work. */
const MOST_LOOKS = 60;
/** A look must gain this part of what is hoped for, or the centre stays; half of it, and prices may move further. */
const GAIN = 0.1;

/** How far a price may move at first for each quarter-set that a row is off: about an eightieth of what that costs. */
export function firstPace(goal: Goal): number {
  return goal.over.reduce((sum, points) => sum + points, 0) / (80 * Math.max(1, goal.over.length));
}

/** What is gained by one look: the better prices of two, and how far to move next. */
export function afterLook<T extends { readonly bound: number }>(
  known: T,
  found: T,
  hope: number,
  pace: number,
): { readonly best: T; readonly pace: number } {
  const hoped = known.bound - hope;
  if (!(found.bound < known.bound - GAIN * hoped)) return { best: known, pace: pace * 0.8 };
  return { best: found, pace: found.bound < known.bound - 0.5 * hoped ? pace * 2 : pace };
}

/** Where to look for prices: those to begin with, and sessions that were best at others. */
export interface Start {
  readonly price: Float64Array;
  readonly columns: readonly (readonly Column[])[];
}

/** Nothing known: prices of 0. */
export function noStart(net: Net, goal: Goal): Start {
  return { price: new Float64Array(goal.rows.length), columns: net.sessions.map(() => []) };
}

/**
 * Prices of the rows that make the bound small.
 *
 * @param floor stops when the bound is under it
 * @param enough stops when no more than this part of what lies over the floor is to be hoped for; without a floor, of
 * what was gained so far
 * @returns the best prices found, with the walks standing at them, and every session that was best on the way;
 * undefined when a session has no plan at all
 */
export function tighten(
  net: Net,
  goal: Goal,
  walks: readonly Walk[],
  start: Start,
  floor: number,
  enough: number,
): { readonly dual: Priced; readonly columns: readonly (readonly Column[])[] } | undefined {
  const first = priced(net, goal, walks, start.price);
  if (first === undefined) return undefined;
  const bundle = new Bundle(
    goal,
    start.columns.map((columns) => columns.map((column) => ({ ...column }))),
  );
  const add = ({ sessions }: Priced) => {
    for (const [s, { items, value, sums }] of sessions.entries()) bundle.add(s, items.join(" "), value, sums, items);
  };
  add(first);
  let [best, last, pace] = [first, first, firstPace(goal)];
  for (let look = 0; look < MOST_LOOKS && best.bound >= floor; look++) {
    const { price, hope } = bundle.next(best.price, best.bound, pace);
    const over = Number.isFinite(floor) ? best.bound - floor : first.bound - best.bound;
    if (!(best.bound - hope > enough * over)) break;
    last = priced(net, goal, walks, price)!;
    add(last);
    ({ best, pace } = afterLook(best, last, hope, pace));
  }
  return { dual: last === best ? best : priced(net, goal, walks, best.price)!, columns: bundle.columns };
}
