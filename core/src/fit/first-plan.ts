import { type Configuration, configurationOf, isReal } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import { join } from "./join.ts";
import { listSession } from "./list.ts";
import type { Net } from "./net.ts";
import { type Plan, planOf } from "./plan.ts";
import type { Priced, Start } from "./prices.ts";
import type { Walk } from "./walk.ts";

/** So many combinations of the sessions seen are tried at most. */
const MOST_COMBINATIONS = 400;
/** Steps of the search for one real session, where none was seen. */
const MOST_STEPS = 300_000;

/** The best plan of sessions that were seen, or of the first real session of each that is found. */
export function firstPlan(
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
    const list = listSession(net, goal, dual, walk, session, gap, { left: MOST_STEPS }, 1);
    if (list !== undefined && list.length > 0) return list;
  }
  return [];
}

/** The sessions that hold the bound up most, if they make a real plan. */
export function topPlan(net: Net, goal: Goal, columns: Start["columns"]): Plan | undefined {
  const sessions = columns.map((seen) => seen.reduce((top, each) => (each.share > top.share ? each : top)).items);
  if (!sessions.every((items) => isReal(net, items))) return undefined;
  const { must, sums } = configurationOf(net, goal, sessions.flat());
  return goal.allows(must, sums) ? planOf(net, goal, sessions) : undefined;
}
