import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { percentFor } from "./reps-at-percent.ts";
import { REPS_SPREAD, repsSpread } from "./reps-at-percent-spread.ts";

const squat = () => repsSpread("back squat", 70)[0]!;

published("cooke2019", "squat at 70 %, mean less one SD", [
  ["worked", "14 − 4", () => squat().mean - squat().sd, 10, 0],
]);
published("cooke2019", "squat at 70 %, mean and one SD", [
  ["worked", "14 + 4", () => squat().mean + squat().sd, 18, 0],
]);
published("cooke2019", "squat at 70 %, most anybody did", [["printed", "range", () => squat().range!.to, 26, 0]]);

test("the copy is complete: 8 rows, means sum to 151.1, deviations to 46.9", () => {
  const sum = (values: readonly number[]) => Math.round(10 * values.reduce((total, value) => total + value, 0)) / 10;
  expect(REPS_SPREAD).toHaveLength(8);
  expect(sum(REPS_SPREAD.map((row) => row.mean))).toBe(151.1);
  expect(sum(REPS_SPREAD.map((row) => row.sd))).toBe(46.9);
});

test("a person one SD below the mean at 70 % does what the book prints for 75 %", () => {
  expect(percentFor(squat().mean - squat().sd)).toBe(75);
});

test("where nobody measured there is no row", () => {
  expect(repsSpread("back squat", 75)).toEqual([]);
  expect(repsSpread("leg press", Number.NaN)).toEqual([]);
  expect(repsSpread("leg press", 80).map((row) => row.who)).toEqual(["weightlifters", "runners"]);
});
