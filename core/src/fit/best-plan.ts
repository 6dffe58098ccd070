import { branch, isBetter } from "./branch.ts";
import { type Configuration, configurationOf, isReal, type Sessions } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import { improve } from "./improve.ts";
import { type Budget, join, type Plan, SLACK } from "./join.ts";
import { simplify } from "./simplify.ts";
import { type Compact, compactOf } from "./compact.ts";
import type { Column } from "./bundle.ts";
import { listSession } from "./list.ts";
import { copyOf, type Net } from "./net.ts";
import { type Priced, type Start, tighten } from "./prices.ts";
import { Walk } from "./walk.ts";

/** Sessions seen while prices were sought, of which a first plan is made: so many combinations at most. */
const MOST_COMBINATIONS = 400;
/** A first listing within this part of the gap makes a better start where the whole listing would be long. */
const PART_OF_GAP = 0.4;
declare const process: any;
const ROOT_ENOUGH = Number(process.env['RE'] ?? 0.001);
const NODE_ENOUGH = Number(process.env['NE'] ?? 0.05);
const LONG_LIST = Number(process.env['LL'] ?? 1_000);

export interface Found {
  readonly best: Plan;
  /** No plan is worth more; the plan's own value when it is proven best. */
  readonly bound: number;
}

/**
 * The plan that is worth most, of equals the first in the stated order.
 *
 * 1. Prices on the rows part the task into sessions, each of which the walk solves exactly; the bundle finds prices that
 *    make the bound small. 2. The sessions seen on the way, joined and improved, are a first plan. 3. Whatever cannot
 *    stand in a plan as good drops out of the nets, and the plan is improved in the rest, as long as that gains. 4. All
 *    sessions that lack no more than the gap are listed. 5. One of each is chosen by branching with new prices.
 *
 * @param known a real plan to begin with, if there is one
 * @returns undefined when there is no plan
 */
export function bestPlan(whole: Net, goal: Goal, budget: Budget, known?: Plan): Found | undefined {
  const net = copyOf(whole);
  const walks = walksOf(net);
  const start = { price: new Float64Array(goal.rows.length), columns: net.sessions.map(() => []) };
  const tight = tighten(net, goal, walks, start, Number.NEGATIVE_INFINITY, ROOT_ENOUGH);
  if (tight === undefined) return undefined;
  let { dual } = tight;
  let best = known ?? firstPlan(net, goal, dual, walks, tight.columns);
  if (best === undefined) return undefined;
  const floor = () => best!.value + goal.more - SLACK;
  for (let again = true; again && dual.bound >= floor(); ) {
    dual = dropHopeless(net, dual, walks, floor());
    const plan = planOf(net, goal, improve(net, goal, best.sessions));
    again = isBetter(plan, best);
    if (again) best = plan;
  }
  if (dual.bound < floor()) return { best, bound: best.value };
  const small = compactOf(net, goal);
  return inSmall(small, best, { price: dual.price, columns: alive(net, tight.columns) }, budget);
}

/** The search proper, in a net without what is hopeless; plans are known by the items of the larger net. */
function inSmall({ net: whole, goal, origin, rows }: Compact, first: Plan, start: Start, budget: Budget): Found {
  let best = first;
  const floor = () => best.value + goal.more - SLACK;
  const take = ({ sessions, value }: Plan) => {
    const plan = { sessions: sessions.map((items) => items.map((item) => origin[item]!)), value };
    if (isBetter(plan, best)) best = plan;
  };
  const number = new Map(Array.from(origin, (item, index) => [item, index]));
  const columns = start.columns.map((seen) =>
    seen.map(({ share, items }): Column => {
      const mine = items.map((item) => number.get(item)!);
      const { value, sums } = configurationOf(whole, goal, mine);
      return { key: mine.join(" "), value, sums, items: mine, share };
    }),
  );
  const price = Float64Array.from(rows, (r) => start.price[r]!);
  const stack: Part[] = [{ net: whole, price, columns, bound: Number.POSITIVE_INFINITY }];
  const open = (more: number) => Math.max(more, ...stack.map(({ bound }) => bound));
  let nodes = 0, leaves = 0;
  for (let part = stack.pop(); part !== undefined; part = stack.pop()) {
    if (part.bound < floor()) continue;
    if (budget.left < 0) return { best, bound: open(part.bound) };
    nodes++;
    const { net } = part;
    const walks = walksOf(net);
    const tight = tighten(net, goal, walks, part, floor(), NODE_ENOUGH);
    for (const walk of walks) budget.left -= Math.ceil(walk.work / 64);
    if (tight === undefined) continue;
    const top = topPlan(net, goal, tight.columns);
    if (top !== undefined) take(top);
    if (tight.dual.bound < floor()) continue;
    const dual = dropHopeless(net, tight.dual, walks, floor());
    const gap = dual.bound - floor();
    if (gap < 0) continue;
    const lists = listAll(net, goal, dual, walks, gap, { left: LONG_LIST });
    if (lists === undefined) {
      const parts = splitNet(net, goal, alive(net, tight.columns), dual);
      if (parts.length > 1) {
        stack.push(...parts);
        continue;
      }
    }
    leaves++;
    const all = lists ?? listAll(net, goal, dual, walks, gap, budget);
    if (all === undefined) return { best, bound: open(dual.bound) };
    if (all.some((list) => list.length === 0)) continue;
    const simple = simplify(goal, all, dual.price);
    const inner = { sessions: best.sessions.map((items) => items.map((item) => number.get(item) ?? -1)), value: best.value };
    const found = branch(simple.goal, simple.lists, simple.price, inner, budget);
    if (found.best !== inner) take(found.best);
    if (found.bound > found.best.value) return { best, bound: open(found.bound) };
  }
  if ((globalThis as any).dbg) console.log("nodes", nodes, "leaves", leaves);
  return { best, bound: best.value };
}

