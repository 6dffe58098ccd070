import { branch, isBetter } from "./branch.ts";
import { type Configuration, configurationOf, isReal, type Sessions } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import { improve } from "./improve.ts";
import { type Budget, join, type Plan, SLACK } from "./join.ts";
import { listSession } from "./list.ts";
import { copyOf, type Net } from "./net.ts";
import { type Priced, tighten } from "./prices.ts";
import { Walk } from "./walk.ts";

/** Sessions seen while prices were sought, of which a first plan is made: so many combinations at most. */
const MOST_COMBINATIONS = 4_000;
/** A first listing within this part of the gap makes a better start where the whole listing would be long. */
const PART_OF_GAP = 0.4;
const LONG_LIST = 3_000;

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
  const tight = tighten(net, goal, walks, 0);
  if (tight === undefined) return undefined;
  let { dual } = tight;
  const first = firstPlan(net, goal, dual, walks, tight.seen, known);
  if (first === undefined) return undefined;
  let best = first;
  const gap = () => dual.bound - best.value - goal.more + SLACK;
  const drop = () => {
    if (gap() >= 0) dual = dropHopeless(net, dual, walks, best.value + goal.more);
  };
  const take = (plan: Plan) => {
    if (!isBetter(plan, best)) return false;
    best = plan;
    drop();
    return true;
  };
  const listAll = (within: number, work: Budget) => {
    const lists: (readonly Configuration[])[] = [];
    for (const [s, walk] of walks.entries()) {
      const list = listSession(net, goal, dual, walk, s, within, work);
      if (list === undefined) return undefined;
      lists.push(list);
    }
    return lists;
  };
  const choose = (lists: readonly (readonly Configuration[])[]) => branch(goal, lists, dual.price, best, budget);

  drop();
  while (gap() >= 0 && take(planOf(net, goal, improve(net, goal, best.sessions))));
  if (gap() < 0) return { best, bound: best.value };
  const short = listAll(gap(), { left: LONG_LIST });
  if (short !== undefined) return choose(short);
  const part = listAll(PART_OF_GAP * gap(), budget);
  if (part !== undefined) take(choose(part).best);
  if (gap() < 0) return { best, bound: best.value };
  const all = listAll(gap(), budget);
  return all === undefined ? { best, bound: dual.bound } : choose(all);
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
  seen: readonly (readonly Configuration[])[],
  known: Plan | undefined,
): Plan | undefined {
  const each = Math.max(1, Math.floor(MOST_COMBINATIONS ** (1 / Math.max(1, seen.length))));
  const lists = seen.map((list, s) => {
    const real = list.filter(({ items }) => isReal(net, items));
    const worth = ({ value, sums }: Configuration) =>
      sums.reduce((sum, amount, r) => sum - dual.price[r]! * amount, value);
    const some = real.length > 0 ? real : firstReal(net, goal, dual, walks[s]!, s);
    return [...some].sort((a, b) => worth(b) - worth(a)).slice(0, each);
  });
  const floor = known?.value ?? Number.NEGATIVE_INFINITY;
  const made = join(goal, dual, lists, floor, { left: 4 * MOST_COMBINATIONS });
  return made === "no budget" || made === undefined ? known : made;
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
