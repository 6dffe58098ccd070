import { expect, test } from "vitest";
import { refuseHeight, refuseMass, refuseOutside } from "./refuse.ts";

test("takes both ends and says what must hold just beyond them", () => {
  for (const value of [18, 40, 80]) expect(() => refuseOutside("it", "age in years", value, 18, 80)).not.toThrow();
  for (const value of [17.999, 80.001, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
    expect(() => refuseOutside("it", "age in years", value, 18, 80)).toThrow(
      new RangeError(`Cannot estimate it as age in years must be from 18 to 80: current value is ${value}`),
    );
  }
});

test("a body mass in grams or a height in metres is a slip of unit, and so is one in pounds of a giant", () => {
  for (const massKg of [30, 80, 300]) expect(() => refuseMass("it", massKg)).not.toThrow();
  for (const massKg of [29.9, 300.1, 80_000, Number.NaN])
    expect(() => refuseMass("it", massKg)).toThrow(/body mass in kg/);
  for (const heightCm of [120, 178, 230]) expect(() => refuseHeight("it", heightCm)).not.toThrow();
  for (const heightCm of [1.78, 119.9, 230.1, Number.NaN])
    expect(() => refuseHeight("it", heightCm)).toThrow(/height in cm/);
});
