import { type Configuration, keyOf, type Sessions, standsBefore } from "./configuration.ts";
import type { Goal } from "./goal.ts";
import { type Budget, type Plan, SLACK } from "./plan.ts";

/** Prices, the best worth of each list at them, and what they prove. */
export interface Prices {
  readonly price: ArrayLike<number>;
  readonly best: readonly number[];
  readonly bound: number;
}

/** A choice for the first so many sessions. */
interface Part {
  readonly value: number;
  readonly must: number;
  readonly sums: Int32Array;
  /** Worth at the prices that is missing to the best of these sessions. */
  readonly deficit: number;
  readonly last: Configuration | undefined;
  readonly before: Part | undefined;
}

function sessionsOf(part: Part): Sessions {
  const sessions: (readonly number[])[] = [];
  for (let at: Part | undefined = part; at?.last !== undefined; at = at.before) sessions.unshift(at.last.items);
  return sessions;
}

function partStandsBefore(a: Part, b: Part): boolean {
  return standsBefore(sessionsOf(a).flat(), sessionsOf(b).flat());
}

/**
 * The best plan that takes one configuration of each list, if it is worth at least `floor`; of equals the first in the
 * stated order.
 *
 * Goes session by session. Parts that add the same to every row are one: the better, of equals the first. A part is
 * dropped when what it lacks, with the least that the later sessions and the rows can still lose, is more than the gap
 * between the bound and the floor: `bound − value = deficits + losses of the rows`, none of them negative.
 *
 * @returns "no budget" when the work ran out, undefined when there is no such plan
 */
export function join(
  goal: Goal,
  prices: Prices,
  lists: readonly (readonly Configuration[])[],
  floor: number,
  budget: Budget,
): Plan | "no budget" | undefined {
  const gap = prices.bound - floor + SLACK;
  const count = goal.rows.length;
  const sorted = lists.map((list, s) =>
    list
      .map((configuration) => {
        let worth = configuration.value;
        for (let r = 0; r < count; r++) worth -= prices.price[r]! * configuration.sums[r]!;
        return { configuration, deficit: prices.best[s]! - worth };
      })
      .sort((a, b) => a.deficit - b.deficit),
  );
  if (sorted.some((list) => list.length === 0)) return undefined;
  const { least, most } = reaches(lists, count);
  const cheapest = new Float64Array(lists.length + 1);
  for (let s = lists.length - 1; s >= 0; s--) cheapest[s] = cheapest[s + 1]! + sorted[s]![0]!.deficit;
  const rowsLose = (sums: Int32Array, from: number, room: number) => {
    let loss = 0;
    for (let r = 0; r < count && loss <= room; r++) {
      const { low, high } = goal.rows[r]!;
      const price = prices.price[r]!;
      const from0 = sums[r]! + least[from]![r]!;
      const to0 = sums[r]! + most[from]![r]!;
      // The loss is convex and least where the price argues for, so that its least value stands at the nearest sum.
      const argued = price > 0 ? high : price < 0 ? low : to0 < low ? low : high;
      const at = Math.min(to0, Math.max(from0, argued));
      loss += goal.cost(r, at) - price * at + goal.conjugate(r, price);
    }
    return loss;
  };

  let parts: Part[] = [
    { value: 0, must: 0, sums: new Int32Array(count), deficit: 0, last: undefined, before: undefined },
  ];
  for (const [s, list] of sorted.entries()) {
    const next = new Map<string, Part>();
    parts.sort((a, b) => a.deficit - b.deficit);
    for (const part of parts) {
      if (part.deficit + cheapest[s]! > gap) break;
      for (const { configuration, deficit } of list) {
        const lacks = part.deficit + deficit + cheapest[s + 1]!;
        if (lacks > gap) break;
        if (--budget.left < 0) return "no budget";
        const sums = part.sums.map((sum, r) => sum + configuration.sums[r]!);
        if (lacks + rowsLose(sums, s + 1, gap - lacks) > gap) continue;
        const made: Part = {
          value: part.value + configuration.value,
          must: part.must + configuration.must,
          sums,
          deficit: part.deficit + deficit,
          last: configuration,
          before: part.last === undefined ? undefined : part,
        };
        const key = keyOf(made.must, sums);
        const known = next.get(key);
        const better = known === undefined || made.value > known.value;
        if (better || (made.value === known.value && partStandsBefore(made, known))) next.set(key, made);
      }
    }
    parts = [...next.values()];
  }
  return bestOf(goal, parts, floor);
}

function bestOf(goal: Goal, parts: readonly Part[], floor: number): Plan | undefined {
  let best: Part | undefined;
  let value = floor;
  for (const part of parts) {
    const worth = part.value - goal.costs(part.sums);
    if (worth < value || !goal.allows(part.must, part.sums)) continue;
    if (worth === value && best !== undefined && !partStandsBefore(part, best)) continue;
    best = part;
    value = worth;
  }
  return best === undefined ? undefined : { sessions: sessionsOf(best), value };
}

/** Least and most that the lists from each one on can add to each row. */
function reaches(
  lists: readonly (readonly Configuration[])[],
  count: number,
): { readonly least: readonly Int32Array[]; readonly most: readonly Int32Array[] } {
  const least = Array.from({ length: lists.length + 1 }, () => new Int32Array(count));
  const most = Array.from({ length: lists.length + 1 }, () => new Int32Array(count));
  for (let s = lists.length - 1; s >= 0; s--) {
    for (let r = 0; r < count; r++) {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      for (const { sums } of lists[s]!) {
        low = Math.min(low, sums[r]!);
        high = Math.max(high, sums[r]!);
      }
      least[s]![r] = least[s + 1]![r]! + low;
      most[s]![r] = most[s + 1]![r]! + high;
    }
  }
  return { least, most };
}
