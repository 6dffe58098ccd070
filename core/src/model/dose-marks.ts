import type { SetDose, Span, Tempo } from "./dose.ts";
import { type Quantity, readQuantity } from "./dose-quantity.ts";
import { report, type Scan } from "./dose-scan.ts";

/** Something said of sets, with its place. */
export interface Mark<T> {
  readonly value: T;
  readonly at: number;
  readonly end: number;
}

/** What may be said of one set, or of several at once. */
export interface Marks {
  eachSide?: Mark<true>;
  effort?: Mark<Pick<SetDose, "percent" | "load">>;
  reserve?: Mark<Span>;
  insideS?: Mark<number>;
  least?: Mark<number>;
}

/** What is said of the whole dose, wherever it stands. */
export interface Whole {
  restS?: Mark<number>;
  tempo?: Mark<Tempo>;
}

/** Notes a mark once; the second time is a problem. */
export function note<T extends Marks | Whole, K extends keyof T>(
  scan: Scan,
  marks: T,
  name: K,
  from: number,
  value: NonNullable<T[K]> extends Mark<infer V> ? V | undefined : never,
): void {
  if (value === undefined) return;
  if (marks[name] !== undefined) report(scan, "dose/twice", from, "1");
  else marks[name] = { value, at: from, end: scan.at } as T[K];
}

/** Reads the number that a word such as `rest` calls for, or says that it is missing. */
export function readAfter(scan: Scan, from: number, example: string, use: (quantity: Quantity) => void): void {
  const quantity = readQuantity(scan);
  if (quantity) use(quantity);
  else report(scan, "dose/unfinished", from, example, { maybe: example });
}
