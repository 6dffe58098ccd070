import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { printRangeCell, readRangeCell } from "./turned-range.ts";

describe("im-01: ranges that a spreadsheet has turned into dates (known fault of spreadsheets)", () => {
  test.each([
    ["12-Aug", 8, 12, true],
    ["12-Oct", 10, 12, true],
    ["5-Mar", 3, 5, true],
    ["8", 8, 8, false],
    ["6-Apr", 4, 6, true],
    ["15-20", 15, 20, false],
    ["12-Jun", 6, 12, true],
    ["2027-08-10", 8, 10, true],
    ["46244", 8, 10, true],
  ] as const)("%s is %d to %d", (text, from, to, turned) => {
    expect(readRangeCell(text)).toEqual({ kind: "range", from, to, turned });
  });
});

describe("neighbours that differ", () => {
  test.each([
    ["Aug-12", 8, 12, true],
    ["8 to 12", 8, 12, false],
    ["8–12", 8, 12, false],
    ["100-120", 100, 120, false],
    ["36526", 1, 1, true],
  ] as const)("%s is %d to %d", (text, from, to, turned) => {
    expect(readRangeCell(text)).toEqual({ kind: "range", from, to, turned });
  });
  test.each(["12-8", "12-Foo", "32-Aug", "0-Aug", "2027-02-30", "36525", "73051", "ten", ""])(
    "%s is left as it is",
    (text) => {
      expect(readRangeCell(text)).toEqual({ kind: "other", text });
    },
  );
});

test("what is written out comes back untouched", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 100 }), (from, more) => {
      expect(readRangeCell(printRangeCell(from, from + more))).toEqual({
        kind: "range",
        from,
        to: from + more,
        turned: false,
      });
    }),
  );
});
