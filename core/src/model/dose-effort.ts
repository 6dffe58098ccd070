import type { MassUnit } from "../units.ts";
import type { SetDose, Span } from "./dose.ts";
import { DOSE_BOUNDS, MAX_LOAD } from "./dose-bounds.ts";
import { type Marks, note } from "./dose-marks.ts";
import { type Quantity, readQuantity, readRating } from "./dose-quantity.ts";
import { bounded, type DoseProblemCode, report, type Scan, take } from "./dose-scan.ts";

export const EACH_SIDE =
  /(?:(?:\/ *|(?:on |to )?(?:each|per|a|every|both) +)(?:sides?|legs?|arms?|hands?|feet|foot)\b|each\b|ea\b\.?|e\b|e *\/ *s\b|\/ *s\b|left and right\b|l *[/&] *r\b)/y;
export const RPE = /rpe\b *:?/y;
const PERCENT = /%(?: *(?:(?:of )?(?:the )?1 ?-?rm\b|of (?:the )?max(?:imum)?\b))?/y;
const MASS: readonly (readonly [MassUnit, RegExp])[] = [
  ["kg", /(?:kgs?|kilos?|kilograms?)\b/y],
  ["lb", /(?:lbs?|pounds?)\b/y],
];

/**
 * Repetitions in reserve that a rating of perceived exertion stands for: 10 less the rating.
 *
 * Half a point lies between two whole reserves, so 8.5 is 1 to 2. Above 9 no more repetitions were possible, only a
 * little more load, so 9.5 is 0. Below 7 the scale was not tied to a count, so the reserve must be written.
 *
 * @source zourdos2016
 * @example
 * reserveOf(8.5) //=> { from: 1, to: 2 }
 */
export function reserveOf(rating: number): Span {
  return rating > 9 ? { from: 0, to: 0 } : { from: Math.floor(10 - rating), to: Math.ceil(10 - rating) };
}

/** The reserve of a rating or a range of ratings, or undefined with a problem noted. */
export function reserveOfRpe(scan: Scan, { from, to, at, end }: Quantity): Span | undefined {
  const [low, high] = [DOSE_BOUNDS.rpe.from, DOSE_BOUNDS.rpe.to];
  const outside = [from, to].find((rating) => !(rating >= low && rating <= high));
  if (outside !== undefined || from * 2 !== Math.round(from * 2) || to * 2 !== Math.round(to * 2)) {
    const maybe = outside !== undefined && outside < low && outside >= 5 ? "4–6 in reserve" : undefined;
    report(scan, outside === undefined ? "dose/not-whole" : "dose/out-of-range", at, `RPE ${low}–${high}`, {
      to: end,
      ...(maybe ? { maybe } : {}),
    });
    return undefined;
  }
  if (from > to) {
    report(scan, "dose/reversed", at, "RPE 7–8", { to: end, maybe: `RPE ${to}–${from}` });
    return undefined;
  }
  return { from: reserveOf(to).from, to: reserveOf(from).to };
}

/** Reads the rating behind `RPE`. */
export function readRpe(scan: Scan, marks: Marks, from: number): void {
  const rating = readRating(scan);
  if (rating) note(scan, marks, "reserve", from, reserveOfRpe(scan, rating));
  else report(scan, "dose/unfinished", from, "RPE 8", { maybe: "RPE 8" });
}

/** Reads what stands behind `@`: a share of the maximum, a load or a rating. */
export function readEffort(scan: Scan, marks: Marks, from: number): void {
  if (take(scan, RPE)) {
    readRpe(scan, marks, from);
    return;
  }
  const pair = take(scan, /2 *x *(?=\d)/y);
  const quantity = readQuantity(scan);
  if (quantity === undefined) {
    report(scan, "dose/unfinished", from, EFFORTS, { maybe: "@80 %" });
  } else if (take(scan, RPE)) {
    note(scan, marks, "reserve", from, reserveOfRpe(scan, quantity));
  } else if (pair) {
    const unit = MASS.find(([, pattern]) => take(scan, pattern))?.[0] ?? "kg";
    report(scan, "dose/pair-load", from, EFFORTS, { maybe: `@${quantity.from} ${unit}` });
  } else if (!readEffortUnit(scan, marks, from, quantity)) {
    const { from: n } = quantity;
    const maybe = n >= DOSE_BOUNDS.rpe.from && n <= DOSE_BOUNDS.rpe.to ? `RPE ${n}` : `@${n} %, @${n} kg`;
    report(scan, "dose/unit-missing", from, EFFORTS, { maybe });
  }
}

export const EFFORTS = "@80 %, @60 kg, @135 lb, RPE 8";

/** Takes the unit that makes a number a share or a load. @returns false, with nothing taken, where none stands */
export function readEffortUnit(scan: Scan, marks: Marks, from: number, quantity: Quantity): boolean {
  if (quantity.unit !== undefined || quantity.clock) return false;
  if (take(scan, PERCENT)) {
    if (oneNumber(scan, from, quantity, "%")) {
      bounded(scan, quantity.from, DOSE_BOUNDS.percent, from);
      noteEffort(scan, marks, from, { percent: quantity.from });
    }
    return true;
  }
  const unit = MASS.find(([, pattern]) => take(scan, pattern))?.[0];
  if (unit === undefined) return false;
  if (oneNumber(scan, from, quantity, unit)) noteLoad(scan, marks, from, quantity, unit);
  const side = scan.at;
  if (take(scan, EACH_SIDE)) {
    report(scan, "dose/side-of-load", side, "8 each side @20 kg", { maybe: `each side @${quantity.from} ${unit}` });
  }
  return true;
}

function oneNumber(scan: Scan, from: number, quantity: Quantity, unit: string): boolean {
  if (quantity.ranged) report(scan, "dose/one-number", from, EFFORTS, { maybe: `@${quantity.from} ${unit}` });
  return !quantity.ranged;
}

function noteLoad(scan: Scan, marks: Marks, from: number, { from: value, at, end }: Quantity, unit: MassUnit): void {
  const written = scan.text.slice(at, end).trim();
  if (/^\d{1,3},\d{3}$/.test(written)) {
    // 1,000 is a thousand to one coach and one to another, so nobody may guess.
    const maybe = `@${written.replace(",", "")} ${unit}, @${written.replace(",", ".")} ${unit}`;
    report(scan, "dose/comma", from, EFFORTS, { maybe });
  } else if (!(value > 0 && value <= MAX_LOAD[unit])) {
    report(scan, "dose/out-of-range", from, `≤ ${MAX_LOAD[unit]} ${unit}`);
  } else if (Math.round(value * 1000) / 1000 !== value) {
    report(scan, "dose/not-whole", from, "@62.125 kg", { maybe: `@${Math.round(value * 1000) / 1000} ${unit}` });
  } else {
    noteEffort(scan, marks, from, { load: { value, unit } });
  }
}

function noteEffort(scan: Scan, marks: Marks, from: number, effort: Pick<SetDose, "percent" | "load">): void {
  const clash: DoseProblemCode | undefined = marks.effort && effortClash(marks.effort.value, effort);
  if (clash) report(scan, clash, from, EFFORTS);
  else marks.effort = { value: effort, at: from, end: scan.at };
}

/** @returns what is wrong with saying both of one set */
export function effortClash(
  one: Pick<SetDose, "percent" | "load">,
  other: Pick<SetDose, "percent" | "load">,
): DoseProblemCode {
  return (one.percent === undefined) === (other.percent === undefined) ? "dose/twice" : "dose/percent-and-load";
}
