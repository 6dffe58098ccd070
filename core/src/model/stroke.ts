import type { Span } from "./dose.ts";

/** One side of a set, or the whole of it. Undefined: nothing was said of it. */
export type StrokeAmount = number | undefined;

/**
 * One set as a sign: its height is what was done against what was asked, its width is load against what the person
 * can lift now.
 */
export interface Stroke {
  readonly state: "done" | "asked" | "to come" | "missed";
  /** Repetitions, or seconds of a hold. */
  readonly asked: Span;
  readonly hold: boolean;
  /** Undefined while nothing is done; sides are kept apart. */
  readonly done?: { readonly both: StrokeAmount } | { readonly left: StrokeAmount; readonly right: StrokeAmount };
  /** Load as a share of what the person can lift now, 0 to 1; undefined when it cannot be judged. */
  readonly share?: number;
  readonly hurt: boolean;
}
