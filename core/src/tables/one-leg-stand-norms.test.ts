import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { ONE_LEG_FLOOR_S, oneLegStandMean } from "./one-leg-stand-norms.ts";

published("bohannon2006", "mean seconds on one leg, open eyes", [
  ["printed", "60–69", () => oneLegStandMean(65)!, 27, 0],
  ["printed", "70–79", () => oneLegStandMean(79)!, 17.2, 0],
  ["printed", "80–99", () => oneLegStandMean(80)!, 8.5, 0],
  ["printed", "floor", () => ONE_LEG_FLOOR_S, 5, 0],
]);

test("ages without a row are not judged", () => {
  expect(oneLegStandMean(59)).toBeUndefined();
  expect(oneLegStandMean(100)).toBeUndefined();
  expect(oneLegStandMean(Number.NaN)).toBeUndefined();
});
