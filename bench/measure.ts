/** One line of the bench: ours against a baseline in the same run. */
export interface Result {
  readonly name: string;
  /** Of ours, median of n. */
  readonly value: number;
  /** Milliseconds, or thousands of bytes. */
  readonly unit: "ms" | "kB";
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
