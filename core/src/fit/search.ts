import { type Priced, rowLoss, type Scaled, scale, tighten } from "./bound.ts";
import { type Budget, type Configuration, configurations } from "./configurations.ts";
import { climb, dealOut, usesOf, worthOf } from "./improve.ts";
import { rowPoints } from "./score.ts";
import type { FitTask, Solution } from "./task.ts";

/** Nodes after which a search stops and says "not proven". A count of work, so every machine stops at the same place. */
const NODES = 3_000_000;
/** Prices are fractions; a deficit within this of the gap counts as inside. */
const SLACK = 1e-6;

/** @returns true when `a` comes before `b` in the stated order: block by block the earlier option */
function comesFirst(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at >= 0 && a[at]! < b[at]!;
}

/**
 * Joins one configuration of each session. `deficits + losses of the rows` is exactly how far a plan lies under the
 * bound, so whatever exceeds the gap cannot be better than the plan that set the gap.
 *
 * @returns false when the budget ran out
 */
function join(
  task: FitTask,
  scaled: Scaled,
  dual: Priced,
  lists: readonly (readonly Configuration[])[],
  gap: () => number,
  budget: Budget,
  visit: (picks: readonly number[]) => void,
): boolean {
  const rows = task.rows;
  const least = [...lists, undefined].map(() => new Int32Array(rows.length));
  const most = [...lists, undefined].map(() => new Int32Array(rows.length));
  const cheapest = new Float64Array(lists.length + 1);
  for (let session = lists.length - 1; session >= 0; session--) {
    cheapest[session] = cheapest[session + 1]! + (lists[session]![0]?.deficit ?? 0);
    for (const row of rows.keys()) {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      for (const { sums } of lists[session]!) {
        low = Math.min(low, sums[row]!);
        high = Math.max(high, sums[row]!);
      }
      least[session]![row] = least[session + 1]![row]! + low;
      most[session]![row] = most[session + 1]![row]! + high;
    }
  }
  const chosen: Configuration[] = [];

  function rowsLose(sums: Int32Array, from: number): number {
    let loss = 0;
    for (const [r, row] of rows.entries()) {
      const price = dual.price[r]!;
      const a = sums[r]! + least[from]![r]!;
      const b = sums[r]! + most[from]![r]!;
      const argued = price > 0 ? row.high : price < 0 ? row.low : b < row.low ? row.low : row.high;
      loss += rowLoss(row, scaled.under[r]!, scaled.over[r]!, price, Math.min(b, Math.max(a, argued)));
    }
    return loss;
  }

  function go(session: number, deficit: number, sums: Int32Array): boolean {
    if (session === lists.length) {
      visit(chosen.flatMap((configuration) => configuration.picks));
      return true;
    }
    for (const configuration of lists[session]!) {
      const total = deficit + configuration.deficit;
      if (total + cheapest[session + 1]! > gap()) break;
      if (--budget.nodes < 0) return false;
      const next = sums.map((value, row) => value + configuration.sums[row]!);
      if (total + cheapest[session + 1]! + rowsLose(next, session + 1) > gap()) continue;
      chosen.push(configuration);
      const finished = go(session + 1, total, next);
      chosen.pop();
      if (!finished) return false;
    }
    return true;
  }

  return lists.every((list) => list.length > 0) ? go(0, 0, new Int32Array(rows.length)) : true;
}

/** The two levels of a choice, summed from its options and rows. */
function levels(task: FitTask, choice: readonly number[]): { must: number; want: number } {
  const sums = task.rows.map(() => 0);
  let must = 0;
  let want = 0;
  for (const [index, o] of choice.entries()) {
    const option = task.blocks[index]!.options[o]!;
    must += option.must;
    want += option.want;
    for (const [row, amount] of option.rows) sums[row]! += amount;
  }
  for (const [index, row] of task.rows.entries()) {
    const points = rowPoints(row, sums[index]!);
    if (row.level === "must") must += points;
    else want -= points;
  }
  return { must, want };
}

/**
 * The best choice of a fit task, exactly: fewest must points, then most want points, then the first in the stated
 * order of options, block by block.
 *
 * Prices on the weekly rows split the task into sessions and give a bound; a DP over time bounds each session; the
 * gap between the bound and the best plan known says which session configurations can matter; all of those are
 * listed and joined. It stops on a count of nodes; then the answer is the best found, `proven` is false and `bound`
 * says how many want points more there could be.
 *
 * @param task blocks ordered by session
 * @returns undefined when no choice keeps every session within its time and without repeats
 */
export function solve(task: FitTask): Solution | undefined {
  const scaled = scale(task);
  const uses = usesOf(task);
  let best: readonly number[] | undefined;
  let bestValue = Number.NEGATIVE_INFINITY;
  const take = (choice: readonly number[]) => {
    const value = worthOf(task, scaled, choice);
    if (!(value > bestValue || (value === bestValue && comesFirst(choice, best!)))) return;
    bestValue = value;
    best = [...choice];
  };
  const worst =
    task.blocks.reduce((sum, _, index) => sum + Math.min(...scaled.value[index]!), 0) -
    scaled.weight * task.rows.reduce((sum, row) => sum + rowPoints(row, 0), 0);
  const tried = new Set<string>();
  const dual = tighten(task, scaled, (found) => {
    const plan = dealOut(task, uses, found);
    const name = plan?.join(" ") ?? "";
    if (plan !== undefined && !tried.has(name)) take(climb(task, scaled, uses, plan));
    tried.add(name);
    return Math.max(bestValue, worst);
  });
  const budget: Budget = { nodes: NODES };
  const gap = () => dual.bound - bestValue + SLACK;
  const lists: (readonly Configuration[])[] = [];
  let slack = 0;
  let finished = true;
  for (const session of task.capacity.keys()) {
    const list = configurations(task, dual, uses, session, gap() - slack, budget);
    finished = list !== undefined;
    if (list === undefined) break;
    slack += list[0]?.deficit ?? 0;
    lists.push(list);
  }
  const proven = finished && join(task, scaled, dual, lists, gap, budget, take);
  if (best === undefined) return undefined;
  const reached = levels(task, best);
  const ceiling = proven ? bestValue : Math.floor(dual.bound + SLACK);
  return {
    choice: best,
    ...reached,
    bound: ceiling + scaled.weight * reached.must,
    proven,
    nodes: NODES - Math.max(0, budget.nodes),
  };
}
