import { expect, test } from "vitest";
import { placeIn, startsOf } from "./csv-row.ts";

// RFC 4180: commas and line breaks inside quotes belong to the field, a quote is written twice.
test("fields begin after commas that stand outside quotes", () => {
  const raw = 'ann,"a, ""b""",,7';
  expect(startsOf({ raw })).toEqual([0, 4, 15, 16]);
  expect(startsOf({ raw: "" })).toEqual([0]);
});

test("a place in a row is a line and a column of the file, counted from 1", () => {
  const row = { fields: [], raw: 'ann,"two\nlines",x', line: 12 };
  expect(placeIn(row, 0)).toEqual({ line: 12, column: 1 });
  expect(placeIn(row, 4)).toEqual({ line: 12, column: 5 });
  expect(placeIn(row, 9)).toEqual({ line: 13, column: 1 });
  expect(placeIn(row, 16)).toEqual({ line: 13, column: 8 });
});
