import { expect, test } from "vitest";
import { brzyckiTimes, epleyTimes } from "../equations/index.ts";
import { published } from "../testing/index.ts";
import { percentFor } from "./reps-at-percent.ts";
import { RESERVE_SCALE, reserveMark } from "./reserve-scale.ts";

const left = (rating: number) => () => reserveMark(rating)?.left?.from ?? Number.NaN;
const most = (rating: number) => () => reserveMark(rating)?.left?.to ?? Number.NaN;

published("zourdos2016", "repetitions left at a rating", [
  ["printed", "10", left(10), 0, 0],
  ["printed", "9", left(9), 1, 0],
  ["printed", "8, and so on", left(8), 2, 0],
  ["printed", "7, and so on", left(7), 3, 0],
]);
published("helms2016", "most repetitions left at a rating, restated", [
  ["printed", "9.5: no more repetitions, a little more load", most(9.5), 0, 0],
  ["printed", "8.5", most(8.5), 2, 0],
  ["printed", "7.5", most(7.5), 3, 0],
  ["printed", "5 to 6", most(6), 6, 0],
]);
// Done and left together are repetitions to failure; the book's share, and two equations turned round.
const all = (reps: number, rating: number) => reps + reserveMark(rating)!.left!.from;
published("nscaEssentialsTable", "per cent for a set at a rating", [
  ["worked", "5 at 8", () => percentFor(all(5, 8)) ?? 0, 83, 0],
  ["worked", "8 at 9", () => percentFor(all(8, 9)) ?? 0, 77, 0],
  ["worked", "3 at 7", () => percentFor(all(3, 7)) ?? 0, 85, 0],
  ["worked", "1RM of 100 kg, 5 at 8", () => 10_000 / (percentFor(all(5, 8)) ?? 0), 120.5, 0.05],
]);
published("epley1985", "per cent for a set at a rating", [
  ["worked", "5 at 8", () => 100 / epleyTimes(all(5, 8)), 81.08, 0.005],
  ["worked", "8 at 9", () => 100 / epleyTimes(all(8, 9)), 76.92, 0.005],
  ["worked", "3 at 7", () => 100 / epleyTimes(all(3, 7)), 83.33, 0.005],
]);
published("brzycki1993", "per cent for a set at a rating", [
  ["worked", "5 at 8", () => 100 / brzyckiTimes(all(5, 8)), 83.33, 0.005],
  ["worked", "8 at 9", () => 100 / brzyckiTimes(all(8, 9)), 77.78, 0.005],
  ["worked", "3 at 7", () => 100 / brzyckiTimes(all(3, 7)), 86.11, 0.005],
]);

test("the copy is complete: 10 marks, ratings from 10 down to 1, none twice", () => {
  expect(RESERVE_SCALE.length).toBe(10);
  expect(RESERVE_SCALE.reduce((sum, { rating }) => sum + rating.from + rating.to, 0)).toBe(140);
  expect(RESERVE_SCALE.map(({ rating }) => rating.from)).toEqual([10, 9.5, 9, 8.5, 8, 7.5, 7, 5, 3, 1]);
});

test("a rating that is not on the scale says nothing", () => {
  for (const rating of [0, 11, 6.5, 5.5, 8.25, Number.NaN]) expect(reserveMark(rating)).toBeUndefined();
  expect(reserveMark(4)?.left).toBeUndefined();
  expect(reserveMark(9.5)?.loadLeft).toBe(true);
});
