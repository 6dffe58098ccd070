import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { ACTIVITY_METS, metsByCode } from "./activity-mets.ts";

const mets =
  (code: string, edition: "in2011" | "in2024" = "in2024") =>
  () =>
    metsByCode(code, edition) ?? Number.NaN;

published("herrmann2024", "METs by code, one extraction of the list", [
  ["printed", "01210 stationary, 25–30 W", mets("01210"), 3.5, 0],
  ["printed", "02054 several exercises", mets("02054"), 3.5, 0],
  ["printed", "02050 vigorous", mets("02050"), 6, 0],
  // A copy of the list that was cut to one digit before the point would give 9.9 here.
  ["printed", "01248 over 325 W", mets("01248"), 16.3, 0],
]);
published("ainsworth2011", "METs by code, copies of the list", [
  ["printed", "02068 rope skipping", mets("02068", "in2011"), 12.3, 0],
  ["printed", "17190 walking 3 mph", mets("17190", "in2011"), 3.5, 0],
]);

test("the copy is complete: 44 rows, 21 of 2011 that sum to 123.1, 44 of 2024 that sum to 328.0", () => {
  const { rows } = ACTIVITY_METS;
  const sum = (edition: "in2011" | "in2024") => rows.reduce((total, row) => total + (row[edition]?.mets ?? 0), 0);
  expect([rows.length, rows.filter((row) => row.in2011).length, rows.filter((row) => row.in2024).length]).toEqual([
    44, 21, 44,
  ]);
  expect([sum("in2011"), sum("in2024")].map((total) => total.toFixed(1))).toEqual(["123.1", "328.0"]);
  const codes = rows.flatMap(({ in2024 }) => (in2024 ? [in2024.code] : []));
  expect(new Set(codes).size).toBe(codes.length);
});

test("no row, no answer", () => {
  expect(metsByCode("99999")).toBeUndefined();
  expect(metsByCode("02058", "in2011")).toBeUndefined();
});
