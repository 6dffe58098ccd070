import type { Goal } from "./goal.ts";
import { copyOf, type Net, type Step } from "./net.ts";
import type { Priced, Start } from "./prices.ts";

/** A part of the search: what its sessions may still take, with the prices it begins with. */
export interface Part extends Start {
  readonly net: Net;
  readonly bound: number;
}

/** Shares under this do not count. */
const LEAST_SHARE = 0.001;

/** What somebody adds to the rows, with a share: the spread of several is how far they lie apart, in points. */
interface Adds {
  readonly share: number;
  readonly sums: Float64Array;
}

function addsOf(net: Net, goal: Goal, share: number, items: readonly number[]): Adds {
  const sums = new Float64Array(goal.rows.length);
  for (const item of items)
    for (let k = net.rows[item]!; k < net.rows[item + 1]!; k++) sums[net.row[k]!]! += net.amount[k]!;
  return { share, sums };
}

/** Mean and spread of one row. */
function rowSpread(goal: Goal, all: readonly Adds[], r: number): { readonly mean: number; readonly spread: number } {
  let [mean, square] = [0, 0];
  for (const { share, sums } of all) {
    mean += share * sums[r]!;
    square += share * sums[r]! * sums[r]!;
  }
  return { mean, spread: (square - mean * mean) * (goal.under[r]! + goal.over[r]!) };
}

function spreadOf(goal: Goal, all: readonly Adds[]): number {
  let sum = 0;
  for (let r = 0; r < goal.rows.length; r++) sum += rowSpread(goal, all, r).spread;
  return sum;
}

/** What the sessions that hold the bound up have in one block. */
interface Disagreement {
  readonly session: number;
  readonly block: number;
  readonly has: readonly (readonly [share: number, items: readonly number[]])[];
}

/** The block about which they disagree most; undefined when they are of one mind. */
function mostDisputed(net: Net, goal: Goal, columns: Start["columns"]): Disagreement | undefined {
  let widest = 0;
  let found: Disagreement | undefined;
  for (const [session, seen] of columns.entries()) {
    const held = seen.filter(({ share }) => share > LEAST_SHARE);
    for (const block of new Set(net.sessions[session]!.steps.map((step) => step.block))) {
      const has = held.map(({ share, items }) => [share, items.filter((item) => net.block[item] === block)] as const);
      const spread = spreadOf(
        goal,
        has.map(([share, items]) => addsOf(net, goal, share, items)),
      );
      if (spread > widest) [widest, found] = [spread, { session, block, has }];
    }
  }
  return found;
}

/** Items of a step that add more than the mean to the row about which there is most dispute. */
function above(net: Net, goal: Goal, { items }: Step, has: Disagreement["has"]): ReadonlySet<number> {
  const here = new Set(items);
  const all = has.map(([share, mine]) =>
    addsOf(
      net,
      goal,
      share,
      mine.filter((item) => here.has(item)),
    ),
  );
  let [row, most, widest] = [0, 0, 0];
  for (let r = 0; r < goal.rows.length; r++) {
    const { mean, spread } = rowSpread(goal, all, r);
    if (spread > widest) [row, most, widest] = [r, mean, spread];
  }
  return new Set([...items].filter((item) => addsOf(net, goal, 1, [item]).sums[row]! > most));
}

/**
 * Two parts that together are the whole: of the block about which the sessions that hold the bound up disagree most, one
 * way or all others; where they agree on the way, the items of a step that add more to a row than the mean, or the rest.
 *
 * @returns nothing when they are of one mind
 */
export function splitNet(net: Net, goal: Goal, dual: Priced, columns: Start["columns"]): readonly Part[] {
  const disputed = mostDisputed(net, goal, columns);
  if (disputed === undefined) return [];
  const { session, block, has } = disputed;
  const part = (may: (item: number) => boolean) => partOf(net, dual, columns, may);
  const ways = new Map<number, number>();
  for (const [share, items] of has) {
    const way = net.way[items[0]!]!;
    ways.set(way, (ways.get(way) ?? 0) + share);
  }
  const [[top]] = [...ways].sort(([a, mine], [b, theirs]) => theirs - mine || a - b) as [[number, number]];
  if (ways.size > 1)
    return [true, false].map((same) => part((item) => net.block[item] !== block || (net.way[item] === top) === same));
  const steps = net.sessions[session]!.steps.filter((step) => step.block === block && step.way === top);
  for (const step of steps) {
    const more = above(net, goal, step, has);
    if (more.size === 0 || more.size === step.items.length) continue;
    const less = new Set([...step.items].filter((item) => !more.has(item)));
    return [more, less].map((not) => part((item) => !not.has(item)));
  }
  return [];
}

function partOf(net: Net, dual: Priced, columns: Start["columns"], may: (item: number) => boolean): Part {
  const copy = copyOf(net);
  for (const { steps } of copy.sessions) for (const step of steps) step.items = step.items.filter(may);
  const there = new Set(copy.sessions.flatMap(({ steps }) => steps.flatMap(({ items }) => [...items])));
  const left = columns.map((seen) => seen.filter(({ items }) => items.every((item) => there.has(item))));
  return { net: copy, price: dual.price, columns: left, bound: dual.bound };
}
