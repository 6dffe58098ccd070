import { expect, test } from "vitest";
import type { SourceId } from "../sources.ts";
import { published } from "../testing/index.ts";
import { PUSH_UP_SHARES, type PushUpShare, pushUpShareAt } from "./push-up-shares.ts";

const share = (source: SourceId, want: Partial<PushUpShare>) => {
  const found = PUSH_UP_SHARES.filter(
    (row) =>
      row.source === source && Object.entries(want).every(([key, value]) => row[key as keyof PushUpShare] === value),
  );
  return found.length === 1 ? found[0]!.share : Number.NaN;
};

published("ebben2011", "80 kg, kg on the hands, restated shares", [
  ["worked", "hands on 60.96 cm", () => 80 * share("ebben2011", { form: "hands raised", heightCm: 60.96 }), 32.8, 0.05],
  ["worked", "knees", () => 80 * share("ebben2011", { form: "knees" }), 39.2, 0.05],
  ["worked", "hands on 30.48 cm", () => 80 * share("ebben2011", { form: "hands raised", heightCm: 30.48 }), 44, 0.05],
  ["worked", "regular", () => 80 * share("ebben2011", { form: "floor" }), 51.2, 0.05],
  ["worked", "feet on 30.48 cm", () => 80 * share("ebben2011", { form: "feet raised", heightCm: 30.48 }), 56, 0.05],
  ["worked", "feet on 60.96 cm", () => 80 * share("ebben2011", { form: "feet raised", heightCm: 60.96 }), 59.2, 0.05],
]);
published("ebben2011", "share along the line between measured heights", [
  ["worked", "hands on 20 cm", () => pushUpShareAt(20), 0.581, 0.0005],
  ["worked", "hands on 45.72 cm", () => pushUpShareAt(45.72), 0.48, 0.0005],
  ["worked", "feet on 45.72 cm", () => pushUpShareAt(-45.72), 0.72, 0.0005],
  ["printed", "floor", () => pushUpShareAt(0), 0.64, 0],
  ["printed", "hands on 60.96 cm", () => pushUpShareAt(60.96), 0.41, 1e-12],
  ["printed", "feet on 60.96 cm", () => pushUpShareAt(-60.96), 0.74, 1e-12],
]);
published("mier2014", "kg on the hands, standing still at the bottom", [
  [
    "worked",
    "60 kg woman, regular",
    () => 60 * share("mier2014", { form: "floor", moment: "bottom, still", sex: "women" }),
    42.18,
    0.005,
  ],
  [
    "worked",
    "80 kg man, knees",
    () => 80 * share("mier2014", { form: "knees", moment: "bottom, still", sex: "men" }),
    48.08,
    0.005,
  ],
]);
published("gouvaliBoudolos2005", "75 kg man, regular, at the start, kg", [
  ["worked", "66.4 %", () => 75 * share("gouvaliBoudolos2005", { form: "floor" }), 49.8, 0.05],
]);
published("gulmez2017", "share in straps, restated", [
  ["printed", "bottom", () => share("gulmez2017", { moment: "bottom, still" }), 0.753, 0],
]);

test("the copy is complete: 30 rows whose shares sum to 19.433, one for each form, moment and sex of a paper", () => {
  expect(PUSH_UP_SHARES.length).toBe(30);
  expect(PUSH_UP_SHARES.reduce((sum, row) => sum + row.share, 0)).toBeCloseTo(19.433, 9);
  const keys = PUSH_UP_SHARES.map(({ source, form, heightCm, moment, sex }) =>
    [source, form, heightCm, moment, sex].join(),
  );
  expect(new Set(keys).size).toBe(keys.length);
});

test("sources disagree: a peak in one paper is under the still values of the others", () => {
  expect(share("ebben2011", { form: "floor" })).toBeLessThan(
    share("mier2014", { form: "floor", moment: "top, still", sex: "women" }),
  );
});

test("heights beyond the measured are refused, and the share falls as the hands rise", () => {
  for (const cm of [61, -61, 100, Number.NaN]) expect(() => pushUpShareAt(cm)).toThrow(RangeError);
  for (let cm = -60; cm < 60; cm++) expect(pushUpShareAt(cm + 0.9)).toBeLessThan(pushUpShareAt(cm));
});
