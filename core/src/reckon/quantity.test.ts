import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { DIMENSIONS, type Dimension, readQuantity } from "./quantity.ts";

const value = (text: string, dimension: Dimension) => () => {
  const read = readQuantity(text, dimension);
  return typeof read === "string" ? Number.NaN : read.value;
};

published("intPound1959", "a written quantity in the first unit", [
  ["worked", "1 lb in kg", value("1 lb", "mass"), 0.45359237, 0],
  ["worked", "5 ft in cm, 1 yd = 0.9144 m", value("5 ft", "length"), 152.4, 1e-9],
  ["worked", "70 in in cm", value("70in", "length"), 177.8, 1e-9],
  ["worked", "1 mph in m/min", value("1 mph", "speed"), 26.8224, 1e-9],
]);

test.each([
  ["80 kg", "mass", 80, "kg"],
  ["80kg", "mass", 80, "kg"],
  ["1.78 m", "length", 178, "m"],
  ["10.8 km/h", "speed", 180, "km/h"],
  ["100 W", "work", 600, "W"],
  ["12:30", "time", 750, "min"],
  ["12 min", "time", 720, "min"],
  ["60 %", "share", 60, "%"],
  ["60", "share", 60, ""],
  ["8", "count", 8, ""],
  ["41", "years", 41, ""],
  ["130 bpm", "pulse", 130, "bpm"],
] as const)("%s is a %s of %d", (text, dimension, wanted, unit) => {
  const read = readQuantity(text, dimension);
  if (typeof read === "string") throw new Error(read);
  expect(read.value).toBeCloseTo(wanted, 9);
  expect(read.unit).toBe(unit);
});

test("a number that could be read in two ways needs its unit", () => {
  for (const dimension of ["mass", "length", "distance", "speed", "work", "time", "energy"] as const) {
    expect(readQuantity("80", dimension)).toBe("reckon/unit-missing");
  }
});

test("another unit, a comma, signs, words and very long numbers are refused", () => {
  expect(readQuantity("80 st", "mass")).toBe("reckon/unit-unknown");
  expect(readQuantity("80 cm", "mass")).toBe("reckon/unit-unknown");
  expect(readQuantity("80 constructor", "mass")).toBe("reckon/unit-unknown");
  for (const text of [
    "",
    "80,5 kg",
    "-5 kg",
    "+5 kg",
    "1e3 kg",
    "kg 80",
    "NaN",
    "Infinity kg",
    "12345678 kg",
    "80  kg",
    "1:60",
  ]) {
    expect(readQuantity(text, "mass"), text).toBe("reckon/number-form");
  }
  expect(readQuantity("1:60", "time")).toBe("reckon/number-form");
  expect(readQuantity("12:30", "mass")).toBe("reckon/number-form");
});

test("the first unit of every dimension counts 1", () => {
  for (const units of Object.values(DIMENSIONS))
    for (const [i, size] of Object.values(units).entries()) if (i === 0) expect(size).toBe(1);
});
