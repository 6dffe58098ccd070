import { describe, expect, test } from "vitest";
import type { Dose, Patch, PlanSlot } from "../model/index.ts";
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

describe("what a dose does beside the one that is asked: the first thing that differs is said", () => {
  const asked = sets(3, reps({ from: 8, to: 10 }, { reserve: { from: 2, to: 2 } }));
  const now: PlanSlot = { ...slot, dose: asked };
  const of = (next: Dose) => title({ slot: "s", change: "reps", dose: next }, now);
  const loaded = (count: number, value: number) => sets(count, { ...asked.sets[0]!, load: kg(value) });

  test("one set with another load is tried", () => {
    const tried = { sets: [{ ...reps(6), load: kg(55) }, ...loaded(2, 50).sets] };
    expect(of(tried)).toEqual({
      code: "progress/try-set",
      data: { exercise: "squat", load: kg(55), amount: { kind: "reps", from: 6, to: 6 } },
    });
    expect(of(loaded(3, 50)).code).not.toBe("progress/try-set");
  });

  test("fewer sets with a load begin again; without a load they are fewer sets", () => {
    expect(of(loaded(2, 45))).toEqual({
      code: "progress/begin-again",
      data: { exercise: "squat", sets: 2, load: kg(45), reserve: 2 },
    });
    expect(of(sets(2, { ...reps(8), load: kg(45) })).data["reserve"]).toBeNull();
    expect(of(sets(2, asked.sets[0]!)).code).toBe("progress/set-dose");
  });

  test("a higher top widens the range; a lower one does not, nor does the bottom alone", () => {
    expect(of(sets(3, reps({ from: 10, to: 11 }))).code).toBe("progress/widen-range");
    expect(of(sets(3, reps({ from: 6, to: 10 }))).code).toBe("progress/set-dose");
    expect(of(sets(3, reps({ from: 6, to: 8 }))).code).toBe("progress/set-dose");
  });

  test("a tempo slows down, unless it is the one that is asked", () => {
    const slow = { ...asked, tempo: [4, 1, 1, 0] as const };
    expect(of(slow)).toEqual({ code: "progress/slow-down", data: { exercise: "squat", tempo: [4, 1, 1, 0] } });
    const slot: PlanSlot = { ...now, dose: slow };
    expect(title({ slot: "s", change: "reps", dose: slow }, slot).code).toBe("progress/set-dose");
    expect(title({ slot: "s", change: "reps", dose: { ...slow, tempo: [3, 0, 1, 0] } }, slot).code).toBe(
      "progress/slow-down",
    );
  });

  test("one more set like the others is a set more; two more, or another one, are a dose", () => {
    expect(of(sets(4, asked.sets[0]!))).toEqual({
      code: "progress/add-set",
      data: { exercise: "squat", from: 3, to: 4 },
    });
    expect(of(sets(5, asked.sets[0]!)).code).toBe("progress/set-dose");
    expect(of(sets(4, reps({ from: 8, to: 9 }))).code).toBe("progress/set-dose");
  });

  test("as many as possible is said by its kind alone; so is a dose of a slot that is no longer asked", () => {
    const most = sets(2, { amount: { kind: "most" }, eachSide: false });
    expect(of(most).data).toEqual({ exercise: "squat", sets: 2, amount: { kind: "most" } });
    expect(titleOf({ slot: "s", change: "reps", dose: loaded(2, 45) }, undefined, squat, madeUpPerson())).toEqual({
      code: "progress/set-dose",
      data: { exercise: null, sets: 2, amount: { kind: "reps", from: 8, to: 10 } },
    });
  });
});

test("a pause says until when, where a day was said", () => {
  expect(title({ slot: "s", change: "pause", until: "2027-04-01" as never }).data).toMatchObject({
    until: "2027-04-01",
  });
});
