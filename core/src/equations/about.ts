import type { SourceId } from "../sources.ts";

/** How far single people lie from an estimate, in its own unit or in per cent of it. */
export interface Miss {
  readonly kind:
    | "standard error of estimate"
    | "standard deviation"
    | "half-width of 95 %"
    | "root mean square"
    | "range";
  readonly from: number;
  /** Where a span was printed. */
  readonly to?: number;
  readonly unit: "kg" | "beats/min" | "mL/kg/min" | "kcal/d" | "% fat" | "%" | "reps";
  /** Where the error comes from another paper than the equation. */
  readonly source: SourceId;
}

/** On whom an equation was made, and how well it does. What could not be read is left out, never filled in. */
export interface About {
  readonly source: SourceId;
  /** The people measured, in a few plain words. */
  readonly who: string;
  readonly people?: number;
  readonly ageY?: { readonly from: number; readonly to: number };
  readonly miss?: Miss;
}
