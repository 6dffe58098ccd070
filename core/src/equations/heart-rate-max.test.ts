import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { BETA_BLOCKED, HEART_RATE_EQUATIONS, type HeartRateEquationName, heartRateMax } from "./heart-rate-max.ts";

/** The bare formulas, also outside their ages, as the reference works them. */
const at = (name: HeartRateEquationName, ageY: number) => () => HEART_RATE_EQUATIONS[name].bpm(ageY);
const worked = (name: HeartRateEquationName, values: readonly (readonly [number, number])[]) =>
  values.map(([ageY, bpm]) => ["worked", `at ${ageY} years`, at(name, ageY), bpm, 0.05] as const);

published(
  "robergsLandwehr2002",
  "highest heart rate, 220 − age",
  worked("fox", [
    [20, 200],
    [35, 185],
    [40, 180],
    [50, 170],
    [65, 155],
  ]),
);
published(
  "tanaka2001",
  "highest heart rate, 208 − 0.7 age",
  worked("tanaka", [
    [20, 194],
    [35, 183.5],
    [40, 180],
    [50, 173],
    [65, 162.5],
  ]),
);
published(
  "gellish2007",
  "highest heart rate, 207 − 0.7 age",
  worked("gellish", [
    [20, 193],
    [35, 182.5],
    [40, 179],
    [50, 172],
    [65, 161.5],
  ]),
);
published(
  "gulati2010",
  "highest heart rate of women, 206 − 0.88 age",
  worked("gulati", [
    [20, 188.4],
    [35, 175.2],
    [40, 170.8],
    [50, 162],
    [65, 148.8],
  ]),
);
published(
  "zhu2010",
  "highest heart rate, 179 + 0.29 age − 0.011 age²",
  worked("zhu", [
    [30, 177.8],
    [40, 173],
    [50, 166],
  ]),
);
published("brawner2004", "highest heart rate on beta-blockers, 164 − 0.7 age", [
  ["worked", "at 40 years", () => BETA_BLOCKED.bpm(40), 136, 0.05],
  ["worked", "at 50 years", () => BETA_BLOCKED.bpm(50), 129, 0.05],
  ["worked", "at 65 years", () => BETA_BLOCKED.bpm(65), 118.5, 0.05],
  ["printed", "standard error of estimate", () => BETA_BLOCKED.miss?.from ?? 0, 18, 0],
]);
published("sydo2014", "highest heart rate at 50 years", [
  ["worked", "men, 220 − 0.95 age", at("sydo-men", 50), 172.5, 0.05],
  ["worked", "women, 210 − 0.79 age", at("sydo-women", 50), 170.5, 0.05],
]);
published("tanaka2001", "the same as 220 − age at 40: the difference", [
  ["identity", "algebra", () => at("fox", 40)() - at("tanaka", 40)(), 0, 1e-9],
]);

describe.each(Object.entries(HEART_RATE_EQUATIONS))("%s", (name, { ageY }) => {
  const max = (age: number) => heartRateMax(name as HeartRateEquationName, age);

  test("takes both ends of its ages and refuses a year beyond them", () => {
    for (const age of [ageY.from, ageY.to]) expect(max(age)).toBeGreaterThan(100);
    for (const age of [ageY.from - 1, ageY.to + 1, Number.NaN]) expect(() => max(age)).toThrow(/age in years must be/);
  });

  test("falls with age, and says how far single people lie from it", () => {
    for (let age = ageY.from; age < ageY.to; age++) expect(max(age + 1)).toBeLessThan(max(age));
    expect(HEART_RATE_EQUATIONS[name as HeartRateEquationName].miss.from).toBe(10);
  });
});

published("tanaka2001", "people of the studies", [
  ["printed", "351 studies", () => HEART_RATE_EQUATIONS.tanaka.people, 18_712, 0],
]);
published("gellish2007", "people followed", [
  ["printed", "908 tests", () => HEART_RATE_EQUATIONS.gellish.people, 132, 0],
]);
published("gulati2010", "women tested", [["printed", "abstract", () => HEART_RATE_EQUATIONS.gulati.people, 5437, 0]]);

test("ages are those printed, or the ones we took where none was", () => {
  const ages = Object.values(HEART_RATE_EQUATIONS).map(({ ageY }) => `${ageY.from}–${ageY.to}`);
  expect(ages).toEqual(["18–65", "18–80", "27–78", "30–74", "18–50", "40–89", "40–89"]);
  expect([BETA_BLOCKED.ageY, BETA_BLOCKED.people]).toEqual([{ from: 40, to: 80 }, 334]);
});
