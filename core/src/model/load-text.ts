import type { Load, MassUnit } from "../units.ts";
import { read, type Slip, type Slipped, slipped } from "./slip.ts";

/** What can be wrong with a written load. Each names a sentence. */
export const LOAD_PROBLEMS = [
  "load/form",
  "load/unit",
  "load/number",
  "load/size",
  "load/range",
  "load/reversed",
  "load/step",
  "load/units",
  "load/count",
  "load/order",
] as const;

/** Heavier single things are slips of the pen: 1,000 kg on a leg press is the most that we have heard of. */
const MOST: Readonly<Record<MassUnit, number>> = { kg: 1000, lb: 2200 };
const MOST_LOADS = 200;
const FORMS = "12 kg, 12.5 kg, 10 lb";
const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
const ONE = new RegExp(`^(\\s*)(${NUMBER})\\s*(.*?)\\s*$`, "s");
const RUN = new RegExp(
  `^\\s*(${NUMBER})\\s*(kg|lb)?\\s*(?:[–-]|to)\\s*(${NUMBER})\\s*(kg|lb)\\s+by\\s+(${NUMBER})\\s*(kg|lb)?\\s*$`,
);

/**
 * Reads a load as people write it.
 *
 * @param text a number with at most three decimals, a point or a comma before them, and `kg` or `lb`
 * @returns the load, 0 to 1,000 kg or 2,200 lb, in the unit that was written
 * @example
 * readLoad("12,5 kg") //=> { ok: true, value: { value: 12.5, unit: "kg" } }
 */
export function readLoad(text: string): Slipped<Load> {
  const match = ONE.exec(text);
  if (!match) return slipped({ code: "load/form", offset: 0, found: text.trim(), allowed: FORMS });
  const [, blank = "", digits = "", unit = ""] = match;
  if (unit !== "kg" && unit !== "lb") {
    const near = /^(kgs?|kilos?|kilograms?)$/i.test(unit) ? "kg" : /^(lbs?|pounds?)$/i.test(unit) ? "lb" : undefined;
    const maybe = near ? `${digits} ${near}` : unit === "" ? `${digits} kg, ${digits} lb` : undefined;
    const found = text.trim();
    const offset = unit === "" ? blank.length : text.indexOf(unit, blank.length + digits.length);
    return slipped({ code: "load/unit", offset, found, allowed: "kg, lb", ...(maybe ? { maybe } : {}) });
  }
  const value = readNumber(digits);
  if (value === undefined) return comma(digits, blank.length);
  return inRange(value, unit) ? read({ value, unit }) : outOfRange(digits, unit, blank.length);
}

/**
 * Reads one load, or a run of loads that exist: `1–10 kg by 1`.
 *
 * @param text a load, or two loads and the step that leads from the one to the other
 * @returns the loads, rising, at most 200 of them, above 0
 * @example
 * readLoadRun("12.5–17.5 kg by 2.5") //=> { ok: true, value: 12.5, 15 and 17.5 kg }
 */
export function readLoadRun(text: string): Slipped<readonly Load[]> {
  const match = RUN.exec(text);
  if (!match) {
    if (/[–-]|\bto\b|\bby\b/.test(text)) {
      return slipped({ code: "load/range", offset: 0, found: text.trim(), allowed: "1–10 kg by 1" });
    }
    const one = readLoad(text);
    if (!one.ok) return one;
    return one.value.value > 0 ? read([one.value]) : outOfRange(text.trim(), one.value.unit, 0);
  }
  const [, digitsFrom = "", unitFrom, digitsTo = "", unit = "kg", digitsBy = "", unitBy] = match;
  const at = (piece: string, after: number) => text.indexOf(piece, after);
  const offsetTo = at(digitsTo, at(digitsFrom, 0) + digitsFrom.length);
  const offsetBy = at(digitsBy, offsetTo + digitsTo.length);
  const [from, to, by] = [digitsFrom, digitsTo, digitsBy].map(readNumber);
  if (from === undefined) return comma(digitsFrom, at(digitsFrom, 0));
  if (to === undefined) return comma(digitsTo, offsetTo);
  if (by === undefined) return comma(digitsBy, offsetBy);
  if ((unitFrom ?? unit) !== unit || (unitBy ?? unit) !== unit) {
    return slipped({ code: "load/units", offset: 0, found: text.trim(), allowed: unit });
  }
  if (!(from > 0 && inRange(from, unit))) return outOfRange(digitsFrom, unit, at(digitsFrom, 0));
  if (!inRange(to, unit)) return outOfRange(digitsTo, unit, offsetTo);
  if (!(to > from)) {
    const maybe = to < from ? `${digitsTo}–${digitsFrom}` : `${digitsTo} ${unit}`;
    return slipped({
      code: "load/reversed",
      offset: at(digitsFrom, 0),
      found: `${digitsFrom}–${digitsTo}`,
      allowed: `> ${digitsFrom}`,
      maybe,
    });
  }
  return run(Math.round(from * 1000), Math.round(to * 1000), Math.round(by * 1000), unit, digitsBy, offsetBy);
}

/** Counted in thousandths, since 0.1 has no exact double. */
function run(
  from: number,
  to: number,
  by: number,
  unit: string,
  found: string,
  offset: number,
): Slipped<readonly Load[]> {
  if (!(by > 0 && (to - from) % by === 0)) {
    return slipped({ code: "load/step", offset, found, allowed: `(${to / 1000} − ${from / 1000}) ÷ n` });
  }
  const count = (to - from) / by + 1;
  if (count > MOST_LOADS)
    return slipped({ code: "load/count", offset, found: String(count), allowed: `1–${MOST_LOADS}` });
  return read(Array.from({ length: count }, (_, i) => ({ value: (from + i * by) / 1000, unit: unit as MassUnit })));
}

/** @returns undefined where a comma might part thousands, or where there are more than three decimals */
function readNumber(digits: string): number | undefined {
  const [whole = "", decimals = ""] = digits.split(/[.,]/);
  if (whole.length > 5 || decimals.length > (digits.includes(",") ? 2 : 3)) return undefined;
  return Number(`${whole}.${decimals || "0"}`);
}

function comma(digits: string, offset: number): { readonly ok: false; readonly slip: Slip } {
  return slipped({
    code: "load/number",
    offset,
    found: digits,
    allowed: "12, 12.5, 12,5",
    maybe: digits.replace(/[.,]\d*$/, ""),
  });
}

function inRange(value: number, unit: string): boolean {
  return value >= 0 && value <= MOST[unit as MassUnit];
}

function outOfRange(found: string, unit: string, offset: number): { readonly ok: false; readonly slip: Slip } {
  return slipped({ code: "load/size", offset, found, allowed: `0–${MOST[unit as MassUnit]} ${unit}` });
}
