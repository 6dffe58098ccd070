import type { Priced } from "./bound.ts";
import type { Uses } from "./improve.ts";
import type { FitTask } from "./task.ts";

/** One way to fill a whole session, within its time and without repeats. */
export interface Configuration {
  readonly picks: readonly number[];
  /** How much less it is worth, at the prices, than the session's bound; never negative but for rounding. */
  readonly deficit: number;
  /** What it adds to each row. */
  readonly sums: Int32Array;
}

export interface Budget {
  nodes: number;
}

/**
 * Every configuration of a session whose deficit is within the gap; of those that add the same to every row only
 * the best, and of equals the first in the stated order. The rows see nothing else, so nothing that could be part of
 * the best plan is lost.
 *
 * @returns undefined when the budget of nodes ran out
 */
export function configurations(
  task: FitTask,
  dual: Priced,
  uses: Uses,
  session: number,
  gap: number,
  budget: Budget,
): readonly Configuration[] | undefined {
  const blocks = task.blocks.flatMap((block, index) => (block.session === session ? [index] : []));
  const kept = new Map<string, Configuration>();
  const sums = new Int32Array(task.rows.length);
  const picks: number[] = [];
  const seen = new Set<number>();
  const top = dual.best[session]!;

  function keep(deficit: number): void {
    const key = sums.join(",");
    const known = kept.get(key);
    if (known === undefined || deficit < known.deficit - 1e-9) {
      kept.set(key, { picks: [...picks], deficit, sums: sums.slice() });
    }
  }

  function go(at: number, done: number, left: number): boolean {
    if (at === blocks.length) {
      keep(top - done);
      return true;
    }
    const index = blocks[at]!;
    for (const [o, option] of task.blocks[index]!.options.entries()) {
      if (option.time > left) continue;
      const value = done + dual.reduced[index]![o]!;
      const after = left - option.time;
      const ahead = at + 1 === blocks.length ? 0 : dual.rest[blocks[at + 1]!]![after]!;
      if (top - value - ahead > gap) continue;
      const mine = uses[index]![o]!;
      if (mine.some((exercise) => seen.has(exercise))) continue;
      if (--budget.nodes < 0) return false;
      for (const [row, amount] of option.rows) sums[row]! += amount;
      for (const exercise of mine) seen.add(exercise);
      picks.push(o);
      const finished = go(at + 1, value, after);
      picks.pop();
      for (const exercise of mine) seen.delete(exercise);
      for (const [row, amount] of option.rows) sums[row]! -= amount;
      if (!finished) return false;
    }
    return true;
  }

  if (!go(0, 0, task.capacity[session]!)) return undefined;
  return [...kept.values()].sort((a, b) => a.deficit - b.deficit);
}
