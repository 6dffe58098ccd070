import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { PLANK_QUARTERS, plankQuarter, plankZ } from "./plank-norms.ts";

published("strand2014", "standard deviations over the mean", [
  ["worked", "man, 160 s", () => plankZ("man", 160), 0.5, 0.005],
  ["worked", "woman, 60 s", () => plankZ("woman", 60), -0.365, 0.0005],
]);

describe.each(PLANK_QUARTERS)(
  "brighamChase2014, printed: $sex, $who",
  ({ sex, who, quartersS: [first, middle, last] }) => {
    test("both ends of the middle half belong to it", () => {
      const at = (seconds: number) => plankQuarter(sex, seconds, who);
      expect([first - 0.1, first, middle, last, last + 0.1].map(at)).toEqual([
        "lowest quarter",
        "middle half",
        "middle half",
        "middle half",
        "highest quarter",
      ]);
    });
  },
);

test("the copy is complete: quarters of 4 groups sum to 297.5, 401 and 507", () => {
  const sums = [0, 1, 2].map((i) => PLANK_QUARTERS.reduce((sum, { quartersS }) => sum + quartersS[i as 0]!, 0));
  expect(sums).toEqual([297.5, 401, 507]);
});

test("sources disagree: a man at the mean of one table is in the middle half of the other", () => {
  expect([plankZ("man", 124), plankQuarter("man", 124)]).toEqual([0, "middle half"]);
});

test("refuses what is no time", () => {
  for (const seconds of [-1, 3601, Number.NaN]) {
    expect(() => plankQuarter("man", seconds)).toThrow(RangeError);
    expect(() => plankZ("man", seconds)).toThrow(RangeError);
  }
  expect([plankQuarter("woman", 0), plankQuarter("woman", 3600)]).toEqual(["lowest quarter", "highest quarter"]);
});
