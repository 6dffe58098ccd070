import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { LOAD_BANDS, loadBandsFor } from "./load-bands.ts";

const strength = () => loadBandsFor("strength", "advanced")[0]!;
published("haffTriplett2016", "strength, as restated", [
  ["printed", "per cent, from", () => strength().percent.from, 85, 0],
  ["printed", "repetitions, to", () => strength().reps.to, 6, 0],
  ["printed", "sets, from", () => strength().sets?.from ?? 0, 2, 0],
  ["printed", "sets, to", () => strength().sets?.to ?? 0, 6, 0],
  ["printed", "rest in s, from", () => strength().restS?.from ?? 0, 120, 0],
  ["printed", "rest in s, to", () => strength().restS?.to ?? 0, 300, 0],
]);

test("the copy is complete: 7 rows, the lower ends of the shares sum to 447, the upper to 597", () => {
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  expect(LOAD_BANDS).toHaveLength(7);
  expect(sum(LOAD_BANDS.map((band) => band.percent.from))).toBe(447);
  expect(sum(LOAD_BANDS.map((band) => band.percent.to))).toBe(597);
  expect(sum(LOAD_BANDS.map((band) => band.reps.from))).toBe(32);
  expect(sum(LOAD_BANDS.map((band) => band.restS?.from ?? 0))).toBe(690);
  expect(sum(LOAD_BANDS.map((band) => band.restS?.to ?? 0))).toBe(1500);
  for (const band of LOAD_BANDS) {
    expect(band.percent.from).toBeLessThan(band.percent.to);
    expect(band.reps.from).toBeLessThan(band.reps.to);
  }
});

test("sources disagree: a novice's strength work is 85 % or more in the handbook and 60 to 70 % in the stand", () => {
  expect(loadBandsFor("strength", "novice").map((band) => [band.source, band.percent.from])).toEqual([
    ["haffTriplett2016", 85],
    ["acsm2009", 60],
  ]);
  expect(loadBandsFor("strength", "advanced").map((band) => band.percent.from)).toEqual([85, 80]);
});

test("a goal without a printed band has none", () => {
  expect(loadBandsFor("general", "novice")).toEqual([]);
  expect(loadBandsFor("power", "novice").map((band) => band.kind)).toEqual(["single effort", "multiple effort"]);
});
