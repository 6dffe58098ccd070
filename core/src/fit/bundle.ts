import type { Goal } from "./goal.ts";

/** A session that was best at some price: what it is worth, what it adds to each row, and the share it has now. */
export interface Column {
  readonly key: number | string;
  readonly value: number;
  readonly sums: ArrayLike<number>;
  readonly items: readonly number[];
  share: number;
}

/** Most rounds of moving shares in one look; a count of work. */
const MOST_ROUNDS = 200;
/** A look ends when the shares are this near to their best, as a part of what the prices still promise. */
const NEAR = 0.5;

/**
 * Where to look next for prices with a small bound (a proximal bundle, one for each session): at the least of what the
 * sessions seen so far say, drawn towards the best prices known. Found from the other side, by moving shares between the
 * sessions seen until no move gains.
 */
export class Bundle {
  readonly columns: readonly Column[][];
  readonly #goal: Goal;
  /** Sums over all rows so far: a count of work. */
  work = 0;

  /** @param columns of each session; their shares need not sum to 1 */
  constructor(goal: Goal, columns: readonly Column[][]) {
    this.#goal = goal;
    this.columns = columns;
    for (const list of columns) {
      const all = list.reduce((sum, { share }) => sum + share, 0);
      for (const column of list) column.share = all > 1e-9 ? column.share / all : 0;
      if (all <= 1e-9 && list[0] !== undefined) list[0].share = 1;
    }
  }

  /** @returns false when the session was seen before */
  add(session: number, key: Column["key"], value: number, sums: ArrayLike<number>, items: readonly number[]): boolean {
    const columns = this.columns[session]!;
    if (columns.some((column) => column.key === key)) return false;
    columns.push({ key, value, sums, items, share: columns.length === 0 ? 1 : 0 });
    return true;
  }

  /**
   * @param centre the best prices known, `bound` what they prove
   * @param pace how far a price may move for each unit that a row is off
   * @returns prices, and the bound that the sessions seen so far let hope for there
   */
  next(
    centre: ArrayLike<number>,
    bound: number,
    pace: number,
  ): { readonly price: Float64Array; readonly hope: number } {
    const goal = this.#goal;
    const count = goal.rows.length;
    const sums = new Float64Array(count);
    for (const columns of this.columns)
      for (const { share, sums: mine } of columns)
        if (share > 0) for (let r = 0; r < count; r++) sums[r]! += share * mine[r]!;
    const price = new Float64Array(count);
    const answer = (r: number, sum: number) => {
      const { low, high } = goal.rows[r]!;
      const up = centre[r]! + pace * (sum - high);
      const down = centre[r]! + pace * (sum - low);
      const free = up > 0 ? up : Math.min(down, 0);
      return Math.min(goal.over[r]!, Math.max(-goal.under[r]!, free));
    };
    const step = new Float64Array(count);
    let hope = 0;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      this.work += this.columns.reduce((all, { length }) => all + length, 0);
      for (let r = 0; r < count; r++) price[r] = answer(r, sums[r]!);
      hope = 0;
      let missing = 0;
      for (let r = 0; r < count; r++) hope += goal.conjugate(r, price[r]!);
      for (const columns of this.columns) {
        let [best, worst] = [columns[0]!, columns[0]!];
        let [high, low, mean] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, 0];
        for (const column of columns) {
          let worth = column.value;
          for (let r = 0; r < count; r++) worth -= price[r]! * column.sums[r]!;
          if (worth > high) [best, high] = [column, worth];
          if (column.share > 0) {
            mean += column.share * worth;
            if (worth < low) [worst, low] = [column, worth];
          }
        }
        hope += high;
        missing += high - mean;
        if (best === worst || !(high > low)) continue;
        for (let r = 0; r < count; r++) step[r] = best.sums[r]! - worst.sums[r]!;
        const moved = this.#move(best.value - worst.value, step, sums, worst.share, answer);
        best.share += moved;
        worst.share = worst.share - moved < 1e-9 ? 0 : worst.share - moved;
        for (let r = 0; r < count; r++) {
          if (step[r] === 0) continue;
          sums[r]! += moved * step[r]!;
          price[r] = answer(r, sums[r]!);
        }
      }
      if (missing <= NEAR * Math.max(0, bound - hope) + 1e-6) break;
    }
    for (let r = 0; r < count; r++) price[r] = answer(r, sums[r]!);
    hope = 0;
    for (let r = 0; r < count; r++) hope += goal.conjugate(r, price[r]!);
    for (const columns of this.columns) {
      let high = Number.NEGATIVE_INFINITY;
      for (const column of columns) {
        let worth = column.value;
        for (let r = 0; r < count; r++) worth -= price[r]! * column.sums[r]!;
        high = Math.max(high, worth);
      }
      hope += high;
    }
    return { price, hope };
  }

  /** How much share to move: until the gain, which falls as the prices answer, is gone. */
  #move(
    value: number,
    step: Float64Array,
    sums: Float64Array,
    most: number,
    answer: (r: number, sum: number) => number,
  ): number {
    const gain = (moved: number) => {
      let total = value;
      for (let r = 0; r < step.length; r++)
        if (step[r] !== 0) total -= answer(r, sums[r]! + moved * step[r]!) * step[r]!;
      return total;
    };
    let [from, atFrom] = [0, gain(0)];
    let [to, atTo] = [most, gain(most)];
    if (atTo >= 0) return most;
    for (let round = 0; round < 6; round++) {
      const middle = from + ((to - from) * atFrom) / (atFrom - atTo);
      const atMiddle = gain(middle);
      if (Math.abs(atMiddle) < 1e-3 * (atFrom - atTo) || to - from < 1e-6) return middle;
      if (atMiddle >= 0) [from, atFrom] = [middle, atMiddle];
      else [to, atTo] = [middle, atMiddle];
    }
    return from;
  }
}
