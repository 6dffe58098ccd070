import { MISSING } from "../facts.ts";

/**
 * A number as English readers write it: a point, at most so many decimals, none that say nothing, and a narrow space in
 * the thousands from 10,000 on.
 *
 * @returns MISSING for what is no number
 * @example printNumber(12.5) //=> "12.5"
 */
export function printNumber(value: number, decimals = 2): string {
  if (!Number.isFinite(value)) return MISSING;
  const rounded = Number(value.toFixed(decimals));
  const [whole, part] = String(Math.abs(rounded)).split(".");
  const grouped = whole!.length > 4 ? whole!.replace(/\B(?=(\d{3})+$)/g, "\u202f") : whole!;
  return `${rounded < 0 ? "−" : ""}${grouped}${part === undefined ? "" : `.${part}`}`;
}

/** @example plural(1, "set", "sets") //=> "1 set" */
export function plural(count: number, one: string, many: string): string {
  return `${printNumber(count)} ${count === 1 ? one : many}`;
}

/** @example printSpan(8, 10) //=> "8–10" */
export function printSpan(from: number, to: number): string {
  return from === to ? printNumber(from) : `${printNumber(from)}–${printNumber(to)}`;
}

/** @example listed(["squat", "hinge", "pull"]) //=> "squat, hinge and pull" */
export function listed(words: readonly string[], last = "and"): string {
  if (words.length < 2) return words[0] ?? MISSING;
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** Whole numbers with runs drawn together. @example runs([1, 2, 3, 5]) //=> "1–3, 5" */
export function runs(values: readonly number[]): string {
  const found: { from: number; to: number }[] = [];
  for (const value of values) {
    const last = found.at(-1);
    if (last?.to === value - 1) last.to = value;
    else found.push({ from: value, to: value });
  }
  return found.map(({ from, to }) => printSpan(from, to)).join(", ");
}
