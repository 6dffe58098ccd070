import { describe, expect, test } from "vitest";
import type { Foretold } from "./forecasts.ts";
import { intervalScore, judgeForecasts, judgeIntervals } from "./judge-forecasts.ts";

const around = (middle: number, reach: number) => ({
  middle,
  low: middle * Math.exp(-reach),
  high: middle * Math.exp(reach),
});
/** Of two people, 15 forecasts each: ours 1 % too high, the average 2 % too low. */
const told = [1, 2].flatMap((person) =>
  Array.from(
    { length: 15 },
    (_, before): Foretold => ({
      person,
      before,
      truth: 100,
      ours: around(100 * Math.exp(0.01), 0.02),
      average: around(100 * Math.exp(-0.02), 0.01),
      sure: undefined,
      change: undefined,
    }),
  ),
);

describe("gneitingRaftery2007: interval score, per cent of the logarithm", () => {
  test("its width while the truth lies within, and ten times the distance outside", () => {
    expect(intervalScore(around(100, 0.05), 100)).toBeCloseTo(10, 9);
    expect(intervalScore(around(100, 0.05), 100 * Math.exp(0.06))).toBeCloseTo(10 + 10, 9);
    expect(intervalScore(around(100, 0.05), 100 * Math.exp(-0.07))).toBeCloseTo(10 + 20, 9);
  });
});

describe("forecasts", () => {
  test("error, bias and their ratio", () => {
    const { error, bias, ratio, sessions } = judgeForecasts(told, 1)!;
    expect(sessions).toBe(30);
    expect([error.ours.value, error.average.value]).toEqual([expect.closeTo(1, 9), expect.closeTo(2, 9)]);
    expect([bias.ours.value, bias.average.value]).toEqual([expect.closeTo(1, 9), expect.closeTo(-2, 9)]);
    expect(ratio.value).toBeCloseTo(0.5, 9);
    expect(ratio.n).toBe(2);
  });
  test("only sessions of which both said something count, and silence is told", () => {
    const silent = told.map((one, at) => (at % 3 === 0 ? { ...one, ours: undefined } : one));
    const { sessions, unsaid } = judgeForecasts(silent, 1)!;
    expect([sessions, unsaid.ours, unsaid.average]).toEqual([20, 1 / 3, 0]);
    expect(judgeForecasts([], 1)).toBeUndefined();
    expect(
      judgeForecasts(
        told.map((one) => ({ ...one, average: undefined })),
        1,
      ),
    ).toBeUndefined();
  });
});

describe("intervals", () => {
  test("from the eleventh forecast on", () => {
    const { sessions, covers, width, scores, score } = judgeIntervals(told, 1)!;
    expect(sessions).toBe(10);
    expect([covers.ours.value, covers.average.value]).toEqual([1, 0]);
    expect([width.ours.value, width.average.value]).toEqual([expect.closeTo(4, 9), expect.closeTo(2, 9)]);
    // Ours 4 wide and never out; the average 2 wide and 1 out, ten times.
    expect([scores.ours.value, scores.average.value]).toEqual([expect.closeTo(4, 9), expect.closeTo(12, 9)]);
    expect(score.value).toBeCloseTo(4 / 12, 9);
    expect(
      judgeIntervals(
        told.filter(({ before }) => before < 10),
        1,
      ),
    ).toBeUndefined();
  });
});
