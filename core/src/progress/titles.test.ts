import { describe, expect, test } from "vitest";
import type { Patch, PlanSlot } from "../model/index.ts";
import { madeUpExercise, madeUpPerson, reps, sets } from "../testing/index.ts";
import { rangeOf, titleOf } from "./titles.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const squat = madeUpExercise({ id: "squat", loadMeaning: "total" });
const dose = sets(3, reps({ from: 8, to: 10 }));
const slot: PlanSlot = { key: "s", exercise: "squat", dose, load: kg(50), why: [], offer: [] };
const title = (patch: Patch, now: PlanSlot | undefined = slot) => titleOf(patch, now, squat, madeUpPerson());

describe("what a patch does", () => {
  test.each([
    [{ slot: "s", change: "load", load: kg(55) }, "progress/go-to-load", { to: kg(55), from: kg(50), percent: 10 }],
    [{ slot: "s", change: "load", load: kg(45) }, "progress/go-to-load", { to: kg(45), percent: null }],
    [
      { slot: "s", change: "reps", dose: sets(3, reps({ from: 10, to: 15 })) },
      "progress/widen-range",
      { from: { from: 8, to: 10 }, to: { from: 10, to: 15 } },
    ],
    [
      { slot: "s", change: "reps", dose: sets(2, reps(5)) },
      "progress/set-dose",
      { sets: 2, amount: { kind: "reps", from: 5, to: 5 } },
    ],
    [{ slot: "s", change: "exercise", exercise: "lunge" }, "progress/use-form", { exercise: "lunge", from: "squat" }],
    [{ slot: "s", change: "pause" }, "progress/pause", { exercise: "squat", until: null }],
    [{ slot: "s", change: "resume" }, "progress/resume", { exercise: "squat" }],
  ] satisfies readonly [Patch, string, object][])("%j", (patch, code, data) => {
    expect(title(patch)).toMatchObject({ code, data });
  });

  test("of a slot that is no longer asked names what the patch names", () => {
    const patch: Patch = { slot: "s", change: "load", load: kg(55), exercise: "squat" };
    expect(titleOf(patch, undefined, undefined, madeUpPerson()).data).toEqual({
      exercise: "squat",
      to: kg(55),
      from: null,
      percent: null,
    });
  });
});

test("only repetitions have a range", () => {
  expect(rangeOf(dose)).toEqual({ from: 8, to: 10 });
  expect(rangeOf({ sets: [{ amount: { kind: "most" }, eachSide: false }] })).toBeUndefined();
});
