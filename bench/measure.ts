/** One line of the bench: ours against a baseline in the same run. */
export interface Result {
  readonly name: string;
  /** Of ours: the median of n runs, or the mean of n cases. */
  readonly value: number;
  /** Milliseconds, thousands of bytes, or per cent of what is foretold. */
  readonly unit: "ms" | "kB" | "%";
  readonly baseline: string;
  readonly baselineValue: number;
  /** value / baselineValue, or baselineValue / value where `aim` says "at least". */
  readonly ratio: number;
  readonly n: number;
  readonly aim?: string;
  /** What else belongs to the figure. */
  readonly note?: string;
}

export interface Measure {
  readonly name: string;
  readonly run: () => Promise<Result>;
}
