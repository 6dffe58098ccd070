import type { BeforeAnswer } from "./before.ts";
import { reason } from "./reasons.ts";
import type { RuleName } from "./rule-name.ts";

export const GLUCOSE_UNITS = ["mmol/L", "mg/dL"] as const;
export type GlucoseUnit = (typeof GLUCOSE_UNITS)[number];

/** What a person with diabetes types in before training. */
export interface GlucoseReading {
  readonly value: number;
  readonly unit: GlucoseUnit;
  /** Blood or urine ketones; undefined when not tested. */
  readonly ketones?: "none or small" | "moderate or large";
  /** A low under 2.9 mmol/L, or one that needed somebody's help, in the last 24 hours. */
  readonly severeLow?: boolean;
  /** Today's work is short or very hard, such as weights. */
  readonly shortOrHard?: boolean;
}

/** A named rule with the lower edges of its bands, mg/dL. Lows are the same in all: see below. */
export interface GlucoseRule extends RuleName {
  /** Under it fast carbohydrate comes first. */
  readonly low: number;
  /** Under it long work takes carbohydrate from the start. */
  readonly carbohydrate: number;
  /** From it on ketones are tested, and hard work waits. */
  readonly ketones: number;
}

/** The printed rules differ in their upper edges. The first is used unless chosen. */
export const GLUCOSE_RULES: readonly GlucoseRule[] = [
  { id: "bands of 2016", dated: "2016", source: "colberg2016", low: 90, carbohydrate: 150, ketones: 250 },
  { id: "mountain medicine", dated: "2020", source: "mountainGlucose2020", low: 90, carbohydrate: 180, ketones: 270 },
];

/** 1 mmol/L of glucose in mg/dL: its molar mass is 180.16 g. */
const MG_DL = 18.016;
/** A person's meter shows nothing outside; a value there stands in the other unit. Ours. */
export const GLUCOSE_POSSIBLE: Readonly<Record<GlucoseUnit, readonly [number, number]>> = {
  "mmol/L": [0.6, 33.3],
  "mg/dL": [10, 600],
};
/** 2.9 and 3.9 mmol/L: below the first nobody trains for a day, below the second the low is treated first. */
const SEVERE_LOW = 52;
const LOW = 70;
const FAST_CARBOHYDRATE_G = { from: 15, to: 30 };

/** @returns mg/dL, whole, as the bands are printed */
export function inMgDl(value: number, unit: GlucoseUnit): number {
  return unit === "mg/dL" ? value : Math.round(value * MG_DL);
}

/**
 * What a glucose reading before training asks for. It informs; it never doses insulin, and the person's own plan from
 * their clinic decides.
 *
 * Bands in mg/dL, lower edge included, by default under 90, 90, 150, 250. From the last on ketones are tested; moderate or
 * large ketones stop, otherwise mild to moderate work only. Under the first fast carbohydrate comes first, which short or very
 * hard work may not need: then it asks. A low under 3.9 mmol/L is treated first; one under 2.9, or one that needed
 * help, in the last 24 hours stops everything.
 *
 * @returns "hold" with the reason when the value cannot be in that unit
 * @source colberg2016, turner2019
 */
export function glucoseBefore(reading: GlucoseReading, rule: GlucoseRule = GLUCOSE_RULES[0]!): BeforeAnswer {
  const { value, unit, ketones, severeLow } = reading;
  const [from, to] = GLUCOSE_POSSIBLE[unit];
  if (!(value >= from && value <= to)) {
    return { before: "hold", because: [reason("before/glucose-impossible", { value, unit })] };
  }
  const mgdl = inMgDl(value, unit);
  const said = { value, unit, mgdl, rule: rule.id };
  if (severeLow === true) return { before: "hold", because: [reason("before/severe-low", { hours: 24 })] };
  if (mgdl < SEVERE_LOW) return { before: "hold", because: [reason("before/severe-low", { hours: 24 })] };
  if (mgdl < LOW) return { before: "ask", because: [reason("before/glucose-very-low", said)] };
  if (mgdl < rule.low) {
    return {
      before: "ask",
      because: [
        reason("before/glucose-low", {
          ...said,
          edge: rule.low,
          carbohydrate: FAST_CARBOHYDRATE_G,
          hard: reading.shortOrHard === true,
        }),
      ],
    };
  }
  if (mgdl < rule.carbohydrate) {
    return { before: "go", because: [reason("before/glucose-carbohydrate-from-start", said)] };
  }
  if (mgdl < rule.ketones) {
    return { before: "go", because: [reason("before/glucose-fine", { ...said, edge: rule.carbohydrate })] };
  }
  const high = { ...said, edge: rule.ketones };
  if (ketones === undefined) return { before: "ask", because: [reason("before/glucose-ketones", high)] };
  return ketones === "moderate or large"
    ? { before: "hold", because: [reason("before/glucose-no-exercise", { ...high, ketones })] }
    : { before: "soften", because: [reason("before/glucose-moderate-only", high)] };
}