/** A part of the search: what its sessions may still take, with the prices it begins with. */
interface Part extends Start {
  readonly net: Net;
  readonly bound: number;
}

function listAll(net: Net, goal: Goal, dual: Priced, walks: readonly Walk[], gap: number, budget: Budget) {
  const lists: (readonly Configuration[])[] = [];
  for (const [s, walk] of walks.entries()) {
    const list = listSession(net, goal, dual, walk, s, gap, budget);
    if (list === undefined) return undefined;
    lists.push(list);
  }
  return lists;
}

/** The sessions with the largest shares, if they make a real plan. */
function topPlan(net: Net, goal: Goal, columns: Start["columns"]): Plan | undefined {
  const sessions = columns.map((seen) => seen.reduce((top, each) => (each.share > top.share ? each : top)).items);
  if (!sessions.every((items) => isReal(net, items))) return undefined;
  const { must, sums } = configurationOf(net, goal, sessions.flat());
  return goal.allows(must, sums) ? planOf(net, goal, sessions) : undefined;
}

function alive(net: Net, columns: Start["columns"]): Start["columns"] {
  const there = new Uint8Array(net.items);
  for (const { steps } of net.sessions) for (const { items } of steps) for (const item of items) there[item] = 1;
  return columns.map((seen) => seen.filter(({ items }) => items.every((item) => there[item] === 1)));
}

/** Splits the task in two where the sessions that hold the bound up disagree most about a block. */
function splitNet(net: Net, goal: Goal, columns: Start["columns"], dual: Priced): readonly Part[] {
  const rows = goal.rows.length;
  let widest = 1e-6;
  let where: { session: number; block: number } | undefined;
  for (const [session, seen] of columns.entries()) {
    const blocks = new Map<number, { mean: Float64Array; square: Float64Array }>();
    for (const { share, items } of seen) {
      if (share === 0) continue;
      const adds = new Map<number, Float64Array>();
      for (const item of items) {
        const block = net.block[item]!;
        const sums = adds.get(block) ?? new Float64Array(rows);
        adds.set(block, sums);
        for (let k = net.rows[item]!; k < net.rows[item + 1]!; k++) sums[net.row[k]!]! += net.amount[k]!;
      }
      for (const [block, sums] of adds) {
        const known = blocks.get(block) ?? { mean: new Float64Array(rows), square: new Float64Array(rows) };
        blocks.set(block, known);
        for (let r = 0; r < rows; r++) {
          known.mean[r]! += share * sums[r]!;
          known.square[r]! += share * sums[r]! * sums[r]!;
        }
      }
    }
    for (const [block, { mean, square }] of blocks) {
      let spread = 0;
      for (let r = 0; r < rows; r++) spread += (square[r]! - mean[r]! * mean[r]!) * (goal.under[r]! + goal.over[r]!);
      if (spread > widest) [widest, where] = [spread, { session, block }];
    }
  }
  if (where === undefined) return [];
  const { session, block } = where;
  const mine = columns[session]!.filter(({ share }) => share > 0);
  const itemsOf = (items: readonly number[]) => items.filter((item) => net.block[item] === block);
  const ways = new Map<number, number>();
  for (const { share, items } of mine) {
    const way = net.way[itemsOf(items)[0]!]!;
    ways.set(way, (ways.get(way) ?? 0) + share);
  }
  const [topWay, topShare] = [...ways].sort((a, b) => b[1] - a[1] || a[0] - b[0])[0]!;
  let inside: (item: number) => boolean;
  if (topShare < 0.999) inside = (item) => net.way[item] === topWay;
  else {
    // The step and the row of it with the widest spread.
    let best = -1;
    let at = { step: -1, row: 0, mean: 0 };
    const steps = net.sessions[session]!.steps.filter((each) => each.block === block && each.way === topWay);
    for (const [n, { items }] of steps.entries()) {
      const here = new Set(items);
      for (let r = 0; r < rows; r++) {
        let [mean, square] = [0, 0];
        for (const column of mine) {
          const item = column.items.find((each) => here.has(each));
          const amount = item === undefined ? 0 : amountOf(net, item, r);
          mean += column.share * amount;
          square += column.share * amount * amount;
        }
        const spread = (square - mean * mean) * (goal.under[r]! + goal.over[r]!);
        if (spread > best) [best, at] = [spread, { step: n, row: r, mean }];
      }
    }
    const step = steps[at.step]!;
    const above = new Set([...step.items].filter((item) => amountOf(net, item, at.row) > at.mean));
    const below = new Set([...step.items].filter((item) => !above.has(item)));
    if (above.size === 0 || below.size === 0) return [];
    return [above, below].map((not) => childOf(net, columns, dual, (item) => !not.has(item)));
  }
  return [true, false].map((want) => childOf(net, columns, dual, (item) => net.block[item] !== block || inside(item) === want));
}

