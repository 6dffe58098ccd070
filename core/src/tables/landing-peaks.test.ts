import { expect, test } from "vitest";
import { LANDING_PEAKS } from "./landing-peaks.ts";

test("the copy is complete: 4 landings, peaks sum to 14.64 body weights", () => {
  expect(LANDING_PEAKS.rows.reduce((sum, { bodyWeights }) => sum + bodyWeights, 0)).toBeCloseTo(14.64, 9);
});

test("wallace2010, printed: the long jump lands harder than a drop from 30 cm", () => {
  const peak = (id: string) => LANDING_PEAKS.rows.find(({ exercise }) => exercise === id)?.bodyWeights ?? 0;
  expect(peak("standing-long-jump")).toBeGreaterThan(peak("drop-jump-30"));
  expect([peak("standing-long-jump"), peak("drop-jump-30")]).toEqual([4.22, 2.78]);
});
