import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { fiveRmPercent, REYNOLDS, reynolds } from "./reynolds.ts";

published("reynolds2006", "1RM in kg of a 5RM", [
  ["worked", "bench press, 80 kg", () => inKg(reynolds("bench press", kg(80))), 91.16, 0.005],
  ["worked", "leg press, 150 kg", () => inKg(reynolds("leg press", kg(150))), 178.8, 0.05],
]);
published("reynolds2006", "5RM in per cent of the 1RM", [
  ["worked", "bench press, 1RM 100 kg", () => fiveRmPercent("bench press", kg(87.822)), 87.8, 0.05],
  ["worked", "leg press, 5RM 150 kg", () => fiveRmPercent("leg press", kg(150)), 83.9, 0.05],
]);
published("reynolds2006", "standard error, kg", [
  ["printed", "bench press", () => REYNOLDS["bench press"].miss?.from ?? 0, 2.98, 0],
  ["printed", "leg press", () => REYNOLDS["leg press"].miss?.from ?? 0, 16.16, 0],
  ["printed", "people: 34 men and 36 women", () => REYNOLDS["leg press"].people ?? 0, 70, 0],
]);

test("refuses a load that is nothing or no number", () => {
  expect(() => reynolds("bench press", kg(0))).toThrow(RangeError);
  expect(() => reynolds("leg press", Number.NaN as never)).toThrow(RangeError);
});
