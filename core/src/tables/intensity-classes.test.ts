import { describe, expect, test } from "vitest";
import { pulseReserve } from "../equations/index.ts";
import { INTENSITIES, INTENSITY_CUTS, type IntensityMeasure, intensityOf } from "./intensity-classes.ts";

/** The table as printed: measure, then the whole numbers of each class from light on. */
const PRINTED: readonly (readonly [IntensityMeasure, readonly (readonly [number, number])[]])[] = [
  [
    "% reserve",
    [
      [30, 39],
      [40, 59],
      [60, 89],
      [90, 100],
    ],
  ],
  [
    "% highest heart rate",
    [
      [57, 63],
      [64, 76],
      [77, 95],
      [96, 100],
    ],
  ],
  [
    "% highest uptake",
    [
      [37, 45],
      [46, 63],
      [64, 90],
      [91, 100],
    ],
  ],
  [
    "rating 6–20",
    [
      [9, 11],
      [12, 13],
      [14, 17],
      [18, 20],
    ],
  ],
  [
    "METs",
    [
      [2, 2.9],
      [3, 5.9],
      [6, 8.7],
      [8.8, 30],
    ],
  ],
];

describe.each(PRINTED)("garber2011, printed: %s", (measure, classes) => {
  test("both ends of every class, and what lies under the first", () => {
    classes.forEach(([from, to], i) => {
      expect(intensityOf(measure, from)).toBe(INTENSITIES[i + 1]);
      expect(intensityOf(measure, to)).toBe(INTENSITIES[i + 1]);
    });
    expect(intensityOf(measure, classes[0]![0] - 0.01)).toBe("very light");
    expect(intensityOf(measure, 0)).toBe("very light");
  });

  test("nothing falls between two classes, and beyond the scale is refused", () => {
    for (const [i, [from]] of classes.slice(1).entries())
      expect(intensityOf(measure, from - 0.01)).toBe(INTENSITIES[i + 1]);
    for (const value of [-0.01, classes.at(-1)![1] + 0.01, Number.NaN])
      expect(() => intensityOf(measure, value)).toThrow(RangeError);
  });
});

test("garber2011, printed: 60 % of the reserve is vigorous; 130 beats at 40 years are moderate by either measure", () => {
  expect(intensityOf("% reserve", 60)).toBe("vigorous");
  const reserve = 100 * pulseReserve({ bpm: 180, measured: false }, 60, 130);
  expect(reserve.toFixed(1)).toBe("58.3");
  expect(((100 * 130) / 180).toFixed(1)).toBe("72.2");
  expect([intensityOf("% reserve", reserve), intensityOf("% highest heart rate", (100 * 130) / 180)]).toEqual([
    "moderate",
    "moderate",
  ]);
});

test("the copy is complete: the cuts sum to 220, 294, 238, 53 and 19.8", () => {
  const sums = Object.values(INTENSITY_CUTS.from).map((cuts) => cuts.reduce((sum, cut) => sum + cut, 0));
  expect(sums).toEqual([220, 294, 238, 53, 19.8]);
});
