import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { TRUNK_HOLDS, trunkRatios } from "./trunk-hold-norms.ts";

const [men, women, adults] = TRUNK_HOLDS.map(trunkRatios) as [
  ReturnType<typeof trunkRatios>,
  ReturnType<typeof trunkRatios>,
  ReturnType<typeof trunkRatios>,
];

published("mcgill1999", "ratios of mean holds, seconds from memory", [
  ["worked", "men, flexor over extensor", () => men.flexorToExtensor, 0.986, 0.0005],
  ["worked", "women, flexor over extensor", () => women.flexorToExtensor, 0.788, 0.0005],
  ["worked", "men, right side over extensor", () => men.rightToExtensor, 0.644, 0.0005],
  ["worked", "women, right side over extensor", () => women.rightToExtensor, 0.381, 0.0005],
  ["worked", "men, left side over extensor", () => men.leftToExtensor, 0.664, 0.0005],
  ["worked", "women, left side over extensor", () => women.leftToExtensor, 0.407, 0.0005],
  ["worked", "men, right over left", () => men.rightToLeft, 0.969, 0.0005],
  ["worked", "women, right over left", () => women.rightToLeft, 0.935, 0.0005],
]);
published("anderson2014", "ratios of mean holds", [
  ["worked", "flexor over extensor", () => adults.flexorToExtensor, 1.58, 0.005],
  ["worked", "side over extensor", () => (adults.rightToExtensor + adults.leftToExtensor) / 2, 0.54, 0.005],
  ["worked", "right over left", () => adults.rightToLeft, 0.98, 0.005],
]);

test("sources disagree: the flexors are the shorter hold of one group and the longer of the other", () => {
  expect([men.flexorToExtensor < 1, adults.flexorToExtensor > 1]).toEqual([true, true]);
});

test("a time of nothing or unknown is refused", () => {
  const holds = TRUNK_HOLDS[0]!;
  for (const key of ["flexorS", "extensorS", "rightSideS", "leftSideS"] as const) {
    for (const value of [0, -1, Number.NaN]) expect(() => trunkRatios({ ...holds, [key]: value })).toThrow(RangeError);
  }
});
