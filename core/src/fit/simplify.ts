import { foldedGoal, foldOf } from "./compact.ts";
import { type Configuration, keyOf, standsBefore } from "./configuration.ts";
import type { Goal } from "./goal.ts";

type Lists = readonly (readonly Configuration[])[];

/** Least and most that one of each list can add to each row. */
function endsOf(lists: Lists, count: number): { readonly least: Int32Array; readonly most: Int32Array } {
  const [least, most] = [new Int32Array(count), new Int32Array(count)];
  for (const list of lists) {
    for (let r = 0; r < count; r++) {
      let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
      for (const { sums } of list) {
        low = Math.min(low, sums[r]!);
        high = Math.max(high, sums[r]!);
      }
      least[r]! += low;
      most[r]! += high;
    }
  }
  return { least, most };
}

/**
 * The same lists with only the rows that can still stand on both sides of an end of their band; what the others cost goes
 * into the worth of the configurations, and of those between which the rest cannot tell only the best stays.
 */
export function simplify(
  goal: Goal,
  lists: Lists,
  price: ArrayLike<number>,
): { readonly goal: Goal; readonly lists: Lists; readonly price: Float64Array } {
  const { least, most } = endsOf(lists, goal.rows.length);
  const fold = foldOf(goal, least, most);
  const simple = lists.map((list, s) => {
    const best = new Map<string, Configuration>();
    for (const each of list) {
      let value = each.value + (s === 0 ? fold.constant : 0);
      for (let r = 0; r < goal.rows.length; r++) value += fold.slope[r]! * each.sums[r]!;
      const sums = Int32Array.from(fold.rows, (r) => each.sums[r]!);
      const key = keyOf(goal.limit === undefined ? 0 : each.must, sums);
      const known = best.get(key);
      const better = known === undefined || value > known.value;
      if (better || (value === known.value && standsBefore(each.items, known.items)))
        best.set(key, { ...each, value, sums });
    }
    return [...best.values()];
  });
  return {
    goal: foldedGoal(goal, fold, goal.value),
    lists: simple,
    price: Float64Array.from(fold.rows, (r) => price[r]!),
  };
}
