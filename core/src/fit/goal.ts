import type { Row } from "./task.ts";

/** Must points that may not be exceeded: what the rows count, and how many there may be in all. */
export interface MustLimit {
  readonly under: readonly number[];
  readonly over: readonly number[];
  readonly most: number;
}

/**
 * What one search makes as large as it can: the worth of the items of a plan, less what the rows cost outside their
 * bands. All numbers are whole.
 */
export class Goal {
  readonly rows: readonly Row[];
  /** Worth of each item of the net. */
  readonly value: Float64Array;
  /** Cost of each unit under and over the band of each row. */
  readonly under: readonly number[];
  readonly over: readonly number[];
  readonly limit: MustLimit | undefined;
  /** How much more a plan must be worth to be of interest: 0 where the stated order of equal plans matters. */
  readonly more: 0 | 1;

  constructor(
    rows: readonly Row[],
    value: Float64Array,
    under: readonly number[],
    over: readonly number[],
    { limit, more = 0 }: { readonly limit?: MustLimit; readonly more?: 0 | 1 } = {},
  ) {
    this.rows = rows;
    this.value = value;
    this.under = under;
    this.over = over;
    this.limit = limit;
    this.more = more;
  }

  /** What row r costs at a sum. */
  cost(r: number, sum: number): number {
    const { low, high } = this.rows[r]!;
    return sum < low ? this.under[r]! * (low - sum) : sum > high ? this.over[r]! * (sum - high) : 0;
  }

  /** What all rows cost. */
  costs(sums: ArrayLike<number>): number {
    let cost = 0;
    for (let r = 0; r < this.rows.length; r++) cost += this.cost(r, sums[r]!);
    return cost;
  }

  /** The most that `price × sum − cost(sum)` can be over all sums, for a price between −under and over. */
  conjugate(r: number, price: number): number {
    return price >= 0 ? price * this.rows[r]!.high : price * this.rows[r]!.low;
  }

  /** Whether a plan with so many must points of its items, and these sums, keeps the limit. */
  allows(must: number, sums: ArrayLike<number>): boolean {
    if (this.limit === undefined) return true;
    let all = must;
    for (const [r, { low, high }] of this.rows.entries()) {
      const sum = sums[r]!;
      if (sum < low) all += this.limit.under[r]! * (low - sum);
      else if (sum > high) all += this.limit.over[r]! * (sum - high);
    }
    return all <= this.limit.most;
  }
}
