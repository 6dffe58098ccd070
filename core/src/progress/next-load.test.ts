import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { madeUpExercise, madeUpPerson, published } from "../testing/index.ts";
import { nextLoad, repsAfter, repsToEarn } from "./next-load.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const person = madeUpPerson({ mass: { load: kg(70), on: day("2027-02-20") } });
const step = (loadMeaning: "total" | "per hand" | "assist" | "added to body", loads: readonly number[], from: number) =>
  nextLoad(
    madeUpExercise({ id: "x", loadMeaning, bodyShare: { share: 1, source: "ours" } }),
    person,
    loads.map(kg),
    kg(from),
  );

published("acsm2009", "60 kg and 2–10 % more", [
  ["worked", "strength.md 5: 61.2 kg, per cent", () => step("total", [60, 61.2], 60)!.percent!, 2, 0],
  ["worked", "strength.md 5: 66 kg, per cent", () => step("total", [60, 66], 60)!.percent!, 10, 0],
]);
published("epley1985", "repetitions that make up for a step", [
  ["identity", "turned round: 30 at 100 kg is 10 at 150 kg, of which 200 kg", () => repsToEarn(50, 10), 30, 0],
  ["worked", "27 at 5 kg leave about 8 at 7.5 kg", () => repsAfter(50, 27), 8, 0],
]);

describe("the next load", () => {
  test.each([
    ["per hand", [5, 7.5, 10], 5, 7.5, 50],
    ["per hand", [5, 7.5, 10], 6, 7.5, 25],
    ["total", [60, 62.5], 60, 62.5, 4.2],
    ["added to body", [0, 5, 10], 5, 10, 6.7],
    ["assist", [40, 35, 30], 40, 35, 16.7],
  ] as const)("%s of %j from %d: %d, %d %%", (meaning, loads, from, to, percent) => {
    expect(step(meaning, loads, from)).toEqual({ from: kg(from), to: kg(to), percent });
  });

  test("is none above the heaviest, and none where nothing is listed", () => {
    expect(step("total", [60, 62.5], 62.5)).toBeUndefined();
    expect(step("assist", [40, 35], 35)).toBeUndefined();
    expect(step("total", [], 60)).toBeUndefined();
  });

  test("has no size where the body's part of it is not known", () => {
    const form = madeUpExercise({ id: "x", loadMeaning: "assist", bodyShare: { share: 1, source: "ours" } });
    expect(nextLoad(form, madeUpPerson(), [kg(40), kg(35)], kg(40))).toEqual({ from: kg(40), to: kg(35) });
  });

  test("pounds and kilograms compare exactly", () => {
    const form = madeUpExercise({ id: "x", loadMeaning: "total" });
    expect(nextLoad(form, person, [kg(20), kg(22.5)], { value: 45, unit: "lb" })).toEqual({
      from: { value: 45, unit: "lb" },
      to: kg(22.5),
      percent: 10.2,
    });
  });
});

test("so many repetitions as earn a step leave at least the bottom of the range after it, and one fewer does not", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 1, max: 20 }), (tenths, least) => {
      const percent = tenths / 10;
      const earned = repsToEarn(percent, least);
      expect(repsAfter(percent, earned)).toBeGreaterThanOrEqual(least);
      expect(repsAfter(percent, earned - 1)).toBeLessThan(least);
    }),
  );
});
