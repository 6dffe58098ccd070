import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { kg } from "../units.ts";
import { PRESS_PULL, pressToPull } from "./press-pull.ts";

published("bakerNewton2004", "bench press over pull-up, per cent", [
  ["worked", "the means, 130.1 and 133.1 kg", () => pressToPull(kg(130.1), kg(133.1)), 97.75, 0.005],
  ["printed", "mean of the single ratios", () => PRESS_PULL.percent, 97.7, 0],
  ["printed", "their deviation", () => PRESS_PULL.sdPercent, 9, 0],
]);

test("nothing lifted is refused", () => {
  expect(() => pressToPull(kg(0), kg(100))).toThrow(RangeError);
  expect(() => pressToPull(kg(100), kg(0))).toThrow(RangeError);
  expect(() => pressToPull(Number.NaN as never, kg(100))).toThrow(RangeError);
});
