import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { BMI_ASIAN_POINTS, BMI_CLASSES, bodyMassIndex, waistHip, waistRisk } from "./body-size.ts";

const bmi = (massKg: number, heightCm: number) => () => bodyMassIndex(massKg, heightCm, 40).value;

published("whoBmi", "body mass index", [
  ["printed", "70 kg, 1.75 m: the page prints 22.9", bmi(70, 175), 22.9, 0.05],
  ["worked", "the same", bmi(70, 175), 22.86, 0.005],
  ["worked", "95 kg, 1.80 m", bmi(95, 180), 29.32, 0.005],
  ["worked", "50 kg, 1.70 m", bmi(50, 170), 17.3, 0.005],
  ["worked", "110 kg, 1.65 m", bmi(110, 165), 40.4, 0.005],
]);
published("whoWaist2008", "waist over hip, 85 and 100 cm", [
  ["worked", "85 / 100", () => waistHip("woman", 85, 100).ratio, 0.85, 0.0005],
]);
published("whoLancet2004", "points for action in Asian populations, sum", [
  ["printed", "23, 27.5, 32.5, 37.5", () => BMI_ASIAN_POINTS.reduce((sum, point) => sum + point, 0), 120.5, 0],
]);

test("whoBmi, printed: 29.32 is pre-obese, 17.30 mild thinness, 40.40 class III, 22.86 normal", () => {
  const classes = [
    [95, 180],
    [50, 170],
    [110, 165],
    [70, 175],
  ].map(([massKg, heightCm]) => bodyMassIndex(massKg!, heightCm!, 40).class);
  expect(classes).toEqual(["pre-obese", "mild thinness", "obese class III", "normal"]);
});

test("whoBmi, printed: every class begins on its number and the one before ends just under it", () => {
  const at = (value: number) => bodyMassIndex(value * 4, 200, 18).class;
  BMI_CLASSES.slice(1).forEach(({ class: name, from }, i) => {
    expect([at(from), at(from - 0.01)]).toEqual([name, BMI_CLASSES[i]!.class]);
  });
  expect(BMI_CLASSES.reduce((sum, { from }) => sum + from, 0)).toBe(181.5);
});

test("whoWaist2008, printed: over 94 and 102 cm for men, over 80 and 88 for women; a ratio from 0.90 and 0.85", () => {
  expect([94, 94.1, 102, 102.1, 103].map((cm) => waistRisk("man", cm))).toEqual([
    "not increased",
    "increased",
    "increased",
    "substantially increased",
    "substantially increased",
  ]);
  expect([80, 80.1, 88, 88.1].map((cm) => waistRisk("woman", cm))).toEqual([
    "not increased",
    "increased",
    "increased",
    "substantially increased",
  ]);
  expect(waistHip("woman", 85, 100).risk).toBe("substantially increased");
  expect(waistHip("woman", 84.9, 100).risk).toBe("not increased");
  expect(waistHip("man", 90, 100).risk).toBe("substantially increased");
  expect(waistHip("man", 89.9, 100).risk).toBe("not increased");
});

test("children, slips of unit and what lies beyond are refused", () => {
  const beyond: readonly (() => unknown)[] = [
    () => bodyMassIndex(70, 175, 17.9),
    () => bodyMassIndex(70, 175, 121),
    () => bodyMassIndex(70, 1.75, 40),
    () => bodyMassIndex(29, 175, 40),
    () => bodyMassIndex(Number.NaN, 175, 40),
    () => waistRisk("man", 39),
    () => waistRisk("man", 221),
    () => waistHip("man", 39, 100),
    () => waistHip("man", 221, 100),
    () => waistHip("man", 90, 49),
    () => waistHip("man", 90, 221),
    () => waistHip("man", 90, Number.NaN),
  ];
  for (const call of beyond) expect(call).toThrow(RangeError);
  expect([waistRisk("man", 40), waistRisk("woman", 220)]).toEqual(["not increased", "substantially increased"]);
  expect([waistHip("man", 40, 50).ratio, waistHip("man", 220, 220).ratio]).toEqual([0.8, 1]);
});
