import { z } from "zod";
import { tell } from "../model/index.ts";
import { GLUCOSE_POSSIBLE, GLUCOSE_UNITS, type GlucoseUnit } from "./glucose.ts";

const FORM = /^(\d{1,3}(?:[.,]\d{1,2})?)\s*([A-Za-z/]*)$/;

export interface GlucoseAmount {
  readonly value: number;
  readonly unit: GlucoseUnit;
}

/** The unit as it is meant, whatever its capitals. */
function unitOf(text: string): GlucoseUnit | undefined {
  return GLUCOSE_UNITS.find((unit) => unit.toLowerCase() === text.toLowerCase());
}

/**
 * A glucose value with its unit, `5.4 mmol/L`. A number alone is refused, since the two units overlap, and so is a value
 * that no meter shows in that unit.
 */
export const glucosePiece = z.union([z.string(), z.number()]).transform((said, ctx): GlucoseAmount => {
  const text = String(said).trim();
  const match = FORM.exec(text);
  const unit = unitOf(match?.[2] ?? "");
  const found = text.slice(0, 40);
  if (match === null || unit === undefined) {
    const code = match !== null && match[2] === "" ? "before/glucose-unit" : "before/glucose-form";
    tell(ctx, [], { code, found, allowed: "5.4 mmol/L, 97 mg/dL" });
    return z.NEVER;
  }
  const value = Number(match[1]!.replace(",", "."));
  const [from, to] = GLUCOSE_POSSIBLE[unit];
  if (value >= from && value <= to) return { value, unit };
  const other = GLUCOSE_UNITS.find((each) => each !== unit)!;
  const [low, high] = GLUCOSE_POSSIBLE[other];
  tell(ctx, [], {
    code: "before/glucose-size",
    found,
    allowed: `${from}–${to} ${unit}`,
    ...(value >= low && value <= high ? { maybe: `${value} ${other}` } : {}),
  });
  return z.NEVER;
});
