import { type Day, printDay } from "@stave/core/day";
import { Temporal } from "temporal-polyfill";

const MINUTES_A_DAY = 1440;

/**
 * The instant at which a wall clock in a zone shows a time on a day.
 *
 * A time that the clocks skip is moved on by the length of the gap, so that a day without midnight starts at its first
 * moment; of a time that comes twice the first is taken.
 *
 * @param minutes after midnight, 0 to 1440; 1440 is the start of the next day
 * @param zone IANA name
 * @returns epoch milliseconds
 * @throws RangeError when the zone is not known or the minutes are out of range
 * @example
 * toInstant(day("2027-03-30"), 420, "Europe/London") // 06:00 UTC
 */
export function toInstant(day: Day, minutes: number, zone: string): number {
  if (!(Number.isInteger(minutes) && minutes >= 0 && minutes <= MINUTES_A_DAY)) {
    throw new RangeError(
      `Cannot find an instant as minutes must be whole, from 0 to ${MINUTES_A_DAY}: current value is ${minutes}`,
    );
  }
  const date = Temporal.PlainDate.from(printDay(day)).add({ days: minutes === MINUTES_A_DAY ? 1 : 0 });
  const time = minutes % MINUTES_A_DAY;
  return date
    .toPlainDateTime({ hour: Math.floor(time / 60), minute: time % 60 })
    .toZonedDateTime(zone, { disambiguation: "compatible" }).epochMilliseconds;
}

/** @returns what a wall clock in the zone shows at an instant, YYYY-MM-DDTHH:MM */
export function wallTime(instant: number, zone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(instant)
    .toZonedDateTimeISO(zone)
    .toPlainDateTime()
    .toString({ smallestUnit: "minute" });
}
