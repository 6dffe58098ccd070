import { expect, test } from "vitest";
import { bandEndIn, loadIn, printDate, printDuration, printHours, printLoad, printMinutes } from "./units.ts";

test("loads keep their own unit and up to three decimals", () => {
  expect(printLoad({ value: 12.5, unit: "kg" })).toBe("12.5 kg");
  expect(printLoad({ value: 0.125, unit: "lb" })).toBe("0.125 lb");
});

test("a load that travels as data; anything else is none", () => {
  expect(loadIn({ load: { value: 10, unit: "lb" } }, "load")).toBe("10 lb");
  const others = [null, 10, [10], { value: "10", unit: "kg" }, { value: 10, unit: "stone" }];
  for (const load of others) expect(loadIn({ load }, "load")).toBeUndefined();
  expect(loadIn({}, "load")).toBeUndefined();
});

test("the ends of a reckoned band are whole, and the band never shrinks", () => {
  const band = { low: { value: 311.375, unit: "lb" }, high: { value: 328.679, unit: "lb" } };
  expect([bandEndIn(band, "low"), bandEndIn(band, "high")]).toEqual(["311 lb", "329 lb"]);
  expect(bandEndIn({ low: { value: 60, unit: "kg" } }, "low")).toBe("60 kg");
  expect(bandEndIn({}, "low")).toBeUndefined();
});

test("minutes are rounded up, durations are exact", () => {
  expect([printMinutes(4320), printMinutes(4321), printMinutes(0)]).toEqual(["72 min", "73 min", "0 min"]);
  expect([45, 90, 300, 4200, 3601, 0].map(printDuration)).toEqual([
    "45 s",
    "1 min 30 s",
    "5 min",
    "1 h 10 min",
    "1 h 1 s",
    "0 s",
  ]);
  expect(printDuration(Number.NaN)).toBe("?");
  expect(printHours(46.54)).toBe("46.5 h");
});

test("dates in words with their weekday, as the platform's own calendar has it", () => {
  const platform = new Intl.DateTimeFormat("en-GB", { dateStyle: "full", timeZone: "UTC" });
  for (const date of ["2027-03-02", "2024-02-29", "2026-12-31", "1999-01-01"]) {
    expect(printDate(date)).toBe(platform.format(new Date(`${date}T00:00:00Z`)).replace(",", ""));
  }
  expect(printDate("soon")).toBe("soon");
});
