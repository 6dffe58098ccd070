import { compactOf } from "./compact.ts";
import { dropHopeless } from "./drop.ts";
import { firstPlan } from "./first-plan.ts";
import type { Goal } from "./goal.ts";
import { improve } from "./improve.ts";
import { copyOf, type Net } from "./net.ts";
import { type Budget, type Found, isBetter, type Plan, planOf, SLACK } from "./plan.ts";
import { noStart, tighten } from "./prices.ts";
import { searchTree } from "./tree.ts";
import { walksOf } from "./walk.ts";

/** Prices of the whole task are sought until a look hopes for less than this part of what was gained so far. */
const ENOUGH = 0.001;

/**
 * The plan that is worth most, of equals the first in the stated order.
 *
 * 1. Prices on the rows part the task into sessions, each of which a walk solves exactly; they are moved to where the sum
 *    of the best sessions, which no plan exceeds, is small. 2. The sessions seen on the way are joined and improved to a
 *    first plan. 3. Whatever cannot stand in a plan as good drops out, and the plan is improved in what is left, as long
 *    as that gains. 4. The little that is left is searched through.
 *
 * @param known a real plan to begin with, if there is one
 * @returns undefined when there is no plan
 */
export function bestPlan(whole: Net, goal: Goal, budget: Budget, known?: Plan): Found | undefined {
  const net = copyOf(whole);
  const walks = walksOf(net);
  const tight = tighten(net, goal, walks, noStart(net, goal), Number.NEGATIVE_INFINITY, ENOUGH);
  if (tight === undefined) return undefined;
  let { dual } = tight;
  let best = known ?? firstPlan(net, goal, dual, walks, tight.columns);
  if (best === undefined) return undefined;
  for (let again = true; again; ) {
    const floor = best.value + goal.more - SLACK;
    if (dual.bound < floor) return { best, bound: best.value };
    dual = dropHopeless(net, dual, walks, floor);
    const plan = planOf(net, goal, improve(net, goal, best.sessions));
    again = isBetter(plan, best);
    if (again) best = plan;
  }
  return searchTree(compactOf(net, goal), best, { price: dual.price, columns: tight.columns }, budget);
}
