import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { reserveOf } from "./dose-effort.ts";

published("zourdos2016", "repetitions in reserve at a rating", [
  ["printed", "rating 10", () => reserveOf(10).from, 0, 0],
  ["printed", "rating 9", () => reserveOf(9).from, 1, 0],
  ["worked", "10 less rating 8", () => reserveOf(8).from, 2, 0],
  ["worked", "10 less rating 7", () => reserveOf(7).to, 3, 0],
]);

test("half a rating lies between two reserves, above 9 none is left", () => {
  expect([9.5, 8.5, 7.5].map(reserveOf)).toEqual([
    { from: 0, to: 0 },
    { from: 1, to: 2 },
    { from: 2, to: 3 },
  ]);
});
