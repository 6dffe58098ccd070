import type { Load } from "../units.ts";

/** A range with both ends included; one number is a range whose ends are equal. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What one set asks for. `most` is "as many as possible"; its span is what the coach expects, if said. */
export type Amount =
  | { readonly kind: "reps"; readonly span: Span }
  | { readonly kind: "most"; readonly least?: number }
  | { readonly kind: "hold"; readonly span: Span }
  | { readonly kind: "metres"; readonly span: Span }
  | { readonly kind: "time"; readonly span: Span }
  | { readonly kind: "contacts"; readonly span: Span };

/** Holds and times are in whole seconds, distances in metres. */
export type AmountKind = Amount["kind"];

/** Effort as the coach wrote it. Reserve is repetitions left; `share` is whole per cent of the 1RM. */
export interface SetDose {
  readonly amount: Amount;
  /** True when left and right are done one after the other; one such set still counts as one set. */
  readonly eachSide: boolean;
  /** Whole per cent of the one-repetition maximum, 1 to 100. */
  readonly percent?: number;
  /** Repetitions in reserve. */
  readonly reserve?: Span;
  /** A fixed load that the coach wrote into the programme. */
  readonly load?: Load;
  /** Short rests inside the set: so many more bouts of so many repetitions after so many seconds. */
  readonly within?: { readonly bouts: readonly number[]; readonly restS: number };
}

/** Seconds for lowering, pause, lifting, pause. */
export type Tempo = readonly [number, number, number, number];

/** What is asked in one slot: every set, the rest between them, the tempo. */
export interface Dose {
  readonly sets: readonly SetDose[];
  /** Rest between sets in seconds; undefined when not said. */
  readonly restS?: number;
  readonly tempo?: Tempo;
}

/** How a dose goes up from week to week. */
export const WAYS_UP = ["reps then load", "load", "reserve", "hold time", "ladder", "contacts", "stay"] as const;
export type WayUp = (typeof WAYS_UP)[number];