function amountOf(net: Net, item: number, row: number): number {
  for (let k = net.rows[item]!; k < net.rows[item + 1]!; k++) if (net.row[k] === row) return net.amount[k]!;
  return 0;
}

function childOf(net: Net, columns: Start["columns"], dual: Priced, may: (item: number) => boolean): Part {
  const child = copyOf(net);
  for (const { steps } of child.sessions) for (const step of steps) step.items = step.items.filter((item) => may(item));
  return { net: child, price: dual.price, columns: alive(child, columns), bound: dual.bound };
}

/** One walk for each session. */
export function walksOf(net: Net): readonly Walk[] {
  return net.sessions.map((session) => new Walk(net, session));
}

export function planOf(net: Net, goal: Goal, sessions: Sessions): Plan {
  const { value, sums } = configurationOf(net, goal, sessions.flat());
  return { sessions, value: value - goal.costs(sums) };
}

/** The best plan of sessions that were seen, or of the first real session of each that is found. */
function firstPlan(
  net: Net,
  goal: Goal,
  dual: Priced,
  walks: readonly Walk[],
  columns: Start["columns"],
): Plan | undefined {
  const each = Math.max(1, Math.floor(MOST_COMBINATIONS ** (1 / Math.max(1, columns.length))));
  const lists = columns.map((seen, s) => {
    const real = seen.filter(({ items }) => isReal(net, items)).map(({ items }) => configurationOf(net, goal, items));
    const worth = ({ value, sums }: Configuration) =>
      sums.reduce((sum, amount, r) => sum - dual.price[r]! * amount, value);
    const some = real.length > 0 ? real : firstReal(net, goal, dual, walks[s]!, s);
    return [...some].sort((a, b) => worth(b) - worth(a)).slice(0, each);
  });
  const made = join(goal, dual, lists, Number.NEGATIVE_INFINITY, { left: 4 * MOST_COMBINATIONS });
  return made === "no budget" ? undefined : made;
}

/** The first real session of the smallest gap, of a row that grows, in which there is one. */
function firstReal(net: Net, goal: Goal, dual: Priced, walk: Walk, session: number): readonly Configuration[] {
  for (let gap = 1; gap < Number.MAX_SAFE_INTEGER; gap *= 64) {
    const list = listSession(net, goal, dual, walk, session, gap, { left: 100 * LONG_LIST }, 1);
    if (list !== undefined && list.length > 0) return list;
  }
  return [];
}

/** Takes out of the nets what no plan as good as the floor can hold. */
function dropHopeless(net: Net, dual: Priced, walks: readonly Walk[], floor: number): Priced {
  const most = new Float64Array(net.items);
  const best = [...dual.best];
  for (const [s, walk] of walks.entries()) {
    walk.with(dual.worth, most);
    const others = dual.bound - dual.best[s]!;
    for (const step of net.sessions[s]!.steps)
      step.items = step.items.filter((item) => others + most[item]! >= floor - SLACK);
    walk.rebuild();
    best[s] = walk.best(dual.worth)?.worth ?? dual.best[s]!;
  }
  const gained = dual.best.reduce((sum, worth, s) => sum + worth - best[s]!, 0);
  return { ...dual, best, bound: dual.bound - gained };
}

