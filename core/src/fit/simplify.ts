import { type Configuration, keyOf, standsBefore } from "./configuration.ts";
import { foldedGoal, foldOf } from "./compact.ts";
import type { Goal } from "./goal.ts";

declare const process: any;
const DOMINATORS = Number(process.env["D"] ?? 40);

type Lists = readonly (readonly Configuration[])[];

/** Least and most of each row in each list. */
function endsOf(lists: Lists, rows: number) {
  return lists.map((list) => {
    const least = new Int32Array(rows).fill(1 << 29);
    const most = new Int32Array(rows).fill(-(1 << 29));
    for (const { sums } of list) {
      for (let r = 0; r < rows; r++) {
        if (sums[r]! < least[r]!) least[r] = sums[r]!;
        if (sums[r]! > most[r]!) most[r] = sums[r]!;
      }
    }
    return { least, most };
  });
}

export function simplify(goal: Goal, lists: Lists, price: ArrayLike<number>): { goal: Goal; lists: Lists; price: Float64Array } {
  const count = goal.rows.length;
  const [least, most] = [new Int32Array(count), new Int32Array(count)];
  for (const each of endsOf(lists, count)) {
    for (let r = 0; r < count; r++) {
      least[r]! += each.least[r]!;
      most[r]! += each.most[r]!;
    }
  }
  const fold = foldOf(goal, least, most);
  const folded = lists.map((list, s) => {
    const best = new Map<string, Configuration>();
    for (const each of list) {
      let value = each.value + (s === 0 ? fold.constant : 0);
      for (let r = 0; r < count; r++) value += fold.slope[r]! * each.sums[r]!;
      const sums = Int32Array.from(fold.rows, (r) => each.sums[r]!);
      const key = keyOf(goal.limit === undefined ? 0 : each.must, sums);
      const known = best.get(key);
      if (known === undefined || value > known.value || (value === known.value && standsBefore(each.items, known.items)))
        best.set(key, { ...each, value, sums });
    }
    return [...best.values()];
  });
  const next = foldedGoal(goal, fold, goal.value);
  const left = Float64Array.from(fold.rows, (r) => price[r]!);
  return { goal: next, lists: DOMINATORS > 0 && goal.limit === undefined ? undominated(next, folded, left) : folded, price: left };
}

function undominated(goal: Goal, lists: Lists, price: Float64Array): Lists {
  const rows = goal.rows.length;
  const now: (readonly Configuration[])[] = [...lists];
  for (let s = 0; s < lists.length; s++) {
    const ends = endsOf(now, rows);
    const least = new Int32Array(rows);
    const most = new Int32Array(rows);
    for (const [t, each] of ends.entries()) {
      if (t === s) continue;
      for (let r = 0; r < rows; r++) {
        least[r]! += each.least[r]!;
        most[r]! += each.most[r]!;
      }
    }
    const worth = ({ value, sums }: Configuration) => sums.reduce((sum, amount, r) => sum - price[r]! * amount, value);
    const sorted = lists[s]!.map((each) => ({ each, w: worth(each) })).sort((a, b) => b.w - a.w);
    const kept: Configuration[] = [];
    for (const { each } of sorted) {
      let dominated = false;
      for (let k = 0; k < kept.length && k < DOMINATORS && !dominated; k++) {
        const other = kept[k]!;
        let room = other.value - each.value;
        for (let r = 0; r < rows && room > 0; r++) {
          const [a, b] = [other.sums[r]!, each.sums[r]!];
          if (a === b) continue;
          room -= worst(goal, r, a, b, least[r]!, most[r]!);
        }
        dominated = room > 0;
      }
      if (!dominated) kept.push(each);
    }
    now[s] = kept;
  }
  return now;
}

/** The most by which a can cost more than b, over what the others may add. */
function worst(goal: Goal, r: number, a: number, b: number, least: number, most: number): number {
  const { low, high } = goal.rows[r]!;
  let max = Math.max(goal.cost(r, a + least) - goal.cost(r, b + least), goal.cost(r, a + most) - goal.cost(r, b + most));
  for (const f of [low - a, low - b, high - a, high - b]) {
    if (f > least && f < most) max = Math.max(max, goal.cost(r, a + f) - goal.cost(r, b + f));
  }
  return max;
}
