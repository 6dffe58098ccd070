import { branch } from "./branch.ts";
import type { Column } from "./bundle.ts";
import type { Compact } from "./compact.ts";
import { type Configuration, configurationOf } from "./configuration.ts";
import { dropHopeless } from "./drop.ts";
import { topPlan } from "./first-plan.ts";
import type { Goal } from "./goal.ts";
import { listSession } from "./list.ts";
import type { Net } from "./net.ts";
import { type Budget, type Found, isBetter, type Plan, SLACK } from "./plan.ts";
import { type Priced, type Start, tighten } from "./prices.ts";
import { simplify } from "./simplify.ts";
import { type Part, splitNet } from "./split.ts";
import { type Walk, walksOf } from "./walk.ts";

/** A look for better prices must hope for this part of the gap. */
const ENOUGH = 0.05;
/** Sessions are listed where that takes no more than so many steps; otherwise the task is split. */
const LONG_LIST = 1_000;
/** Steps of a walk that count as one step of work: they are that much quicker than others. */
const WALK_STEPS = 64;

/**
 * Depth-first search through a small task. For each part of it prices are sought anew and what is hopeless drops out.
 * Then, where there are few sessions that lack no more than the gap, all of them are listed and one of each is chosen;
 * otherwise the part is split in two where the sessions that hold its bound up disagree most.
 *
 * @param first a real plan, by the items of the larger net from which the task was made, as the plan that is returned
 */
export function searchTree({ net, goal, origin, rows }: Compact, first: Plan, start: Start, budget: Budget): Found {
  const number = new Map(Array.from(origin, (item, index) => [item, index]));
  const columns = start.columns.map((seen) =>
    seen.flatMap(({ share, items }): Column[] => {
      const mine = items.map((item) => number.get(item));
      if (!mine.every((item) => item !== undefined)) return [];
      const { value, sums } = configurationOf(net, goal, mine);
      return [{ key: mine.join(" "), value, sums, items: mine, share }];
    }),
  );
  let best = first;
  const take = (plan: Plan | undefined) => {
    if (plan === undefined) return;
    const there = { ...plan, sessions: plan.sessions.map((items) => items.map((item) => origin[item]!)) };
    if (isBetter(there, best)) best = there;
  };
  const price = Float64Array.from(rows, (r) => start.price[r]!);
  const stack: Part[] = [{ net, price, columns, bound: Number.POSITIVE_INFINITY }];
  const stop = (here: number): Found => ({ best, bound: Math.max(here, ...stack.map(({ bound }) => bound)) });
  for (let part = stack.pop(); part !== undefined; part = stack.pop()) {
    const floor = () => best.value + goal.more - SLACK;
    if (part.bound < floor()) continue;
    if (budget.left < 0) return stop(part.bound);
    const walks = walksOf(part.net);
    const tight = tighten(part.net, goal, walks, part, floor(), ENOUGH);
    for (const walk of walks) budget.left -= Math.ceil(walk.work / WALK_STEPS);
    if (tight === undefined) continue;
    take(topPlan(part.net, goal, tight.columns));
    if (tight.dual.bound < floor()) continue;
    const dual = dropHopeless(part.net, tight.dual, walks, floor());
    const gap = dual.bound - floor();
    if (gap < 0) continue;
    const few = listAll(part.net, goal, dual, walks, gap, { left: LONG_LIST });
    const parts = few === undefined ? splitNet(part.net, goal, dual, tight.columns) : [];
    stack.push(...parts);
    if (parts.length > 0) continue;
    const all = few ?? listAll(part.net, goal, dual, walks, gap, budget);
    if (all === undefined) return stop(dual.bound);
    if (all.some((list) => list.length === 0)) continue;
    const inner = { ...best, sessions: best.sessions.map((items) => items.map((item) => number.get(item) ?? -1)) };
    const simple = simplify(goal, all, dual.price);
    const found = branch(simple.goal, simple.lists, simple.price, inner, budget);
    if (found.best !== inner) take(found.best);
    if (found.bound > found.best.value) return stop(found.bound);
  }
  return { best, bound: best.value };
}

/** Every session that lacks no more than the gap; undefined when the work ran out. */
function listAll(
  net: Net,
  goal: Goal,
  dual: Priced,
  walks: readonly Walk[],
  gap: number,
  budget: Budget,
): readonly (readonly Configuration[])[] | undefined {
  const lists: (readonly Configuration[])[] = [];
  for (const [s, walk] of walks.entries()) {
    const list = listSession(net, goal, dual, walk, s, gap, budget);
    if (list === undefined) return undefined;
    lists.push(list);
  }
  return lists;
}
