import { expect, test } from "vitest";
import { reckon } from "./index.ts";
import { readLoadList, readPlatePairs, readRatedMinutes } from "./load-list.ts";

test("a list of loads rises; a number without a unit has that of the next", () => {
  expect(readLoadList("2; 4; 6 kg")?.map(({ value }) => value)).toEqual([2, 4, 6]);
  expect(readLoadList("1–3 kg by 1, 12.5 kg")?.map(({ value }) => value)).toEqual([1, 2, 3, 12.5]);
  expect(readLoadList("6; 4 kg")).toBeUndefined();
});

test("plates are pairs, one where no number stands; at most 20 kinds", () => {
  expect(readPlatePairs("15 kg; 10 kg: 2")?.map(({ pairs }) => pairs)).toEqual([1, 2]);
  expect(readPlatePairs(Array(21).fill("1 kg").join("; "))).toBeUndefined();
});

test.each([
  ["60x7", [{ minutes: 60, effort: 7 }]],
  ["60 min at 7/10", [{ minutes: 60, effort: 7 }]],
  [
    "60x7; 20x3,5",
    [
      { minutes: 60, effort: 7 },
      { minutes: 20, effort: 3.5 },
    ],
  ],
  ["60x?", [{ minutes: 60 }]],
  ["rest", []],
  ["60x11", undefined],
  ["2000x5", undefined],
  ["hard", undefined],
])("%s", (text, wanted) => {
  expect(readRatedMinutes(text)).toEqual(wanted);
});

// foster1998: mean 1440 ÷ 7 = 205.7; the deviations of 420, 0, 420, 0, 420, 180, 0 with n − 1 are 210.3, with n 194.7.
test("a week of four sessions by both deviations; one that nobody rated makes it unknown and not smaller", () => {
  const told = (...days: readonly string[]) => reckon("week-load", days);
  const week = told("mon=60x7", "wed=60x7", "fri=60x7", "sat=45x4");
  const figure = (what: string) => week.ok && Number(week.value.figures.find((each) => each.what === what)?.value);
  expect(figure("week-monotony")).toBeCloseTo(0.978, 3);
  expect(figure("week-strain")).toBeCloseTo(1408.6, 1);
  expect(figure("week-monotony-all")).toBeCloseTo(1.0565, 4);
  expect(figure("week-strain-all")).toBeCloseTo(1521.4, 1);
  const silent = told("mon=60x7", "wed=60x?");
  expect(!silent.ok && silent.problems[0]?.allowed).toMatch(/Missing: the effort on wed/);
  expect(told().ok).toBe(false);
});
