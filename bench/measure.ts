/** One line of the bench: ours against a baseline in the same run. */
export interface Result {
  readonly name: string;
  /** Milliseconds of ours, median of n. */
  readonly value: number;
  readonly unit: "ms";
  readonly baseline: string;
  readonly baselineValue: number;
  /** value / baselineValue, or baselineValue / value where `aim` says "at least". */
  readonly ratio: number;
  readonly n: number;
  readonly aim?: string;
}

export interface Measure {
  readonly name: string;
  readonly run: () => Promise<Result>;
}
