import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, day, printDay } from "../day.ts";
import type { Away } from "../model/index.ts";
import { madeUpPerson } from "../testing/index.ts";
import { notAsUsual, weeksOf } from "./weeks-of.ts";

const MONDAY = day("2027-03-01");
const at = (from: number, to: number): { from: Away["from"]; to: Away["to"] } => ({
  from: addDays(MONDAY, from),
  to: addDays(MONDAY, to),
});
const waits = (from: number, to: number): Away => ({ ...at(from, to), waits: true });
const told = (away: readonly Away[], count: number, cycle?: number) =>
  weeksOf(
    madeUpPerson({ away, ...(cycle === undefined ? {} : { cycle: { length: cycle, anchor: MONDAY, days: [] } }) }),
    MONDAY,
    count,
  ).map(({ first, last }) => [first - MONDAY, last - MONDAY]);

test("weeks follow each other: seven days, or those of the rota, whoever is away", () => {
  expect(told([], 3)).toEqual([
    [0, 6],
    [7, 13],
    [14, 20],
  ]);
  expect(told([at(3, 12)], 2)).toEqual([
    [0, 6],
    [7, 13],
  ]);
  expect(told([], 2, 9)).toEqual([
    [0, 8],
    [9, 17],
  ]);
  expect(told([], 0)).toEqual([]);
});

test("a plan that waits nine days from a Wednesday on has four days of that week left afterwards", () => {
  expect(told([waits(9, 17)], 3)).toEqual([
    [0, 6],
    [7, 22],
    [23, 29],
  ]);
});

test("between two weeks neither is cut; before the first it begins later; days said twice wait once", () => {
  expect(told([waits(7, 9)], 2)).toEqual([
    [0, 6],
    [10, 16],
  ]);
  expect(told([waits(-3, 1), waits(0, 1)], 1)).toEqual([[2, 8]]);
});

test("law: every week has its number of days that do not wait, none is in two weeks, and none is lost", () => {
  const any = fc.record({ from: fc.integer({ min: -5, max: 40 }), length: fc.integer({ min: 1, max: 12 }) });
  fc.assert(
    fc.property(
      fc.array(any, { maxLength: 4 }),
      fc.integer({ min: 1, max: 6 }),
      fc.integer({ min: 2, max: 9 }),
      (list, count, length) => {
        const away = list.map((one) => waits(one.from, one.from + one.length - 1));
        const isWaiting = (n: number) => list.some((one) => one.from <= n && n < one.from + one.length);
        const weeks = told(away, count, length) as [number, number][];
        let next = 0;
        for (const [first, last] of weeks) {
          for (; next < first; next++) expect(isWaiting(next)).toBe(true);
          const days = Array.from({ length: last - first + 1 }, (_, n) => first + n).filter((n) => !isWaiting(n));
          expect(days).toHaveLength(length);
          expect([days[0], days.at(-1)]).toEqual([first, last]);
          next = last + 1;
        }
      },
    ),
    { seed: 7 },
  );
});

test("what is not as usual is told in the order of its days, if it touches those asked about", () => {
  const person = madeUpPerson({
    away: [waits(20, 28), at(5, 5), at(40, 41)],
    instead: [{ ...at(0, 13), windows: [] }],
  });
  const found = notAsUsual(person, MONDAY, addDays(MONDAY, 20));
  expect(found.map(({ code, data }) => [code, data["from"], data["days"]])).toEqual([
    ["calendar/other-hours", "2027-03-01", 14],
    ["calendar/away", "2027-03-06", 1],
    ["calendar/waits", printDay(addDays(MONDAY, 20)), 9],
  ]);
  expect(notAsUsual(person, addDays(MONDAY, 29), addDays(MONDAY, 39))).toEqual([]);
});
