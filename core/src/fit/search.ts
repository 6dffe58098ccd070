import { bestPlan } from "./best-plan.ts";
import { Goal } from "./goal.ts";
import { type Net, netOf } from "./net.ts";
import { type Budget, type Found, type Plan, planOf, SLACK } from "./plan.ts";
import { noStart, tighten } from "./prices.ts";
import { rowPoints } from "./score.ts";
import type { FitTask, Option, Pick, Solution } from "./task.ts";
import { walksOf } from "./walk.ts";

/** Steps of work after which a search stops and says "not proven": every machine stops at the same place. */
const MOST_WORK = 30_000_000;

/** Least and most that something can be. */
interface Ends {
  least: number;
  most: number;
}

/**
 * Least and most of several sums over the ways of every block.
 *
 * @param of what an option adds to each of them, as pairs of index and amount
 */
function endsOf(
  task: FitTask,
  count: number,
  of: (option: Option) => readonly (readonly [number, number])[],
): readonly Ends[] {
  const zeros = () => Array.from({ length: count }, (): Ends => ({ least: 0, most: 0 }));
  const all = zeros();
  const amounts = new Float64Array(count);
  for (const { ways } of task.blocks) {
    let widest: Ends[] | undefined;
    for (const { steps } of ways) {
      const way = zeros();
      for (const options of steps) {
        let step: Ends[] | undefined;
        for (const option of options) {
          amounts.fill(0);
          for (const [index, amount] of of(option)) amounts[index]! += amount;
          step ??= Array.from(amounts, (amount): Ends => ({ least: amount, most: amount }));
          for (let i = 0; i < count; i++) widen(step[i]!, amounts[i]!, amounts[i]!);
        }
        for (const [i, { least, most }] of (step ?? []).entries()) {
          way[i]!.least += least;
          way[i]!.most += most;
        }
      }
      if (widest === undefined) widest = way;
      else for (const [i, { least, most }] of way.entries()) widen(widest[i]!, least, most);
    }
    for (const [i, { least, most }] of (widest ?? []).entries()) {
      all[i]!.least += least;
      all[i]!.most += most;
    }
  }
  return all;
}

function widen(ends: Ends, least: number, most: number): void {
  if (least < ends.least) ends.least = least;
  if (most > ends.most) ends.most = most;
}

/**
 * The levels of one task in whole numbers: one want point is worth more than all ranks together, and one must point more
 * than all wants and ranks together. Both are proven for this very task.
 */
interface Levels {
  readonly wantPoint: number;
  readonly mustPoint: number;
  readonly mostRank: number;
  /** No plan without must points is worth less. */
  readonly lowest: number;
}

function levelsOf(task: FitTask): Levels {
  const [wants, ranks] = endsOf(task, 2, ({ want, rank }) => [
    [0, want],
    [1, rank],
  ]) as [Ends, Ends];
  const wantPoint = 1 + ranks.most - ranks.least;
  const sums = endsOf(task, task.rows.length, ({ rows }) => rows);
  const mostCost = task.rows.reduce((cost, row, r) => {
    const { least, most } = sums[r]!;
    return row.level === "must" ? cost : cost + Math.max(rowPoints(row, least), rowPoints(row, most));
  }, 0);
  const mustPoint = wantPoint * (1 + wants.most - wants.least + mostCost);
  return { wantPoint, mustPoint, mostRank: ranks.most, lowest: wantPoint * (wants.least - mostCost) - ranks.most };
}

function pointsOf(task: FitTask, level: "must" | "want", factor: number) {
  const mine = (points: number, row: FitTask["rows"][number]) => (row.level === level ? factor * points : 0);
  return {
    under: task.rows.map((row) => mine(row.underPoints, row)),
    over: task.rows.map((row) => mine(row.overPoints, row)),
  };
}

/** Fewest must points and nothing else. */
function mustGoal(net: Net): Goal {
  const { under, over } = pointsOf(net.task, "must", 1);
  return new Goal(
    net.task.rows,
    Float64Array.from(net.must, (must) => -must),
    under,
    over,
    { more: 1 },
  );
}

/**
 * Most want points, of equals the least sum of ranks, with a price on each must point.
 *
 * @param most where it is said, no plan with more must points is taken, and the price only serves the bound
 */
function wantGoal(net: Net, { wantPoint }: Levels, price: number, most?: number): Goal {
  const { task } = net;
  const value = Float64Array.from(
    { length: net.items },
    (_, item) => wantPoint * net.want[item]! - net.rank[item]! - price * net.must[item]!,
  );
  const wants = pointsOf(task, "want", wantPoint);
  const musts = pointsOf(task, "must", price);
  const under = wants.under.map((points, r) => points + musts.under[r]!);
  const over = wants.over.map((points, r) => points + musts.over[r]!);
  const limit = pointsOf(task, "must", 1);
  return new Goal(task.rows, value, under, over, most === undefined ? {} : { limit: { ...limit, most } });
}

