import type { Span } from "./dose.ts";
import type { Bounds } from "./dose-bounds.ts";
import { bounded, here, numberOf, report, type Scan, sees, take } from "./dose-scan.ts";

export type Unit = "reps" | "s" | "min" | "m" | "km" | "contacts";

/** One number or a range as it is written. Minutes, and minutes and seconds, are seconds already. */
export interface Quantity {
  readonly from: number;
  readonly to: number;
  readonly ranged: boolean;
  /** Written as 1:30, which alone does not say what it counts. */
  readonly clock: boolean;
  readonly unit: Unit | undefined;
  readonly at: number;
  readonly end: number;
}

/** A comma is a decimal one where the number cannot be a count: `62,5 kg`. Between counts it divides a list. */
const DIGITS = /\d+(?:\.\d+|,\d+(?= *(?:min|km|'|kg|kilo|lb|pound|%|rpe))|\^\d+|e\d+)?/y;
const RATING = /\d+(?:[.,]\d+)?/y;
const CLOCK = /(\d+):([0-5]\d)(?!\d)/y;
const MINUTES_AND_SECONDS =
  /(\d+) ?(?:' ?([0-5]?\d)(?!\d) ?(?:''|")?|min(?:ute)?s? ?([0-5]?\d) ?s(?:ec(?:ond)?s?)?\b)/y;
const UNITS: readonly (readonly [Unit, RegExp])[] = [
  ["s", /(?:s|secs?|seconds?)\b|"|''/y],
  ["min", /(?:mins?|minutes?)\b|'/y],
  ["m", /(?:m|met(?:er|re)s?)\b/y],
  ["km", /(?:km|kilomet(?:er|re)s?)\b/y],
  ["contacts", /(?:ground )?contacts?\b/y],
  ["reps", /(?:reps?|repetitions?)\b/y],
];
const RANGE = /(?:-+|to\b) *(?=\d)/y;

interface Piece {
  readonly value: number;
  readonly clock: boolean;
  readonly unit: Unit | undefined;
}

function readPiece(scan: Scan): Piece | undefined {
  const pair = take(scan, MINUTES_AND_SECONDS);
  if (pair) return { value: Number(pair[1]) + Number(pair[2] ?? pair[3]) / 60, clock: false, unit: "min" };
  const clock = take(scan, CLOCK);
  const digits = clock ?? take(scan, DIGITS);
  if (!digits) return undefined;
  const value = clock ? Number(clock[1]) * 60 + Number(clock[2]) : numberOf(digits[0]);
  return { value, clock: clock !== undefined, unit: readUnit(scan) };
}

function readUnit(scan: Scan): Unit | undefined {
  return UNITS.find(([, pattern]) => take(scan, pattern))?.[0];
}

function inSeconds(piece: Piece, unit: Unit): number {
  return piece.clock || (piece.unit ?? unit) !== "min" ? piece.value : Math.round(piece.value * 60 * 1e6) / 1e6;
}

/**
 * Reads `8`, `8–10`, `20–30 s`, `1:30 min`, `1'30"`, `2 min`, `0.4 km`; a unit after the range counts for both ends.
 *
 * @returns undefined, with nothing taken, where no number stands
 */
export function readQuantity(scan: Scan): Quantity | undefined {
  if (!sees(scan, /\d/y)) return undefined;
  const at = scan.at;
  const first = readPiece(scan)!;
  const second = take(scan, RANGE) ? readPiece(scan)! : first;
  const unit = second.unit ?? first.unit;
  const timed = unit === "min" || unit === "s" || first.clock || second.clock;
  const [from, to] = timed
    ? [inSeconds(first, unit ?? "s"), inSeconds(second, unit ?? "s")]
    : [first.value, second.value];
  if (first.unit !== undefined && first.unit !== unit) {
    report(scan, "dose/mixed-units", at, UNIT_WORDS, timed ? { maybe: `${from}–${to} s` } : {});
  }
  return { from, to, ranged: second !== first, clock: first.clock || second.clock, unit, at, end: scan.at };
}

export const UNIT_WORDS = "reps, s, min, m, km, contacts";

/** Reads `8`, `8.5`, `8,5` or a range of them, as ratings are written. */
export function readRating(scan: Scan): Quantity | undefined {
  const at = here(scan);
  const first = take(scan, RATING)?.[0];
  if (first === undefined) return undefined;
  const second = take(scan, RANGE) ? take(scan, RATING)![0] : first;
  const [from, to] = [numberOf(first), numberOf(second)];
  return { from, to, ranged: from !== to, clock: false, unit: undefined, at, end: scan.at };
}

/** Takes a whole number or a number with a decimal part. */
export function takeNumber(scan: Scan): number | undefined {
  const digits = take(scan, DIGITS);
  return digits && numberOf(digits[0]);
}

/** The two ends in the base unit; both in bounds, whole and in order, or a problem is noted. */
export function spanOf(scan: Scan, quantity: Quantity, bounds: Bounds, times = 1): Span {
  const from = Math.round(quantity.from * times * 1e6) / 1e6;
  const to = Math.round(quantity.to * times * 1e6) / 1e6;
  const { at, end } = quantity;
  const before = scan.problems.length;
  bounded(scan, from, bounds, at, end);
  if (to !== from && scan.problems.length === before) bounded(scan, to, bounds, at, end);
  if (from > to) {
    const pieces = /^([\d.,:^]+).*?(?:-+|to) *([\d.,:^]+)(.*)$/.exec(scan.text.slice(at, end));
    const maybe = pieces ? `${pieces[2]}–${pieces[1]}${pieces[3]}`.trim() : undefined;
    report(scan, "dose/reversed", at, "8–12", { to: end, ...(maybe ? { maybe } : {}) });
  }
  return { from, to };
}
