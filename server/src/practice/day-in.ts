import { type Day, parseDay } from "@stave/core/day";

const DAY_MS = 86_400_000;
/** Instants that a clock can show as a year of four digits in any zone. */
const [LEAST, MOST] = [Date.UTC(1900, 0, 2), Date.UTC(9999, 11, 30)];
const formats = new Map<string, Intl.DateTimeFormat>();

/**
 * The day that a calendar in a zone shows at an instant; before 1900 and after 9999 that of the bound.
 *
 * @param zone IANA name
 * @param at epoch milliseconds
 */
export function dayIn(zone: string, at: number): Day {
  let format = formats.get(zone);
  if (format === undefined) {
    format = new Intl.DateTimeFormat("en-CA", {
      timeZone: zone,
      calendar: "gregory",
      numberingSystem: "latn",
      year: "numeric",
      month: "2-digit",
      day: "2-digit",
    });
    formats.set(zone, format);
  }
  const parts = new Map(
    format.formatToParts(Math.min(MOST, Math.max(LEAST, at))).map(({ type, value }) => [type, value]),
  );
  const found = parseDay(`${parts.get("year")}-${parts.get("month")}-${parts.get("day")}`);
  if (found === undefined) throw new RangeError(`The calendar of ${zone} shows no day: current instant is ${at}`);
  return found;
}

/** @returns `dayIn` for one zone, which remembers days; no zone changes its clock but on a quarter of an hour */
export function daysIn(zone: string): (at: number) => Day {
  const known = new Map<number, Day>();
  const QUARTER_MS = DAY_MS / 96;
  const MOST_KNOWN = 5000;
  return (at) => {
    const quarter = Math.floor(at / QUARTER_MS);
    let found = known.get(quarter);
    if (found === undefined) {
      found = dayIn(zone, at);
      if (known.size >= MOST_KNOWN) known.clear();
      known.set(quarter, found);
    }
    return found;
  };
}
