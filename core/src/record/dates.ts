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
/** Two figures of a year, where nothing else can be meant. */
const SHORT_YEAR = /^(\d{1,2})([./])(\d{1,2})\2(\d{2})$/;
const YEAR_FIRST = /^(\d{4})[./-](\d{1,2})[./-](\d{1,2})$/;
const NAMED = /^(\d{1,2})(?:st|nd|rd|th|\.)?[ -](?:de )?([\p{L}]{3,10})\.?,?[ -](?:de )?(\d{4}|\d{2})$/u;
const NAME_FIRST = /^([\p{L}]{3,10})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/u;
const WEEKDAY = /^[\p{L}]{2,12}\.?,? (?=\d)/u;
/** A wall time behind the date; one with a zone may be of another day, and is left for asking. */
const TIME = /(?:T|,? )\d{1,2}:\d{2}(?::\d{2})?(?: ?[ap]m)?$/i;
/** First letters of the months in languages of many coaches. */
const MONTHS: readonly RegExp[] = [
  /^(?:jan|ene|gen|янв)/,
  /^(?:feb|fév|fev|фев)/,
  /^(?:mar|mär|maa|mrt|мар)/,
  /^(?:apr|avr|abr|kwi|апр)/,
  /^(?:may|mai|mag|mei|maj|май|мая)/,
  /^(?:jun|juin|giu|cze|июн)/,
  /^(?:jul|juil|lug|lip|июл)/,
  /^(?:aug|aoû|aou|ago|sie|авг)/,
  /^(?:sep|set|wrz|сен)/,
  /^(?:oct|okt|ott|out|paź|окт)/,
  /^(?:nov|lis|ноя)/,
  /^(?:dec|dez|déc|dic|des|gru|дек)/,
];

/** The parts of a date in another usual form, as day, month and year with points between; else the text itself. */
function plainForm(text: string): string {
  const timeless = text.replace(TIME, "");
  const bare = timeless.replace(WEEKDAY, "");
  const [, day = "", named = "", year = ""] = NAMED.exec(bare) ?? [];
  const [, name = "", date = "", of = ""] = NAME_FIRST.exec(timeless) ?? [];
  const month = 1 + MONTHS.findIndex((form) => form.test((named || name).toLowerCase()));
  if (month > 0 && (named !== "" || name !== "")) {
    const full = (year || of).length === 2 ? `20${year}` : year || of;
    return printed(full, String(month), day || date) ?? text;
  }
  const ordered = YEAR_FIRST.exec(bare);
  if (ordered) return printed(ordered[1]!, ordered[2]!, ordered[3]!) ?? text;
  const short = SHORT_YEAR.exec(bare);
  return short ? `${short[1]}.${short[3]}.20${short[4]}` : bare;
}

function printed(year: string, month: string, date: string): string | undefined {
  const found = made(year, month, date);
  return found === undefined ? undefined : printDay(found);
}

function made(year: string, month: string, date: string): Day | undefined {
  return parseDay(`${year}-${month.padStart(2, "0")}-${date.padStart(2, "0")}`);
}

/**
 * Reads a column of dates: ISO 8601, a spreadsheet's serial number, a month by its name, or day and month in an order that the column shows
 * wherever only one of the two is a date. Where no cell shows it, cells that may be either are asked.
 *
 * @param order what the coach said about the file
 * @example readDates(["13/01/2027", "02/03/2027"]) // the second is 2 March, since the first is no month-first date
 */
export function readDates(cells: readonly string[], order?: DateOrder): readonly DateCell[] {
  const plain = cells.map(plainForm);
  const readings = plain.map((text) => {
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
  return plain.map((text, at): DateCell => {
    if (text === "") return { kind: "blank" };
    const iso = parseDay(text);
    if (iso !== undefined) return { kind: "day", day: iso, turned: text !== cells[at] };
    const serial = /^(\d{5})(?:[.,]\d+)?$/.exec(text)?.[1];
    if (serial !== undefined && Number(serial) >= SERIALS.from && Number(serial) <= SERIALS.to)
      return { kind: "day", day: addDays(EPOCH, Number(serial)), turned: true };
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
