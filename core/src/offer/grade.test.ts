import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Exercise, STRESS_TAGS, type StressTag } from "../model/index.ts";
import { hold, madeUpExercise, reps, sets } from "../testing/index.ts";
import { gradeAt, gradesOf } from "./grade.ts";
import type { DoseWord } from "./raised-by.ts";

const light = reps(10, { percent: 45, reserve: { from: 5, to: 5 } });
const middle = reps(8, { percent: 65, reserve: { from: 3, to: 3 } });
const heavy = reps(3, { percent: 90, reserve: { from: 1, to: 1 } });

describe("the worked examples printed with the rule", () => {
  const rows: [string, Partial<Exercise>, StressTag, number[]][] = [
    [
      "pull-up, overhead 2 and fixed: 2 at best, 3 when heavy",
      { stress: { sh_overhead: 2 }, fixed: true },
      "sh_overhead",
      [2, 2, 3],
    ],
    ["two-hand carry, grip 2: 1 light, 2 middle, 3 heavy", { stress: { grip: 2 } }, "grip", [1, 2, 3]],
    ["back squat, pressor 2: 1, 2, 3", { stress: { pressor: 2 } }, "pressor", [1, 2, 3]],
    ["floor push-up, wrist 3 and fixed: 3 at any dose", { stress: { wr_ext: 3 }, fixed: true }, "wr_ext", [3, 3, 3]],
    ["goblet squat, straight wrist: 0 at any dose", {}, "wr_ext", [0, 0, 0]],
  ];
  test.each(rows)("%s", (_, said, tag, want) => {
    const exercise = madeUpExercise({ id: "form", ...said });
    expect([light, middle, heavy].map((set) => gradesOf(exercise, sets(3, set), {})[tag] ?? 0)).toEqual(want);
  });
});

test("the four rules, in their order", () => {
  const said = (...words: DoseWord[]) => new Set(words);
  expect(gradeAt("grip", 0, said("heavy", "near failure"))).toBe(0);
  expect(gradeAt("pressor", 0, said("heavy"))).toBe(0);
  expect(gradeAt("pressor", 0, said("breath"))).toBe(1);
  expect(gradeAt("pressor", 0, said("near failure"))).toBe(1);
  expect(gradeAt("elbow", 3, said("lowering"))).toBe(3);
  expect(gradeAt("grip", 1, said("light"))).toBe(1);
  expect(gradeAt("balance", 2, said("light"))).toBe(2);
  expect(gradeAt("grip", 2, said("heavy", "light"))).toBe(3);
});

test("the hardest set of a dose decides, and sets do not add up", () => {
  const exercise = madeUpExercise({ id: "form", stress: { grip: 1 } });
  expect(gradesOf(exercise, { sets: [light, middle, heavy, middle] }, {})).toEqual({ grip: 2, pressor: 1 });
});

test("a dose without sets has the base grades", () => {
  expect(gradesOf(madeUpExercise({ id: "form", stress: { grip: 2, floor: 1 } }), { sets: [] }, {})).toEqual({
    grip: 2,
    floor: 1,
  });
});

const anyForm = fc
  .record({
    stress: fc.dictionary(fc.constantFrom(...STRESS_TAGS), fc.constantFrom(1, 2, 3)),
    fixed: fc.boolean(),
    lowering: fc.boolean(),
    still: fc.boolean(),
  })
  .map(({ still, ...said }) =>
    madeUpExercise({ id: "form", ...(said as Partial<Exercise>), ...(still ? { mode: "hold", amounts: "hold" } : {}) }),
  );

test("a grade never falls when the dose rises, and never moves by more than 1 from its base", () => {
  const asked = fc.record({
    percent: fc.integer({ min: 1, max: 100 }),
    left: fc.integer({ min: 0, max: 10 }),
    seconds: fc.integer({ min: 1, max: 120 }),
    more: fc.integer({ min: 0, max: 60 }),
    fewer: fc.integer({ min: 0, max: 10 }),
    longer: fc.integer({ min: 0, max: 60 }),
    known: fc.boolean(),
    bestHoldS: fc.integer({ min: 5, max: 180 }),
  });
  fc.assert(
    fc.property(anyForm, asked, (form, a) => {
      const dose = (percent: number, left: number, seconds: number) => {
        const reserve = { from: Math.max(0, left), to: Math.max(0, left) };
        const set = form.mode === "hold" ? hold(seconds, { reserve }) : reps(8, { reserve });
        return sets(2, a.known && form.mode !== "hold" ? { ...set, percent: Math.min(100, percent) } : set);
      };
      const facts = a.known ? { bestHoldS: a.bestHoldS } : {};
      const low = gradesOf(form, dose(a.percent, a.left, a.seconds), facts);
      const high = gradesOf(form, dose(a.percent + a.more, a.left - a.fewer, a.seconds + a.longer), facts);
      for (const tag of STRESS_TAGS) {
        const base = form.stress[tag] ?? 0;
        expect(high[tag] ?? 0).toBeGreaterThanOrEqual(low[tag] ?? 0);
        expect(Math.abs((low[tag] ?? 0) - base)).toBeLessThanOrEqual(1);
        if (base === 0 && tag !== "pressor") expect(high[tag]).toBeUndefined();
      }
    }),
    { numRuns: 500 },
  );
});
