import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { MOVED_FORMS, movedShare, SEGMENT_MASSES, SEGMENTS, type SegmentMasses } from "./segment-masses.ts";

const total = ({ share }: SegmentMasses) =>
  SEGMENTS.reduce((sum, segment) => sum + share[segment] * (segment === "head" || segment === "trunk" ? 1 : 2), 0);
const {
  "de Leva, men": men,
  "de Leva, women": women,
  Winter: winter,
  "Hartmann and Tünnemann": hartmann,
} = SEGMENT_MASSES;

published("deLeva1996", "all segments together", [
  ["printed", "table 4, men, restated", () => total(men), 1, 0.00005],
  ["printed", "table 4, women, restated", () => total(women), 0.9999, 0.00005],
]);
published("winter2009", "all segments together", [["printed", "table 4.1, restated", () => total(winter), 1, 0.0005]]);
published("hartmannTunnemann", "all segments together", [["printed", "restated", () => total(hartmann), 1, 0.0005]]);

/** Shares as worked in our reference: by form, for the four sources in order. */
const WORKED = {
  squat: [0.886, 0.878, 0.878, 0.858],
  "one-leg squat": [0.943, 0.939, 0.939, 0.929],
  "pull-up or dip": [0.955, 0.961, 0.956, 0.94],
  "head, trunk and arms": [0.603, 0.582, 0.678, 0.63],
  "one leg": [0.199, 0.209, 0.161, 0.185],
} as const;
for (const form of MOVED_FORMS) {
  Object.entries(SEGMENT_MASSES).forEach(([name, table], i) => {
    // Half of a last digit, and half of a rounded last digit of the table: 0.9385 is printed 0.939.
    published(table.source, `share moved: ${form}`, [
      ["worked", name, () => movedShare(form, table), WORKED[form][i]!, 0.00051],
    ]);
  });
}
published("deLeva1996", "kg moved", [
  ["worked", "80 kg man, squat with 100 kg", () => 80 * movedShare("squat", men) + 100, 170.9, 0.05],
  ["worked", "80 kg man, pull-up with 10 kg", () => 80 * movedShare("pull-up or dip", men) + 10, 86.43, 0.005],
]);
published("hartmannTunnemann", "kg moved, restated", [
  ["worked", "80 kg, squat with 100 kg", () => 80 * movedShare("squat", hartmann) + 100, 168.6, 0.05],
  ["worked", "80 kg, pull-up with 10 kg", () => 80 * movedShare("pull-up or dip", hartmann) + 10, 85.2, 0.05],
]);

test("sources disagree by at most 0.1 for any form", () => {
  for (const form of MOVED_FORMS) {
    const shares = Object.values(SEGMENT_MASSES).map((table) => movedShare(form, table));
    expect(Math.max(...shares) - Math.min(...shares)).toBeLessThan(0.1);
  }
});
