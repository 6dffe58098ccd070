declare const calendarDay: unique symbol;

/**
 * A calendar day as a whole number: days since 1 January 1970. It has no clock time and no zone, so adding 1
 * always gives the next date, whatever the clocks do.
 */
export type Day = number & { readonly [calendarDay]: true };

export const WEEKDAYS = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;
export type Weekday = (typeof WEEKDAYS)[number];

const ISO = /^(\d{4})-(\d{2})-(\d{2})$/;
const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function isLeap(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/** Days from 1970-01-01 to the date, by counting in 400-year eras that begin on 1 March. */
function daysFromCivil(year: number, month: number, date: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + date - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

/**
 * Reads a date as ISO 8601 writes it.
 *
 * @param text "YYYY-MM-DD"
 * @returns the day, or undefined when the text is no date that exists
 * @source iso8601
 * @example
 * parseDay("2027-03-28") //=> 20905
 */
export function parseDay(text: string): Day | undefined {
  const match = ISO.exec(text);
  if (!match) return undefined;
  const [year, month, date] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (month < 1 || month > 12 || date < 1) return undefined;
  const length = month === 2 && isLeap(year) ? 29 : DAYS_IN_MONTH[month - 1]!;
  return date > length ? undefined : (daysFromCivil(year, month, date) as Day);
}

/** @throws RangeError when the text is no date that exists */
export function day(text: string): Day {
  const found = parseDay(text);
  if (found === undefined) {
    throw new RangeError(`Cannot read a day as it must be a date that exists, YYYY-MM-DD: current value is "${text}"`);
  }
  return found;
}

export interface Civil {
  readonly year: number;
  readonly month: number;
  readonly date: number;
}

/** @returns year, month 1–12 and date of a day */
export function civil(value: Day): Civil {
  const z = value + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const m = Math.floor((5 * dayOfYear + 2) / 153);
  const month = m < 10 ? m + 3 : m - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    date: dayOfYear - Math.floor((153 * m + 2) / 5) + 1,
  };
}

/**
 * Writes a day as ISO 8601 does.
 *
 * @throws RangeError outside the years 0000 to 9999, which four digits cannot say, or when the day is not whole
 * @source iso8601
 * @example
 * printDay(day("2027-03-28")) //=> "2027-03-28"
 */
export function printDay(value: Day): string {
  const { year, month, date } = civil(value);
  if (!(Number.isInteger(value) && year >= 0 && year <= 9999)) {
    throw new RangeError(
      `Cannot print a day as it must be whole and in the years 0000 to 9999: current value is ${value}`,
    );
  }
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(date).padStart(2, "0")}`;
}

/** @example addDays(day("2027-03-27"), 1) // the 28th, also when the clocks change */
export function addDays(value: Day, days: number): Day {
  return (value + days) as Day;
}

export function weekdayOf(value: Day): Weekday {
  return WEEKDAYS[(((value + 3) % 7) + 7) % 7]!;
}

/**
 * Whole years of age on a day, negative before birth. Someone born on 29 February turns a year older on 1 March of a
 * common year.
 *
 * @example ageOn(day("2008-02-29"), day("2026-02-28")) //=> 17
 */
export function ageOn(born: Day, on: Day): number {
  const b = civil(born);
  const t = civil(on);
  return t.year - b.year - (t.month < b.month || (t.month === b.month && t.date < b.date) ? 1 : 0);
}
