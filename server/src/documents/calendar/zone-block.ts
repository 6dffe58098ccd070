import { Temporal } from "temporal-polyfill";

/** Clocks change twice a year at most in the zones we know, and a file holds a few years. */
const MOST_CHANGES = 200;

function offsetText(nanoseconds: number): string {
  const seconds = Math.round(Math.abs(nanoseconds) / 1e9);
  const two = (value: number) => String(Math.floor(value)).padStart(2, "0");
  const rest = seconds % 60 === 0 ? "" : two(seconds % 60);
  return `${nanoseconds < 0 ? "-" : "+"}${two(seconds / 3600)}${two((seconds / 60) % 60)}${rest}`;
}

function localText(time: Temporal.PlainDateTime): string {
  return time.toString({ smallestUnit: "second" }).replace(/[-:]/g, "");
}

/** @returns what a wall clock in the zone shows at an instant, as RFC 5545 writes a local time: 20270302T070000 */
export function zoneTime(instant: number, zone: string): string {
  return localText(Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone).toPlainDateTime());
}

/** @returns the instant that a local time of RFC 5445 names in a zone, of an hour that comes twice the first; NaN for anything else */
export function instantOf(text: string, zone: string): number {
  const [, year, month, day, hour, minute, second] = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)$/.exec(text) ?? [];
  if (year === undefined) return Number.NaN;
  try {
    const local = Temporal.PlainDateTime.from(`${year}-${month}-${day}T${hour}:${minute}:${second}`);
    return local.toZonedDateTime(zone, { disambiguation: "compatible" }).epochMilliseconds;
  } catch {
    return Number.NaN;
  }
}

/**
 * The block that tells a reader when the clocks of a zone change, for a span of instants: what holds at its begin, and
 * every change until its end, each with its own date and no rule, so that nothing is foretold.
 *
 * @param from, to epoch milliseconds
 * @returns lines without line breaks
 * @source rfc5545
 */
export function zoneBlock(zone: string, from: number, to: number): readonly string[] {
  let at = Temporal.Instant.fromEpochMilliseconds(from).toZonedDateTimeISO(zone);
  const least = Math.min(...[1, 7].map((month) => at.with({ month, day: 1 }).offsetNanoseconds));
  const lines = ["BEGIN:VTIMEZONE", `TZID:${zone}`];
  const add = (start: string, before: number, after: number) => {
    const kind = after > least ? "DAYLIGHT" : "STANDARD";
    lines.push(`BEGIN:${kind}`, `DTSTART:${start}`);
    lines.push(`TZOFFSETFROM:${offsetText(before)}`, `TZOFFSETTO:${offsetText(after)}`, `END:${kind}`);
  };
  const first = at.offsetNanoseconds;
  add("19700101T000000", first, first);
  for (let n = 0; n < MOST_CHANGES; n++) {
    const next = at.getTimeZoneTransition("next");
    if (next === null || next.epochMilliseconds > to) break;
    const [before, after] = [at.offsetNanoseconds, next.offsetNanoseconds];
    // The change is dated by the clock as it still stood.
    const old = next.toInstant().toZonedDateTimeISO("UTC").toPlainDateTime().add({ nanoseconds: before });
    if (before !== after) add(localText(old), before, after);
    at = next;
  }
  return [...lines, "END:VTIMEZONE"];
}
