import fc from "fast-check";
import { expect, test } from "vitest";
import { published } from "./testing/index.ts";
import {
  asLoad,
  inGrams,
  inKg,
  inLb,
  inSets,
  kg,
  type Load,
  lb,
  type Mass,
  massOf,
  metres,
  quarters,
  seconds,
  share,
} from "./units.ts";

published("intPound1959", "grams in 1 lb, times 100,000", [
  ["printed", "article", () => inKg(lb(1)) * 1e8, 45_359_237, 0],
]);
published("intPound1959", "kg of 45 lb", [["worked", "45 × 0.45359237", () => inKg(lb(45)), 20.41165665, 1e-9]]);
published("intPound1959", "kg of 25 lb", [["worked", "25 × 0.45359237", () => inKg(lb(25)), 11.33980925, 1e-9]]);
published("intPound1959", "lb of 20 kg", [["worked", "20 / 0.45359237", () => inLb(kg(20)), 44.0924524, 1e-6]]);

const unit = fc.constantFrom("kg" as const, "lb" as const);
const load = fc.record({ value: fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1000), unit });

test("a load comes back from its mass as it was written, to the last digit", () => {
  fc.assert(
    fc.property(load, (written) => {
      expect(asLoad(massOf(written), written.unit)).toEqual(written);
    }),
  );
});

test("kilograms read as pounds and back are the same kilograms", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1_000_000 }), (grams) => {
      const there = asLoad(kg(grams / 1000), "lb");
      expect(asLoad(massOf(there), "kg").value).toBe(grams / 1000);
    }),
  );
});

test("pounds read as kilograms and back can be a thousandth off, so a load keeps its unit", () => {
  expect(asLoad(lb(45), "kg")).toEqual({ value: 20.412, unit: "kg" });
  expect(asLoad(massOf({ value: 20.412, unit: "kg" }), "lb")).toEqual({ value: 45.001, unit: "lb" });
});

test("the mass of two loads together is the sum of their masses, whatever the units and the order", () => {
  const total = (loads: readonly Load[]) => loads.reduce((sum, each) => sum + massOf(each), 0);
  fc.assert(
    fc.property(fc.array(load, { maxLength: 40 }), (loads) => {
      expect(total([...loads].reverse())).toBe(total(loads));
      expect(Number.isSafeInteger(total(loads))).toBe(true);
    }),
  );
});

test("a hundred tenths of a kilogram are exactly ten kilograms", () => {
  let sum = 0;
  for (let i = 0; i < 100; i++) sum += kg(0.1);
  expect(sum).toBe(kg(10));
});

test("refuses a negative load, even one that would round to nothing", () => {
  for (const value of [-1, -0.0001, Number.NaN, Number.POSITIVE_INFINITY, 50_000.001]) {
    expect(() => kg(value)).toThrow(RangeError);
  }
  expect(Object.is(kg(-0), 0)).toBe(true);
  expect(kg(50_000)).toBeGreaterThan(0);
  expect(() => lb(110_232)).toThrow(RangeError);
});

test("grams are whole and rounded", () => {
  expect(inGrams(lb(1))).toBe(454);
  expect(inGrams(kg(12.5))).toBe(12_500);
});

test("seconds are whole and not negative", () => {
  expect(seconds(90)).toBe(90);
  for (const value of [1.5, -1, Number.NaN]) expect(() => seconds(value)).toThrow(RangeError);
});

test("metres are finite and not negative", () => {
  expect(metres(30.5)).toBe(30.5);
  for (const value of [-1, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => metres(value)).toThrow(RangeError);
});

test("a share lies between 0 and 1", () => {
  expect(share(0.88)).toBe(0.88);
  for (const value of [-0.01, 1.01, 88, Number.NaN]) expect(() => share(value)).toThrow(RangeError);
});

test("sets are counted in quarters: a third of a set is refused", () => {
  expect(quarters(2.25)).toBe(9);
  expect(inSets(quarters(3.5))).toBe(3.5);
  for (const sets of [1 / 3, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(() => quarters(sets)).toThrow(RangeError);
});

test("a mass is a plain number inside, so equal masses are equal", () => {
  const half: Mass = lb(2.5);
  expect(half + half).toBe(lb(5));
});
