import { addDays, day } from "@stave/core/day";
import { expect, test } from "vitest";
import { toInstant, wallTime } from "./to-instant.ts";

const HOUR = 3_600_000;

test("ca-07: Berlin, Saturday and Sunday at 18:00, are the next day to each other when the clocks change", () => {
  const spring = day("2027-03-27");
  expect(toInstant(addDays(spring, 1), 1080, "Europe/Berlin") - toInstant(spring, 1080, "Europe/Berlin")).toBe(
    23 * HOUR,
  );
  const autumn = day("2027-10-30");
  expect(toInstant(addDays(autumn, 1), 1080, "Europe/Berlin") - toInstant(autumn, 1080, "Europe/Berlin")).toBe(
    25 * HOUR,
  );
});

test("ca-07, neighbour: where the clocks do not change, the same pair is 24 h apart", () => {
  const saturday = day("2027-03-27");
  expect(toInstant(addDays(saturday, 1), 1080, "Asia/Tokyo") - toInstant(saturday, 1080, "Asia/Tokyo")).toBe(24 * HOUR);
});

test("ca-07: a day in Santiago without midnight stays on its date and starts at its first moment", () => {
  expect(wallTime(toInstant(day("2027-09-05"), 0, "America/Santiago"), "America/Santiago")).toBe("2027-09-05T01:00");
  expect(wallTime(toInstant(day("2027-09-05"), 1080, "America/Santiago"), "America/Santiago")).toBe("2027-09-05T18:00");
});

test("of an hour that comes twice, the first is taken", () => {
  expect(new Date(toInstant(day("2027-10-31"), 90, "Europe/London")).toISOString()).toBe("2027-10-31T00:30:00.000Z");
});

test("a session that ends at midnight ends on the next date", () => {
  expect(wallTime(toInstant(day("2027-12-31"), 1440, "Europe/London"), "Europe/London")).toBe("2028-01-01T00:00");
});

test("refuses minutes out of range and zones that nobody knows", () => {
  for (const minutes of [-1, 1441, 0.5, Number.NaN])
    expect(() => toInstant(day("2027-01-11"), minutes, "Europe/London")).toThrow(RangeError);
  expect(() => toInstant(day("2027-01-11"), 0, "Mars/Olympus")).toThrow(RangeError);
});
