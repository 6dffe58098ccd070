import { Bundle, type Column } from "./bundle.ts";
import type { Configuration } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import { join } from "./join.ts";
import { type Budget, type Found, isBetter, type Plan, SLACK } from "./plan.ts";
import { afterLook, firstPace } from "./prices.ts";

/** Lists whose sizes multiply to no more than this are joined at once. */
const JOINED_AT_ONCE = 300_000;
/** Looks for better prices in one node; and a look that hopes for less than this part of the gap is not taken. */
const MOST_LOOKS = 15;
const WORTH_A_LOOK = 0.02;

type Indices = Int32Array<ArrayBuffer>;

/** A part of the search: what each session may still be, with the prices it begins with. */
interface Node {
  /** Indices into the list of each session. */
  readonly lists: readonly Indices[];
  readonly price: ArrayLike<number>;
  readonly bound: number;
  readonly columns: readonly (readonly Column[])[];
}

/** The lists at one price. */
interface Look {
  readonly price: ArrayLike<number>;
  readonly bound: number;
  /** Index and worth of the best of each list. */
  readonly at: readonly number[];
  readonly best: readonly number[];
}

/**
 * The best plan that takes one configuration of each list: prices are sought anew for a part of the lists; what lacks
 * more than the gap drops out; what is left is joined when it is little, or split in two where the sessions that hold the
 * bound up disagree most about a row.
 *
 * @param price where to begin
 * @param known the best plan so far; a plan that is worth as much is looked for only where it may stand first
 * @returns the best plan, and what nothing in the lists is worth more than
 */
export function branch(
  goal: Goal,
  all: readonly (readonly Configuration[])[],
  price: ArrayLike<number>,
  known: Plan,
  budget: Budget,
): Found {
  const count = goal.rows.length;
  const sums = all.map((list) => {
    const flat = new Int32Array(list.length * count);
    for (const [i, each] of list.entries()) flat.set(each.sums, i * count);
    return flat;
  });
  const worth = all.map((list) => new Float64Array(list.length));
  const bundleOf = (node: Node) =>
    new Bundle(
      goal,
      node.columns.map((list) => list.map((column) => ({ ...column }))),
    );

  function look(lists: readonly Indices[], at: ArrayLike<number>): Look {
    let bound = 0;
    for (let r = 0; r < count; r++) bound += goal.conjugate(r, at[r]!);
    const picks = lists.map((list, s) => {
      let [index, most] = [-1, Number.NEGATIVE_INFINITY];
      budget.left -= list.length;
      for (const i of list) {
        let value = all[s]![i]!.value;
        for (let r = 0, k = i * count; r < count; r++, k++) value -= at[r]! * sums[s]![k]!;
        worth[s]![i] = value;
        if (value > most) [index, most] = [i, value];
      }
      bound += most;
      return [index, most] as const;
    });
    return { price: at, bound, at: picks.map(([index]) => index), best: picks.map(([, most]) => most) };
  }

  /** The best look at a node; `worth` stands at it afterwards. */
  function tighten(node: Node, bundle: Bundle, floor: number): Look {
    const add = (found: Look) => {
      for (const [s, i] of found.at.entries()) {
        const { value, sums: mine, items } = all[s]![i]!;
        bundle.add(s, i, value, mine, items);
      }
      return found;
    };
    let best = add(look(node.lists, node.price));
    let [last, pace] = [best, firstPace(goal)];
    for (let n = 0; n < MOST_LOOKS && best.bound >= floor; n++) {
      const { price, hope } = bundle.next(best.price, best.bound, pace);
      if (!(best.bound - hope > WORTH_A_LOOK * (best.bound - floor))) break;
      last = add(look(node.lists, price));
      ({ best, pace } = afterLook(best, last, hope, pace));
    }
    return last === best ? best : look(node.lists, best.price);
  }

  let best = known;
  if (all.some((list) => list.length === 0)) return { best, bound: best.value };
  const stack: Node[] = [
    {
      lists: all.map((list) => Int32Array.from(list.keys())),
      price,
      bound: Number.POSITIVE_INFINITY,
      columns: all.map(() => []),
    },
  ];
  for (let node = stack.pop(); node !== undefined; node = stack.pop()) {
    const floor = best.value + goal.more - SLACK;
    if (node.bound < floor) continue;
    if (budget.left < 0) return { best, bound: Math.max(node.bound, ...stack.map(({ bound }) => bound)) };
    const bundle = bundleOf(node);
    const found = tighten(node, bundle, floor);
    budget.left -= bundle.work;
    budget.left -= bundle.work;
    if (found.bound < floor) continue;
    const gap = found.bound - floor;
    const lists = node.lists.map((list, s) => list.filter((i) => found.best[s]! - worth[s]![i]! <= gap));
    if (lists.reduce((size, { length }) => size * length, 1) <= JOINED_AT_ONCE) {
      const little = lists.map((list, s) => [...list].map((i) => all[s]![i]!));
      const plan = join(goal, found, little, best.value + goal.more, budget);
      if (plan === "no budget") return { best, bound: Math.max(found.bound, ...stack.map(({ bound }) => bound)) };
      if (plan !== undefined && isBetter(plan, best)) best = plan;
      continue;
    }
    const { session, parts } = split(goal, bundle, lists, sums, worth);
    const children = parts.map((list): Node => {
      const inside = new Set(list);
      const most = list.reduce((high, i) => Math.max(high, worth[session]![i]!), Number.NEGATIVE_INFINITY);
      const columns = bundle.columns.map((seen, s) =>
        seen.filter(({ key }) => (s === session ? inside.has(key as number) : lists[s]!.includes(key as number))),
      );
      const bound = found.bound - found.best[session]! + most;
      return { lists: lists.with(session, list), price: found.price, bound, columns };
    });
    stack.push(...children.sort((a, b) => a.bound - b.bound));
  }
  return { best, bound: best.value };
}

/** Parts one list in two: by a row, where the shares of the bundle disagree most, or else by worth. */
function split(
  goal: Goal,
  bundle: Bundle,
  lists: readonly Indices[],
  sums: readonly Int32Array[],
  worth: readonly Float64Array[],
): { readonly session: number; readonly parts: readonly Indices[] } {
  const count = goal.rows.length;
  let [session, row, mean, widest] = [0, 0, 0, 0];
  for (const [s, columns] of bundle.columns.entries()) {
    for (let r = 0; r < count; r++) {
      let [first, second] = [0, 0];
      for (const { share, sums: mine } of columns) {
        first += share * mine[r]!;
        second += share * mine[r]! * mine[r]!;
      }
      const spread = (second - first * first) * (goal.under[r]! + goal.over[r]!);
      if (spread > widest) [session, row, mean, widest] = [s, r, first, spread];
    }
  }
  const above = (i: number) => sums[session]![i * count + row]! > mean;
  const list = lists[session]!;
  const parts = [list.filter((i) => !above(i)), list.filter(above)];
  if (parts.every(({ length }) => length > 0)) return { session, parts };
  const longest = lists.reduce((most, { length }, s) => (length > lists[most]!.length ? s : most), 0);
  const sorted = lists[longest]!.toSorted((a, b) => worth[longest]![b]! - worth[longest]![a]!);
  const half = sorted.length >> 1;
  return { session: longest, parts: [sorted.slice(0, half), sorted.slice(half)] };
}
