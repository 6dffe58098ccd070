import type { FitTask, Row } from "./task.ts";

/**
 * The task in one scale: `value = want − weight × must`, where weight is 1 + the proven range of all want points of
 * this very task, so that no sum of wants can buy a must.
 */
export interface Scaled {
  readonly weight: number;
  /** Scaled value of each option of each block. */
  readonly value: readonly (readonly number[])[];
  readonly under: readonly number[];
  readonly over: readonly number[];
  /** Options of each block, the quickest first. */
  readonly byTime: readonly (readonly number[])[];
}

/** Least and most that each row can reach. */
function rowRange(task: FitTask): { low: number[]; high: number[] } {
  const low = task.rows.map(() => 0);
  const high = task.rows.map(() => 0);
  for (const block of task.blocks) {
    const least = task.rows.map(() => Number.POSITIVE_INFINITY);
    const most = task.rows.map(() => Number.NEGATIVE_INFINITY);
    for (const option of block.options) {
      const amounts = task.rows.map(() => 0);
      for (const [row, amount] of option.rows) amounts[row]! += amount;
      for (const [row, amount] of amounts.entries()) {
        least[row] = Math.min(least[row]!, amount);
        most[row] = Math.max(most[row]!, amount);
      }
    }
    for (const row of task.rows.keys()) {
      low[row]! += least[row]!;
      high[row]! += most[row]!;
    }
  }
  return { low, high };
}

/** Puts both levels on one whole-number scale without letting the lower outbid the higher. */
export function scale(task: FitTask): Scaled {
  const { low, high } = rowRange(task);
  let range = 0;
  for (const block of task.blocks) {
    const wants = block.options.map((option) => option.want);
    range += Math.max(...wants) - Math.min(...wants);
  }
  for (const [index, row] of task.rows.entries()) {
    if (row.level !== "want") continue;
    range +=
      row.underPoints * Math.max(0, row.low - low[index]!) + row.overPoints * Math.max(0, high[index]! - row.high);
  }
  const weight = 1 + range;
  const factor = (row: Row) => (row.level === "must" ? weight : 1);
  return {
    weight,
    value: task.blocks.map((block) => block.options.map((option) => option.want - weight * option.must)),
    under: task.rows.map((row) => row.underPoints * factor(row)),
    over: task.rows.map((row) => row.overPoints * factor(row)),
    byTime: task.blocks.map(({ options }) =>
      [...options.keys()].sort((a, b) => options[a]!.time - options[b]!.time || a - b),
    ),
  };
}

/** For one price per row: the best of every session by itself, as a table over the time that is left. */
export interface Priced {
  readonly price: readonly number[];
  /** Priced value of each option. */
  readonly reduced: readonly Float64Array[];
  /** `rest[b][c]`: the most that blocks b… of its session can add within c time units. */
  readonly rest: readonly Float64Array[];
  /** Best total of each session. */
  readonly best: readonly number[];
  /** No plan is worth more. */
  readonly bound: number;
  /** The choice that attains the bound when repeats and bands are left out, and its row sums. */
  readonly picks: readonly number[];
  readonly sums: readonly number[];
}

/** The most that `price × sum − penalty(sum)` can be, over all sums. */
function conjugate(row: Row, price: number): number {
  return price >= 0 ? price * row.high : price * row.low;
}

/** Options that no quicker one is worth as much as: all that a bound without repeats needs. */
function frontier(byTime: readonly number[], worth: Float64Array): readonly number[] {
  let most = Number.NEGATIVE_INFINITY;
  return byTime.filter((o) => {
    const better = worth[o]! > most;
    if (better) most = worth[o]!;
    return better;
  });
}

/** One DP over time for each session, from its last block to its first; repeats are ignored, so it is a bound. */
export function priced(task: FitTask, scaled: Scaled, price: readonly number[]): Priced {
  const reduced = task.blocks.map((block, index) => {
    const values = new Float64Array(block.options.length);
    for (const [o, option] of block.options.entries()) {
      let value = scaled.value[index]![o]!;
      for (const [row, amount] of option.rows) value -= price[row]! * amount;
      values[o] = value;
    }
    return values;
  });
  const rest: Float64Array[] = new Array(task.blocks.length);
  const best: number[] = [];
  const sums = task.rows.map(() => 0);
  const chosen = task.blocks.map(() => 0);
  for (const [session, capacity] of task.capacity.entries()) {
    const mine = task.blocks.flatMap((block, index) => (block.session === session ? [index] : []));
    let after = new Float64Array(capacity + 1);
    const picks: Int32Array[] = [];
    for (const index of mine.toReversed()) {
      const table = new Float64Array(capacity + 1).fill(Number.NEGATIVE_INFINITY);
      const pick = new Int32Array(capacity + 1).fill(-1);
      for (const o of frontier(scaled.byTime[index]!, reduced[index]!)) {
        const { time } = task.blocks[index]!.options[o]!;
        const value = reduced[index]![o]!;
        for (let c = time; c <= capacity; c++) {
          const total = value + after[c - time]!;
          if (total > table[c]!) {
            table[c] = total;
            pick[c] = o;
          }
        }
      }
      rest[index] = table;
      picks.unshift(pick);
      after = table;
    }
    best.push(mine.length === 0 ? 0 : after[capacity]!);
    let left = capacity;
    for (const [at, index] of mine.entries()) {
      const o = picks[at]![left]!;
      const option = task.blocks[index]!.options[o];
      if (option === undefined) break;
      chosen[index] = o;
      for (const [row, amount] of option.rows) sums[row]! += amount;
      left -= option.time;
    }
  }
  let bound = best.reduce((total, value) => total + value, 0);
  for (const [index, row] of task.rows.entries()) bound += conjugate(row, price[index]!);
  return { price, reduced, rest, best, bound, picks: chosen, sums };
}

/** Steps of the price search; a count of work, never a clock. */
const STEPS = 80;

/**
 * Prices of the weekly rows that make the bound small, by subgradient steps kept inside the box in which the
 * conjugate is finite. `improve` is shown what each step picks and returns the value of the best plan known.
 */
export function tighten(task: FitTask, scaled: Scaled, improve: (found: Priced) => number): Priced {
  let price = task.rows.map(() => 0);
  let best = priced(task, scaled, price);
  let current = best;
  let known = improve(best);
  let pace = 1;
  let idle = 0;
  for (let step = 0; step < STEPS && best.bound - known >= 1; step++) {
    const slope = task.rows.map((row, index) => {
      const sum = current.sums[index]!;
      const p = current.price[index]!;
      const wanted = p > 0 ? row.high : p < 0 ? row.low : Math.min(row.high, Math.max(row.low, sum));
      return wanted - sum;
    });
    const norm = slope.reduce((total, value) => total + value * value, 0);
    if (norm === 0) break;
    const length = (pace * (current.bound - known + 1)) / norm;
    price = task.rows.map((_, index) =>
      Math.min(scaled.over[index]!, Math.max(-scaled.under[index]!, current.price[index]! - length * slope[index]!)),
    );
    current = priced(task, scaled, price);
    known = improve(current);
    if (current.bound < best.bound - 1e-9) {
      best = current;
      idle = 0;
    } else if (++idle >= 6) {
      pace /= 2;
      idle = 0;
      current = best;
    }
  }
  return best;
}

/** What a row adds to the deficit of a plan under its price: 0 at the sums the price argues for, convex around. */
export function rowLoss(row: Row, under: number, over: number, price: number, sum: number): number {
  const penalty = under * Math.max(0, row.low - sum) + over * Math.max(0, sum - row.high);
  return penalty - price * sum + conjugate(row, price);
}
