import { expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { inKg, kg } from "../units.ts";
import { LOAD_STEP, nextLoadBand } from "./load-step.ts";

published("acsm2009", "next load of 60 kg, kg", [
  ["worked", "2 %", () => inKg(nextLoadBand(kg(60)).low), 61.2, 0.05],
  ["worked", "10 %", () => inKg(nextLoadBand(kg(60)).high), 66, 0.05],
]);
published("acsm2009", "sessions running over the target before a load is raised", [
  ["printed", "evidence table", () => LOAD_STEP.sessions, 2, 0],
  ["printed", "1 to 2 repetitions over", () => LOAD_STEP.over.from, 1, 0],
]);

test("refuses a load that is nothing or no number", () => {
  expect(() => nextLoadBand(kg(0))).toThrow(RangeError);
  expect(() => nextLoadBand(Number.NaN as never)).toThrow(RangeError);
});
