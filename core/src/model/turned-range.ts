import { civil, type Day, parseDay } from "../day.ts";

/** A cell of repetitions as it is, or as it was before a spreadsheet made a date of it. */
export type RangeCell =
  | { readonly kind: "range"; readonly from: number; readonly to: number; readonly turned: boolean }
  | { readonly kind: "other"; readonly text: string };

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
/** Day 0 of the serial numbers that spreadsheets keep dates in, so that 1 March 1900 is 61. */
const EPOCH = parseDay("1899-12-30")!;
/** Serial numbers of the years 2000 to 2100: a number in between is nobody's repetitions. */
const SERIALS = { from: 36_526, to: 73_050 };

function monthDay(one: number, other: number): RangeCell {
  return { kind: "range", from: Math.min(one, other), to: Math.max(one, other), turned: true };
}

/**
 * A range of repetitions, also where a spreadsheet has turned it into a date: `12-Aug`, `5-Mar`, `2027-08-10`, the
 * serial number 46244. A range is written small to large, so the smaller of day and month is its start.
 *
 * @param text one cell
 * @returns `turned` says that the cell was repaired, which is shown before it is taken
 * @example readRangeCell("12-Aug") //=> 8 to 12, turned
 */
export function readRangeCell(text: string): RangeCell {
  const said = text.trim().slice(0, 40);
  const plain = /^(\d{1,3}) ?(?:[-–—]|to) ?(\d{1,3})$/.exec(said);
  if (plain && Number(plain[1]) <= Number(plain[2])) {
    return { kind: "range", from: Number(plain[1]), to: Number(plain[2]), turned: false };
  }
  const named = /^(\d{1,2})[- ]([a-z]{3})$/i.exec(said) ?? /^([a-z]{3})[- ](\d{1,2})$/i.exec(said);
  if (named) {
    const [day, month] = /^\d/.test(named[1]!) ? [named[1]!, named[2]!] : [named[2]!, named[1]!];
    const at = MONTHS.indexOf(month.toLowerCase()) + 1;
    if (at > 0 && Number(day) >= 1 && Number(day) <= 31) return monthDay(Number(day), at);
  }
  const date = parseDay(said);
  if (date !== undefined) return monthDay(civil(date).month, civil(date).date);
  const serial = /^\d{5}$/.test(said) ? Number(said) : Number.NaN;
  if (serial >= SERIALS.from && serial <= SERIALS.to) {
    const { month, date: day } = civil((EPOCH + serial) as Day);
    return monthDay(month, day);
  }
  if (/^\d{1,3}$/.test(said)) return { kind: "range", from: Number(said), to: Number(said), turned: false };
  return { kind: "other", text: said };
}

/** @returns a range as spreadsheets leave it alone */
export function printRangeCell(from: number, to: number): string {
  return from === to ? String(from) : `${from} to ${to}`;
}
