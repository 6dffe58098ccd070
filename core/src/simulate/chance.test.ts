import { describe, expect, test } from "vitest";
import { chance } from "./chance.ts";

const DRAWS = 20_000;
const many = (draw: (key: number) => number) => Array.from({ length: DRAWS }, (_, key) => draw(key));
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const sd = (values: readonly number[]) => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));

test("the same keys draw the same, others differ", () => {
  expect(chance(1, 2, 3).even(0, 1)).toBe(chance(1, 2, 3).even(0, 1));
  expect(new Set([chance(1, 2, 3), chance(1, 3, 2), chance(2, 2, 3), chance(1, 2)].map((c) => c.even(0, 1))).size).toBe(
    4,
  );
});

describe("identities of the distributions, within five standard errors", () => {
  test("even on [0, 1): mean 1/2, sd 1/√12", () => {
    const values = many((key) => chance(7, key).even(0, 1));
    expect(Math.abs(mean(values) - 0.5)).toBeLessThan((5 / Math.sqrt(12 * DRAWS)) * 1);
    expect(Math.abs(sd(values) - 1 / Math.sqrt(12))).toBeLessThan(0.01);
    expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...values)).toBeLessThan(1);
  });
  test("normal: mean 0, sd as asked, 68.3 % within one sd", () => {
    const values = many((key) => chance(11, key).normal(3));
    expect(Math.abs(mean(values))).toBeLessThan((5 * 3) / Math.sqrt(DRAWS));
    expect(Math.abs(sd(values) - 3)).toBeLessThan(0.08);
    expect(Math.abs(values.filter((value) => Math.abs(value) < 3).length / DRAWS - 0.6827)).toBeLessThan(0.017);
  });
  test("happens: as often as asked", () => {
    const share = many((key) => Number(chance(13, key).happens(0.08)));
    expect(Math.abs(mean(share) - 0.08)).toBeLessThan(0.01);
  });
});
