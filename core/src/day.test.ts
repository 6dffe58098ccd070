import fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { addDays, ageOn, civil, type Day, day, parseDay, printDay, WEEKDAYS, weekdayOf } from "./day.ts";

const EPOCH = Temporal.PlainDate.from("1970-01-01");
const YEAR_0 = day("0000-01-01");
const YEAR_9999 = day("9999-12-31");
const anyDay = fc.integer({ min: YEAR_0, max: YEAR_9999 }).map((n) => n as Day);

test("every day of a whole 400-year cycle agrees with Temporal's calendar, one by one", () => {
  let outside = Temporal.PlainDate.from("1899-12-31");
  const first = day("1899-12-31");
  for (let n = 0; n <= 146_097; n++) {
    const ours = civil((first + n) as Day);
    if (ours.year !== outside.year || ours.month !== outside.month || ours.date !== outside.day) {
      expect(printDay((first + n) as Day)).toBe(outside.toString());
    }
    outside = outside.add({ days: 1 });
  }
  expect(outside.toString()).toBe("2300-01-01");
  expect(printDay((first + 146_097) as Day)).toBe("2299-12-31");
});

test("days from the year 0000 to 9999 have Temporal's number, weekday and print", () => {
  fc.assert(
    fc.property(anyDay, (value) => {
      const outside = EPOCH.add({ days: value });
      expect(printDay(value)).toBe(outside.toString());
      expect(parseDay(outside.toString())).toBe(value);
      expect(WEEKDAYS.indexOf(weekdayOf(value)) + 1).toBe(outside.dayOfWeek);
    }),
  );
});

test("reads exactly the dates that Temporal reads", () => {
  const two = (n: number) => String(n).padStart(2, "0");
  const part = fc.integer({ min: 0, max: 99 });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 9999 }), part, part, (year, month, date) => {
      const text = `${String(year).padStart(4, "0")}-${two(month % 16)}-${two(date % 34)}`;
      let outside: number | undefined;
      try {
        outside = EPOCH.until(Temporal.PlainDate.from(text)).days;
      } catch {
        outside = undefined;
      }
      expect(parseDay(text)).toBe(outside);
    }),
    { numRuns: 2000 },
  );
});

test("leap years: 2000 and 2024 have a 29 February, 1900, 2023 and 2100 have none", () => {
  expect(["2000", "2024", "0000"].map((year) => parseDay(`${year}-02-29`) !== undefined)).toEqual([true, true, true]);
  expect(["1900", "2023", "2100"].map((year) => parseDay(`${year}-02-29`))).toEqual([undefined, undefined, undefined]);
});

test("what is no date is not read", () => {
  for (const text of [
    "",
    "2027-3-28",
    "2027-03-28 ",
    "2027-03-28\n",
    "28-03-2027",
    "2027-02-30",
    "2027-13-01",
    "2027-00-10",
    "2027-04-31",
    "2027-01-00",
    "+02027-03-28",
    "２０２７-03-28",
    "2027/03/28",
    "20270328",
  ]) {
    expect(parseDay(text), text).toBeUndefined();
    expect(() => day(text)).toThrow(RangeError);
  }
});

test("days are added whatever the clocks do: the last Sunday of March is followed by Monday", () => {
  expect(printDay(addDays(day("2027-03-27"), 1))).toBe("2027-03-28");
  expect(weekdayOf(day("2027-03-28"))).toBe("sun");
  expect(printDay(addDays(day("2024-02-28"), 1))).toBe("2024-02-29");
  expect(printDay(addDays(day("2024-12-31"), 1))).toBe("2025-01-01");
  expect(printDay(addDays(day("1970-01-01"), -1))).toBe("1969-12-31");
  expect(weekdayOf(day("1969-12-31"))).toBe("wed");
});

test("four digits cannot say a day before the year 0000 or after 9999", () => {
  expect(printDay(YEAR_0)).toBe("0000-01-01");
  expect(printDay(YEAR_9999)).toBe("9999-12-31");
  for (const value of [addDays(YEAR_0, -1), addDays(YEAR_9999, 1), 0.5 as Day, Number.NaN as Day]) {
    expect(() => printDay(value)).toThrow(RangeError);
  }
});

test("whole years of age agree with Temporal, except that a leap-day birthday falls on 1 March", () => {
  fc.assert(
    fc.property(anyDay, fc.integer({ min: 0, max: 45_000 }), (born, later) => {
      fc.pre(born + later <= YEAR_9999);
      const on = addDays(born, later);
      const since = EPOCH.add({ days: born }).until(EPOCH.add({ days: on }), { largestUnit: "years" }).years;
      const today = civil(on);
      const waits = civil(born).month === 2 && civil(born).date === 29 && today.month === 2 && today.date === 28;
      expect(ageOn(born, on)).toBe(
        waits && parseDay(`${printDay(on).slice(0, 4)}-02-29`) === undefined ? ageOn(born, addDays(on, -1)) : since,
      );
    }),
  );
});

test("birthdays", () => {
  expect(ageOn(day("2008-02-29"), day("2026-02-28"))).toBe(17);
  expect(ageOn(day("2008-02-29"), day("2026-03-01"))).toBe(18);
  expect(ageOn(day("2008-02-29"), day("2028-02-29"))).toBe(20);
  expect(ageOn(day("2011-11-25"), day("2026-11-24"))).toBe(14);
  expect(ageOn(day("2011-11-25"), day("2026-11-25"))).toBe(15);
  expect(ageOn(day("2026-11-25"), day("2026-11-24"))).toBe(-1);
});
