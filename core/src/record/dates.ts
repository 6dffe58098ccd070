import { addDays, type Day, day, parseDay, printDay } from "../day.ts";

/** Which comes first in 03/04/2027. */
export type DateOrder = "day first" | "month first";

/** One cell of a column of dates. `turned`: it was not written as ISO 8601 writes it, and is shown as it was read. */
export type DateCell =
  | { readonly kind: "day"; readonly day: Day; readonly turned: boolean }
  | { readonly kind: "blank" }
  /** It may be either; the column does not tell. */
  | { readonly kind: "either"; readonly maybe: readonly Day[] }
  | { readonly kind: "no date" };

/** Day 0 of the serial numbers that spreadsheets keep dates in. */
const EPOCH = day("1899-12-30");
/** Serial numbers of the years 2000 to 2100. */
const SERIALS = { from: 36_526, to: 73_050 };
const PARTS = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/;

function made(year: string, month: string, date: string): Day | undefined {
  return parseDay(`${year}-${month.padStart(2, "0")}-${date.padStart(2, "0")}`);
}

/**
 * Reads a column of dates: ISO 8601, a spreadsheet's serial number, or day and month in an order that the column shows
 * wherever only one of the two is a date. Where no cell shows it, cells that may be either are asked.
 *
 * @param order what the coach said about the file
 * @example readDates(["13/01/2027", "02/03/2027"]) // the second is 2 March, since the first is no month-first date
 */
export function readDates(cells: readonly string[], order?: DateOrder): readonly DateCell[] {
  const readings = cells.map((text) => {
    const parts = PARTS.exec(text);
    if (parts === null) return undefined;
    const [, one = "", other = "", year = ""] = parts;
    return { dayFirst: made(year, other, one), monthFirst: made(year, one, other) };
  });
  const shows = (first: "dayFirst" | "monthFirst", not: "dayFirst" | "monthFirst") =>
    readings.some((each) => each?.[first] !== undefined && each[not] === undefined);
  const [dayFirst, monthFirst] = [shows("dayFirst", "monthFirst"), shows("monthFirst", "dayFirst")];
  const shown = dayFirst === monthFirst ? undefined : dayFirst ? "dayFirst" : "monthFirst";
  const said = order === undefined ? shown : order === "day first" ? "dayFirst" : "monthFirst";
  return cells.map((text, at): DateCell => {
    if (text === "") return { kind: "blank" };
    const iso = parseDay(text);
    if (iso !== undefined) return { kind: "day", day: iso, turned: false };
    if (/^\d{5}$/.test(text) && Number(text) >= SERIALS.from && Number(text) <= SERIALS.to)
      return { kind: "day", day: addDays(EPOCH, Number(text)), turned: true };
    const reading = readings[at];
    if (reading === undefined) return { kind: "no date" };
    if (said !== undefined) {
      const found = reading[said];
      return found === undefined ? { kind: "no date" } : { kind: "day", day: found, turned: true };
    }
    const maybe = [...new Set([reading.dayFirst, reading.monthFirst].filter((each) => each !== undefined))];
    if (maybe.length === 0) return { kind: "no date" };
    return maybe.length === 1 ? { kind: "day", day: maybe[0]!, turned: true } : { kind: "either", maybe };
  });
}

/** @returns days as they are shown to a coach who has to choose */
export function printDays(days: readonly Day[]): string {
  return days.map(printDay).join(" or ");
}
