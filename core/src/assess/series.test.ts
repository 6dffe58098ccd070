import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { TestResult } from "./result.ts";
import { seriesOf } from "./series.ts";

const BORN = day("1951-01-01");
const chair = (on: string, value: number, conditions: TestResult["conditions"] = {}): TestResult => ({
  test: "chair-stand-30",
  on: day(on),
  value,
  conditions,
});

describe("mo-05: a man of 76 in three chair stands (handbook)", () => {
  const [series] = seriesOf({
    born: BORN,
    sex: "man",
    results: [
      chair("2027-04-12", 12, { seat: "other" }),
      chair("2027-01-18", 9, { arms: "used" }),
      chair("2027-03-01", 9),
    ],
  });
  const results = series!.results;
  test("0, 9 and not comparable, by day", () => {
    expect(results.map(({ score }) => score)).toEqual([{ value: 0 }, { value: 9 }, { value: 12 }]);
    expect(results[1]!.change).toEqual({ since: day("2027-01-18"), value: 9 });
    expect(results[2]!.change).toBeUndefined();
  });
  test("why: the arms, the chair, and under 11 at this age", () => {
    const codes = results.map(({ notes }) => notes.map(({ code }) => code));
    expect(codes[0]).toContain("assess/arms-score-zero");
    expect(codes[1]).toEqual(["assess/below-average"]);
    expect(codes[2]).toContain("assess/other-conditions");
  });
  test("eight full stands and more than half-way up at the end score nine, and compare with seated ends", () => {
    const half = { end: "more than half-way up" };
    const [ended] = seriesOf({
      born: BORN,
      sex: "man",
      results: [
        chair("2027-03-01", 8, half),
        chair("2027-04-12", 10),
        chair("2027-05-24", 8, { ...half, arms: "used" }),
      ],
    });
    expect(ended!.results.map(({ score }) => score)).toEqual([{ value: 9 }, { value: 10 }, { value: 0 }]);
    expect(ended!.results[0]!.notes.map(({ code }) => code)).toContain("assess/half-way-counts");
    expect(ended!.results[1]!.change).toEqual({ since: day("2027-03-01"), value: 1 });
  });
  test("the next one on the first chair is compared with the last on it", () => {
    const [again] = seriesOf({
      born: BORN,
      results: [chair("2027-03-01", 9), chair("2027-04-12", 12, { seat: "other" }), chair("2027-05-24", 11)],
    });
    expect(again!.results[2]!.change).toEqual({ since: day("2027-03-01"), value: 2 });
  });
});

test("sides stay apart: the gap, each change, the norm by the weaker", () => {
  const stand = (on: string, left: number, right: number): TestResult => ({
    test: "one-leg-stand",
    on: day(on),
    left,
    right,
    conditions: {},
  });
  const [series] = seriesOf({ born: BORN, results: [stand("2027-01-18", 6.1, 12), stand("2027-03-01", 8.4, 12)] });
  expect(series!.results[1]).toMatchObject({
    gap: { weaker: "left", gapPercent: 30 },
    change: { since: day("2027-01-18"), right: 0 },
  });
  expect((series!.results[1]!.change as { left: number }).left).toBeCloseTo(2.3, 9);
  const [none] = seriesOf({ born: BORN, results: [stand("2027-01-18", 0, 0)] });
  expect(none!.results[0]!.gap).toBeUndefined();
});

test("ewgsop2019: grip is judged by the better hand", () => {
  const grip = (left: number, right: number): TestResult => ({
    test: "grip",
    on: day("2027-01-18"),
    left,
    right,
    conditions: {},
  });
  const codes = (result: TestResult) =>
    seriesOf({ born: BORN, sex: "woman", results: [result] })[0]!.results[0]!.notes.map(({ data }) => data["source"]);
  expect(codes(grip(15.5, 18))).toEqual([]);
  expect(codes(grip(15.5, 17.9))).toEqual(["awgs2019"]);
  expect(codes(grip(15.9, 14))).toEqual(["ewgsop2019", "awgs2019"]);
});

test("nothing tested, nothing said", () => {
  expect(seriesOf({ born: BORN, results: [] })).toEqual([]);
});
