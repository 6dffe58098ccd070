import { describe, expect, test } from "vitest";
import { chance } from "./chance.ts";
import { meanOf, ratioOf } from "./estimates.ts";

describe("drawing people again", () => {
  const values = Array.from({ length: 400 }, (_, person) => chance(3, person).normal(2) + 5);
  test("the 95 % interval of a mean is about as wide as 1.96 standard errors to each side (identity)", () => {
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const sd = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
    const found = meanOf(values, 1)!;
    expect(found.value).toBeCloseTo(mean, 12);
    expect(found.n).toBe(400);
    const wide = (2 * 1.96 * sd) / Math.sqrt(values.length);
    expect((found.high - found.low) / wide).toBeGreaterThan(0.87);
    expect((found.high - found.low) / wide).toBeLessThan(1.13);
    expect(found.low).toBeLessThan(mean);
    expect(found.high).toBeGreaterThan(mean);
  });
  test("a ratio is that of the sums, and has no width when everybody has the same", () => {
    const parts = [
      [1, 2],
      [2, 4],
      [5, 10],
    ] as const;
    expect(ratioOf(parts, 1)).toEqual({ value: 0.5, low: 0.5, high: 0.5, n: 3 });
    expect(ratioOf([[1, 1] as const, [3, 1] as const], 1)!.value).toBe(2);
  });
  test("nothing below the line is no ratio; the same seed draws the same", () => {
    expect(ratioOf([[1, 0]], 1)).toBeUndefined();
    expect(ratioOf([], 1)).toBeUndefined();
    expect(meanOf(values, 2)).toEqual(meanOf(values, 2));
    expect(meanOf(values, 2)).not.toEqual(meanOf(values, 3));
  });
});
