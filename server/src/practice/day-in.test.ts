import { day } from "@stave/core/day";
import fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { dayIn, daysIn } from "./day-in.ts";

const ZONES = ["Europe/London", "Pacific/Kiritimati", "Pacific/Pago_Pago", "Asia/Kathmandu", "America/St_Johns", "UTC"];

test("the day is that of another calendar library, from 1901 to 9998, asked once or again", () => {
  const instant = fc.integer({ min: Date.UTC(1970, 0, 1), max: Date.UTC(9998, 0, 1) });
  fc.assert(
    fc.property(fc.constantFrom(...ZONES), instant, (zone, at) => {
      const theirs = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone).toPlainDate().toString();
      const ours = daysIn(zone);
      expect([dayIn(zone, at), ours(at), ours(at)]).toEqual(Array(3).fill(day(theirs)));
    }),
  );
});

test("any instant of a clock that went wrong has a day", () => {
  for (const at of [-8.64e15, 8.64e15, 0, -1])
    for (const zone of ZONES) expect(Number.isInteger(daysIn(zone)(at))).toBe(true);
});
