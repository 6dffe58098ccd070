import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { percentAtSpeed } from "./bar-speed.ts";

published("gonzalezBadillo2010", "per cent of the 1RM at a bar speed, constants from memory", [
  ["worked", "0.17 m/s", () => percentAtSpeed(0.17), 100.1, 0.05],
  ["worked", "0.30 m/s", () => percentAtSpeed(0.3), 91.04, 0.005],
  ["worked", "0.50 m/s", () => percentAtSpeed(0.5), 77.69, 0.005],
  ["worked", "0.70 m/s", () => percentAtSpeed(0.7), 65.01, 0.005],
  ["worked", "1.00 m/s", () => percentAtSpeed(1), 47.26, 0.005],
  ["worked", "0.16 m/s, the measured speed of one repetition", () => percentAtSpeed(0.16), 100.8, 0.05],
]);

test("faster is lighter, and what lies beyond the curve is refused", () => {
  for (let v = 0.16; v < 1.2; v += 0.01) expect(percentAtSpeed(v + 0.01)).toBeLessThan(percentAtSpeed(v));
  expect(percentAtSpeed(1.3).toFixed(1)).toBe("31.0");
  for (const v of [0.15, 1.31, Number.NaN]) expect(() => percentAtSpeed(v)).toThrow(RangeError);
});
