import type { MassUnit } from "../units.ts";

export interface Bounds {
  readonly from: number;
  readonly to: number;
  readonly unit: string;
  /** How the bounds are told, where they are not counted in the unit they are written in. */
  readonly words?: string;
}

/**
 * What a dose may ask for. Ours, no source: wide enough for all that a coach may mean, narrow enough for a slip of the
 * finger to be told. Whether an amount is wise is for the checks to say.
 */
export const DOSE_BOUNDS = {
  sets: { from: 1, to: 20, unit: "sets" },
  reps: { from: 1, to: 100, unit: "reps" },
  hold: { from: 1, to: 600, unit: "s" },
  metres: { from: 1, to: 10_000, unit: "m" },
  /** Seconds; written in minutes. */
  time: { from: 10, to: 18_000, unit: "s", words: "0:10–300 min" },
  contacts: { from: 1, to: 100, unit: "contacts" },
  percent: { from: 1, to: 100, unit: "%" },
  reserve: { from: 0, to: 10, unit: "in reserve" },
  /** The scale is a measured one in this part only. Source: zourdos2016. */
  rpe: { from: 7, to: 10, unit: "RPE" },
  rest: { from: 0, to: 900, unit: "s" },
  /** Bouts after the first one in a set with short rests inside. */
  bouts: { from: 1, to: 9, unit: "bouts" },
  inside: { from: 1, to: 120, unit: "s" },
  tempo: { from: 0, to: 20, unit: "s" },
} as const satisfies Record<string, Bounds>;

/** Heaviest load that a programme may name, with at most three decimals. */
export const MAX_LOAD: Readonly<Record<MassUnit, number>> = { kg: 1000, lb: 2200 };

/** Longest written dose, in characters. */
export const MAX_DOSE_TEXT = 2000;
