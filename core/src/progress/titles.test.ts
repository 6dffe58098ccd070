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

describe("weeks and runs", () => {
  test.each([
    [
      { slot: "s", change: "light week", week: "base/4" },
      { week: "base/4", instead: null, lighter: false },
    ],
    [
      { slot: "s", change: "light week", week: "base/4", instead: "base/5", lighter: true },
      { week: "base/4", instead: "base/5", lighter: true },
    ],
  ] as unknown as readonly [Patch, object][])("%j", (patch, data) => {
    expect(title(patch)).toEqual({ code: "progress/light-week", data });
  });

  test("a full week names the week", () => {
    const patch = { slot: "s", change: "full week", week: "base/4" } as unknown as Patch;
    expect(title(patch)).toEqual({ code: "progress/full-week", data: { week: "base/4" } });
  });

  // The levels of running and walking are ours: the second is 10 times 1 min with 60 s of walking, the last has no walk.
  test("a level says its bouts, and seconds of running and walking", () => {
    const of = (level: number) => title({ slot: "s", change: "run-walk", level } as unknown as Patch);
    expect(of(2)).toEqual({ code: "progress/run-level", data: { level: 2, bouts: 10, runS: 60, walkS: 60 } });
    expect(of(9).data).toMatchObject({ level: 9, bouts: 1, walkS: 0 });
  });
});

describe("loads and doses, at their edges", () => {
  test("no percentage of a form that is not known, nor from no load", () => {
    const patch: Patch = { slot: "s", change: "load", load: kg(55) };
    expect(titleOf(patch, slot, undefined, madeUpPerson()).data["percent"]).toBeNull();
    const { load: _, ...bare } = slot;
    expect(title(patch, bare).data).toEqual({ exercise: "squat", to: kg(55), from: null, percent: null });
    expect(title({ ...patch, exercise: "lunge" }).data["exercise"]).toBe("lunge");
  });

  test("as many sets with a load do not begin again", () => {
    const loaded = sets(3, reps({ from: 8, to: 10 }, { load: kg(40) }));
    expect(title({ slot: "s", change: "reps", dose: loaded }).code).toBe("progress/set-dose");
    expect(title({ slot: "s", change: "reps", dose: loaded, exercise: "lunge" }).data).toEqual({
      exercise: "lunge",
      sets: 3,
      amount: { kind: "reps", from: 8, to: 10 },
    });
  });

  test("a tempo where nothing is asked any more is a dose; one that goes is too", () => {
    const slow = { ...dose, tempo: [4, 1, 1, 0] as const };
    const patch: Patch = { slot: "s", change: "reps", dose: slow, exercise: "squat" };
    expect(titleOf(patch, undefined, squat, madeUpPerson()).code).toBe("progress/set-dose");
    const was: PlanSlot = { ...slot, dose: slow };
    expect(title({ slot: "s", change: "reps", dose }, was).code).toBe("progress/set-dose");
  });

  test("a wider range of fewer sets without a load is a wider range; what was no range is not wider", () => {
    expect(title({ slot: "s", change: "reps", dose: sets(2, reps({ from: 8, to: 12 })) }).code).toBe(
      "progress/widen-range",
    );
    const most: PlanSlot = { ...slot, dose: sets(3, { amount: { kind: "most" }, eachSide: false }) };
    expect(title({ slot: "s", change: "reps", dose: sets(3, reps(12)) }, most).code).toBe("progress/set-dose");
  });
});