/** The two levels of a plan. */
function scoreOf(net: Net, plan: Plan): { readonly must: number; readonly want: number } {
  const { task } = net;
  const sums = task.rows.map(() => 0);
  let [must, want] = [0, 0];
  for (const item of plan.sessions.flat()) {
    must += net.must[item]!;
    want += net.want[item]!;
    for (let k = net.rows[item]!; k < net.rows[item + 1]!; k++) sums[net.row[k]!]! += net.amount[k]!;
  }
  for (const [r, row] of task.rows.entries()) {
    if (row.level === "must") must += rowPoints(row, sums[r]!);
    else want -= rowPoints(row, sums[r]!);
  }
  return { must, want };
}

function choiceOf(net: Net, plan: Plan): readonly Pick[] {
  const items = plan.sessions.flat();
  return net.task.blocks.map((_, b) => {
    const mine = items.filter((item) => net.block[item] === b);
    return { way: net.way[mine[0]!]!, options: mine.map((item) => net.option[item]!) };
  });
}

/** @returns the fewest must points that a plan can have; infinitely many where there is no plan */
export function leastMust(task: FitTask): number {
  const net = netOf(task);
  const found = bestPlan(net, mustGoal(net), { left: MOST_WORK });
  return found === undefined ? Number.POSITIVE_INFINITY : 0 - found.best.value;
}

/** Must prices that are tried, each an eighth of the one before. */
const PRICES = 6;
/** Each is followed until no more than this part of what was gained is to be hoped for. */
const NEAR_ENOUGH = 0.01;

interface Limited {
  readonly goal: Goal;
  readonly price: number;
  readonly bound: number;
}

/** The want goal for a limit of must points, at the price that gives the smallest bound of those tried. */
function limitedGoal(net: Net, levels: Levels, most: number): Limited {
  let best: Limited | undefined;
  for (let k = 0; k < PRICES; k++) {
    const price = Math.ceil(levels.mustPoint / 8 ** k);
    const goal = wantGoal(net, levels, price, most);
    const tight = tighten(net, goal, walksOf(net), noStart(net, goal), Number.NEGATIVE_INFINITY, NEAR_ENOUGH);
    const bound = (tight?.dual.bound ?? 0) + price * most;
    if (best !== undefined && bound > best.bound) return best;
    best = { goal, price, bound };
  }
  return best!;
}

/**
 * The best choice of a fit task, exactly: fewest must points, then most want points, then the stated order (least sum of
 * ranks, then block by block the earlier way and option).
 *
 * Where only open slots count as must, every session needs its own fewest whatever the others do, so that one search with
 * a price on must points that no want can pay is exact. Where weekly bands are musts, the fewest must points are found
 * first, and then the most wants among plans with no more. It stops on a count of work; then the answer is the best
 * found, and `least` and `bound` say what there could still be.
 *
 * @returns undefined when no choice keeps every session within its time and its stations, and without repeats
 */
export function solve(task: FitTask): Solution | undefined {
  const net = netOf(task);
  const levels = levelsOf(task);
  const budget: Budget = { left: MOST_WORK };
  const answer = (found: Found, least: number, bound: number): Solution => {
    const { must, want } = scoreOf(net, found.best);
    const proven = found.bound <= found.best.value && least >= must;
    const work = MOST_WORK - Math.max(0, budget.left);
    return { choice: choiceOf(net, found.best), must, want, least, bound: proven ? want : bound, proven, work };
  };
  const wantsAt = (bound: number, paid: number) =>
    Math.floor((bound + paid + levels.mostRank + SLACK) / levels.wantPoint);
  if (!task.rows.some((row) => row.level === "must")) {
    const found = bestPlan(net, wantGoal(net, levels, levels.mustPoint), budget);
    if (found === undefined) return undefined;
    const least = Math.max(0, Math.ceil((levels.lowest - found.bound - SLACK) / levels.mustPoint));
    return answer(found, least, wantsAt(found.bound, levels.mustPoint * scoreOf(net, found.best).must));
  }
  const first = bestPlan(net, mustGoal(net), budget);
  if (first === undefined) return undefined;
  const most = -first.best.value;
  const { goal, price } = limitedGoal(net, levels, most);
  const found = bestPlan(net, goal, budget, planOf(net, goal, first.best.sessions))!;
  return answer(found, Math.max(0, Math.ceil(-first.bound - SLACK)), wantsAt(found.bound, price * most));
}
