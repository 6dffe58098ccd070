import fc from "fast-check";
import { expect, test } from "vitest";
import { kg, lb, type Mass, massOf } from "../units.ts";
import { sayMass } from "./say-mass.ts";

test("says a mass in the wanted unit where that is exact, else in the other", () => {
  expect(sayMass(kg(42.5), "kg")).toEqual({ value: 42.5, unit: "kg" });
  expect(sayMass(lb(45), "kg")).toEqual({ value: 45, unit: "lb" });
  expect(sayMass(kg(20), "lb")).toEqual({ value: 20, unit: "kg" });
});

test("rounds a mixed mass up by less than a thousandth, never down", () => {
  expect(sayMass((kg(20) + 2 * lb(25)) as Mass, "kg")).toEqual({ value: 42.68, unit: "kg" });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 300_000 }), fc.integer({ min: 0, max: 700_000 }), (grams, milliPounds) => {
      const mass = (kg(grams / 1000) + lb(milliPounds / 1000)) as Mass;
      const over = massOf(sayMass(mass, "kg")) - mass;
      expect(over).toBeGreaterThanOrEqual(0);
      expect(over).toBeLessThan(kg(0.001));
    }),
  );
});
