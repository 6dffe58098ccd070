import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { GLUCOSE_RULES, type GlucoseReading, glucoseBefore, inMgDl } from "./glucose.ts";

published("colberg2016", "edges of the bands in mg/dL", [
  ["printed", "table 1", () => inMgDl(5.0, "mmol/L"), 90, 0.5],
  ["printed", "table 1", () => inMgDl(13.9, "mmol/L"), 250, 0.5],
  ["printed", "table 1", () => inMgDl(19.4, "mmol/L"), 350, 0.5],
  ["printed", "table 1", () => inMgDl(250, "mg/dL"), 250, 0],
]);

const say = (value: number, unit: GlucoseReading["unit"], more: Partial<GlucoseReading> = {}) => {
  const { before, because } = glucoseBefore({ value, unit, ...more });
  return [before, because[0]?.code];
};

describe("colberg2016, table 1, printed: half-open bands", () => {
  test.each([
    [70, "ask", "before/glucose-low"],
    [89, "ask", "before/glucose-low"],
    [90, "go", "before/glucose-carbohydrate-from-start"],
    [149, "go", "before/glucose-carbohydrate-from-start"],
    [150, "go", "before/glucose-fine"],
    [249, "go", "before/glucose-fine"],
    [250, "ask", "before/glucose-ketones"],
    [400, "ask", "before/glucose-ketones"],
  ] as const)("%d mg/dL: %s", (value, before, code) => {
    expect(say(value, "mg/dL")).toEqual([before, code]);
  });
  test("260 mg/dL: moderate ketones stop, none leave mild to moderate work", () => {
    expect(say(260, "mg/dL", { ketones: "moderate or large" })).toEqual(["hold", "before/glucose-no-exercise"]);
    expect(say(260, "mg/dL", { ketones: "none or small" })).toEqual(["soften", "before/glucose-moderate-only"]);
  });
  test("a low before short or very hard work says that it may need nothing", () => {
    const [low, hard] = [{}, { shortOrHard: true }].map((more) =>
      glucoseBefore({ value: 4.4, unit: "mmol/L", ...more }),
    );
    expect(low!.because[0]?.data).toMatchObject({ hard: false, mgdl: 79, carbohydrate: { from: 15, to: 30 } });
    expect(hard!.because[0]?.data).toMatchObject({ hard: true });
  });
});

describe("turner2019, printed: 3.9 mmol/L is treated first, under 2.9 stops for a day", () => {
  test.each([
    [3.8, "ask", "before/glucose-very-low"],
    [2.9, "ask", "before/glucose-very-low"],
    [2.8, "hold", "before/severe-low"],
    [3.9, "ask", "before/glucose-low"],
  ] as const)("%d mmol/L: %s", (value, before, code) => {
    expect(say(value, "mmol/L")).toEqual([before, code]);
  });
  test("a severe low yesterday holds whatever is measured now", () => {
    expect(say(120, "mg/dL", { severeLow: true })).toEqual(["hold", "before/severe-low"]);
    for (const reading of [{ value: 120, severeLow: true }, { value: 45 }]) {
      expect(glucoseBefore({ unit: "mg/dL", ...reading }).because[0]?.data).toEqual({ hours: 24 });
    }
  });
});

test.each([
  [79, "mmol/L"],
  [4.4, "mg/dL"],
  [Number.NaN, "mg/dL"],
  [601, "mg/dL"],
  [0.5, "mmol/L"],
  [33.4, "mmol/L"],
  [9, "mg/dL"],
] as const)("%d %s cannot be", (value, unit) => {
  expect(say(value, unit)).toEqual(["hold", "before/glucose-impossible"]);
});

test("another rule moves the upper bands and their edges, never the lows", () => {
  const by = (value: number) => glucoseBefore({ value, unit: "mg/dL" }, GLUCOSE_RULES[1]!);
  expect([by(160), by(180), by(269), by(270)].map(({ because }) => because[0]?.code)).toEqual([
    "before/glucose-carbohydrate-from-start",
    "before/glucose-fine",
    "before/glucose-fine",
    "before/glucose-ketones",
  ]);
  expect(by(269).because[0]?.data).toMatchObject({ edge: 180, rule: "mountain medicine" });
  expect(by(270).because[0]?.data).toMatchObject({ edge: 270, mgdl: 270 });
  expect(by(89).because[0]?.data).toMatchObject({ edge: 90 });
  expect([by(69), by(51)].map(({ because }) => because[0]?.code)).toEqual([
    "before/glucose-very-low",
    "before/severe-low",
  ]);
});
