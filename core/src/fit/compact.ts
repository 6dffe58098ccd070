import { Goal } from "./goal.ts";
import type { Net } from "./net.ts";

/** A smaller task with the same plans, worth the same. */
export interface Compact {
  readonly net: Net;
  readonly goal: Goal;
  /** Number of each item in the larger net. */
  readonly origin: Int32Array;
  /** Rows of the larger goal that are left. */
  readonly rows: readonly number[];
}

/** Least and most that each row can add up to with the items that are left. */
function endsOf(net: Net, count: number): { readonly least: Int32Array; readonly most: Int32Array } {
  const [least, most] = [new Int32Array(count), new Int32Array(count)];
  for (const { steps } of net.sessions) {
    const blocks = new Map<number, Map<number, [Int32Array, Int32Array]>>();
    for (const { block, way, items } of steps) {
      const ways = blocks.get(block) ?? new Map<number, [Int32Array, Int32Array]>();
      blocks.set(block, ways);
      const [low, high] = ways.get(way) ?? [new Int32Array(count), new Int32Array(count)];
      ways.set(way, [low, high]);
      const [down, up] = stepEnds(net, count, items);
      for (let r = 0; r < count; r++) {
        low[r]! += down[r]!;
        high[r]! += up[r]!;
      }
      if (items.length === 0) ways.delete(way);
    }
    for (const ways of blocks.values()) {
      const all = [...ways.values()];
      for (let r = 0; r < count; r++) {
        least[r]! += Math.min(...all.map(([low]) => low[r]!));
        most[r]! += Math.max(...all.map(([, high]) => high[r]!));
      }
    }
  }
  return { least, most };
}

function stepEnds(net: Net, count: number, items: Int32Array): readonly [Int32Array, Int32Array] {
  const [down, up] = [new Int32Array(count), new Int32Array(count)];
  const amounts = new Int32Array(count);
  for (const [index, item] of items.entries()) {
    amounts.fill(0);
    for (let k = net.rows[item]!; k < net.rows[item + 1]!; k++) amounts[net.row[k]!]! += net.amount[k]!;
    for (let r = 0; r < count; r++) {
      if (index === 0 || amounts[r]! < down[r]!) down[r] = amounts[r]!;
      if (index === 0 || amounts[r]! > up[r]!) up[r] = amounts[r]!;
    }
  }
  return [down, up];
}

/** A row that can only stand on one side of its band costs so much for each unit, whatever the rest is. */
export interface Fold {
  readonly slope: Float64Array;
  readonly constant: number;
  readonly rows: readonly number[];
}

/** Which rows still matter, when sums lie between these ends, and what the others add to every unit. */
export function foldOf(goal: Goal, least: ArrayLike<number>, most: ArrayLike<number>): Fold {
  const slope = new Float64Array(goal.rows.length);
  const rows: number[] = [];
  let constant = 0;
  for (const [r, { low, high }] of goal.rows.entries()) {
    const counted = goal.limit !== undefined && (goal.limit.under[r]! > 0 || goal.limit.over[r]! > 0);
    if (!counted && most[r]! <= low) {
      slope[r] = goal.under[r]!;
      constant -= goal.under[r]! * low;
    } else if (!counted && least[r]! >= high) {
      slope[r] = -goal.over[r]!;
      constant += goal.over[r]! * high;
    } else if (counted || least[r]! < low || most[r]! > high) rows.push(r);
  }
  return { slope, constant, rows };
}

/** The goal of the rows that still matter. */
export function foldedGoal(goal: Goal, { rows }: Fold, value: Float64Array): Goal {
  const pick = <T>(all: ArrayLike<T>) => rows.map((r) => all[r]!);
  const { limit, more } = goal;
  const left = limit === undefined ? {} : { limit: { ...limit, under: pick(limit.under), over: pick(limit.over) } };
  return new Goal(pick(goal.rows), value, pick(goal.under), pick(goal.over), { more, ...left });
}

/**
 * The same task with only the items that are left in the nets, and only the rows that can still stand on both sides of an
 * end of their band: what the others cost goes into the worth of the items.
 */
export function compactOf(net: Net, goal: Goal): Compact {
  const { least, most } = endsOf(net, goal.rows.length);
  const fold = foldOf(goal, least, most);
  const place = new Int32Array(goal.rows.length).fill(-1);
  for (const [index, r] of fold.rows.entries()) place[r] = index;
  const origin = Int32Array.from(net.sessions.flatMap(({ steps }) => steps.flatMap(({ items }) => [...items]))).sort();
  const number = new Int32Array(net.items);
  for (const [index, item] of origin.entries()) number[item] = index;
  const value = new Float64Array(origin.length);
  const rows = new Int32Array(origin.length + 1);
  const [row, amount]: [number[], number[]] = [[], []];
  for (const [index, item] of origin.entries()) {
    value[index] = goal.value[item]!;
    for (let k = net.rows[item]!; k < net.rows[item + 1]!; k++) {
      const r = net.row[k]!;
      value[index]! += fold.slope[r]! * net.amount[k]!;
      if (place[r]! < 0) continue;
      row.push(place[r]!);
      amount.push(net.amount[k]!);
    }
    rows[index + 1] = row.length;
  }
  const sessions = net.sessions.map(({ steps, ...session }) => ({
    ...session,
    steps: steps
      .filter(({ items }) => items.length > 0)
      .map((step) => ({ ...step, items: step.items.map((item) => number[item]!) })),
  }));
  const first = sessions.find(({ steps }) => steps.length > 0)?.steps ?? [];
  for (const { block, step, items } of first)
    if (block === first[0]!.block && step === 0) for (const item of items) value[item]! += fold.constant;
  const pick = (all: Int32Array) => Int32Array.from(origin, (item) => all[item]!);
  return {
    net: {
      ...net,
      sessions,
      items: origin.length,
      option: pick(net.option),
      block: pick(net.block),
      way: pick(net.way),
      must: pick(net.must),
      want: pick(net.want),
      rank: pick(net.rank),
      time: pick(net.time),
      rows,
      row: Int32Array.from(row),
      amount: Int32Array.from(amount),
      taken: Array.from(origin, (item) => net.taken[item]!),
      stations: Array.from(origin, (item) => net.stations[item]!),
    },
    goal: foldedGoal(goal, fold, value),
    origin,
    rows: fold.rows,
  };
}
