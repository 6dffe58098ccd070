import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { instantOf, zoneBlock, zoneTime } from "./zone-block.ts";

const HOUR = 3_600_000;

/** Another library's reading of the block: the offset of a wall time, in hours. */
function offsetBy(zone: string, from: string, to: string, local: string): number {
  const text = ["BEGIN:VCALENDAR", ...zoneBlock(zone, Date.parse(from), Date.parse(to)), "END:VCALENDAR"].join("\r\n");
  const block = new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent("vtimezone")!;
  const read = new ICAL.Timezone(block);
  return read.utcOffset(ICAL.Time.fromDateTimeString(local)) / 3600;
}

describe("a block is read by another library (ical.js) as the zone's own clocks go", () => {
  // Directive 2000/84/EC: last Sundays of March and October, 01:00 UTC. US Energy Policy Act of 2005: second Sunday of
  // March, first of November. New Zealand turns the other way round the year; Lagos not at all; Nepal is 5:45 ahead.
  test.each([
    ["Europe/London", "2027-03-27T09:00:00", 0],
    ["Europe/London", "2027-03-29T09:00:00", 1],
    ["Europe/London", "2027-10-31T09:00:00", 0],
    ["America/New_York", "2027-03-13T09:00:00", -5],
    ["America/New_York", "2027-03-15T09:00:00", -4],
    ["Pacific/Auckland", "2027-02-01T09:00:00", 13],
    ["Pacific/Auckland", "2027-06-01T09:00:00", 12],
    ["Africa/Lagos", "2027-06-01T09:00:00", 1],
    ["Asia/Kathmandu", "2027-06-01T09:00:00", 5.75],
  ])("%s at %s is %d h ahead", (zone, local, wanted) => {
    expect(offsetBy(zone, "2027-01-04T00:00:00Z", "2027-12-20T00:00:00Z", local)).toBe(wanted);
  });
});

test("a span without a change has what holds, and no rule foretells anything", () => {
  const lines = zoneBlock("Europe/Vienna", Date.parse("2027-05-01T00:00:00Z"), Date.parse("2027-06-01T00:00:00Z"));
  expect(lines.filter((line) => line === "TZOFFSETTO:+0200")).toHaveLength(1);
  expect(lines).toContain("BEGIN:DAYLIGHT");
  expect(lines.join()).not.toContain("RRULE");
});

test("wall times and instants turn into one another; of an hour that comes twice the first is taken", () => {
  const start = Date.parse("2027-10-31T00:30:00Z");
  expect(zoneTime(start, "Europe/London")).toBe("20271031T013000");
  expect(instantOf("20271031T013000", "Europe/London")).toBe(start);
  expect(zoneTime(start + HOUR, "Europe/London")).toBe("20271031T013000");
});

test.each([
  ["20271031T0130", "Europe/London"],
  ["20271331T013000", "Europe/London"],
  ["20271031T013000", "Nowhere/Land"],
])("%s in %s is no time", (text, zone) => {
  expect(instantOf(text, zone)).toBeNaN();
});
