import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { CHAIR_STAND_NORMS, chairStandNorm } from "./chair-stand-norms.ts";

published("rikliJones1999", "below average under", [
  ["printed", "men 60–64", () => chairStandNorm(60, "man")!.from, 14, 0],
  ["printed", "men 75–79", () => chairStandNorm(76, "man")!.from, 11, 0],
  ["printed", "men 90–94", () => chairStandNorm(94, "man")!.from, 7, 0],
  ["printed", "women 70–74", () => chairStandNorm(72, "woman")!.from, 10, 0],
  ["printed", "women 90–94", () => chairStandNorm(90, "woman")!.from, 4, 0],
  ["printed", "women 60–64, upper", () => chairStandNorm(64, "woman")!.to, 17, 0],
]);

test("seven bands of five years without a gap; sums guard against a slip", () => {
  expect(CHAIR_STAND_NORMS.map(({ from, to }) => [from, to])).toEqual([
    [60, 64],
    [65, 69],
    [70, 74],
    [75, 79],
    [80, 84],
    [85, 89],
    [90, 94],
  ]);
  const sum = (pick: (band: (typeof CHAIR_STAND_NORMS)[number]) => number) =>
    CHAIR_STAND_NORMS.reduce((total, band) => total + pick(band), 0);
  expect([sum((b) => b.men.from), sum((b) => b.men.to), sum((b) => b.women.from), sum((b) => b.women.to)]).toEqual([
    74, 112, 64, 101,
  ]);
});

test("ages without a row are not judged", () => {
  expect(chairStandNorm(59, "man")).toBeUndefined();
  expect(chairStandNorm(95, "woman")).toBeUndefined();
  expect(chairStandNorm(Number.NaN, "woman")).toBeUndefined();
});
