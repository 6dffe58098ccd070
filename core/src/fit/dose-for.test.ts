import { describe, expect, test } from "vitest";
import { hold, madeUpExercise, reps, sets, timeOf } from "../testing/index.ts";
import { doseFor, MOST_SETS, setChoices, takesLoad, withSets } from "./dose-for.ts";

const metres = (value: number) =>
  ({ amount: { kind: "metres", span: { from: value, to: value } }, eachSide: false }) as const;
const contacts = (value: number) =>
  ({ amount: { kind: "contacts", span: { from: value, to: value } }, eachSide: false }) as const;
const most = { amount: { kind: "most" }, eachSide: false } as const;
const plain = madeUpExercise({ id: "squat" });
const amountOf = (exercise: Parameters<typeof doseFor>[0], set: ReturnType<typeof reps>) =>
  doseFor(exercise, sets(1, set)).sets[0]!.amount;

describe("what is asked of a form that counts otherwise than the slot", () => {
  const plank = madeUpExercise({ id: "plank", amounts: "hold", hold: { from: 10, to: 60, step: 10 } });
  const carry = madeUpExercise({ id: "carry", amounts: "metres" });
  const bike = madeUpExercise({ id: "bike", amounts: "time" });
  const jump = madeUpExercise({ id: "jump", amounts: "contacts" });

  test("repetitions stay repetitions, and as many as possible stays so; anything else becomes 8–12", () => {
    expect(amountOf(plain, reps({ from: 5, to: 6 }))).toEqual({ kind: "reps", span: { from: 5, to: 6 } });
    expect(amountOf(plain, most)).toEqual({ kind: "most" });
    for (const set of [hold(30), timeOf(60), metres(20), contacts(5)])
      expect(amountOf(plain, set)).toEqual({ kind: "reps", span: { from: 8, to: 12 } });
  });

  test("a hold is moved into the form's own range; repetitions become its lower end and two raises", () => {
    expect(amountOf(plank, hold({ from: 20, to: 40 }))).toEqual({ kind: "hold", span: { from: 20, to: 40 } });
    expect(amountOf(plank, hold({ from: 5, to: 90 }))).toEqual({ kind: "hold", span: { from: 10, to: 60 } });
    expect(amountOf(plank, timeOf(90))).toEqual({ kind: "hold", span: { from: 60, to: 60 } });
    expect(amountOf(plank, reps(10))).toEqual({ kind: "hold", span: { from: 10, to: 30 } });
    const short = { ...plank, hold: { from: 10, to: 15, step: 10 } };
    expect(amountOf(short, reps(10))).toEqual({ kind: "hold", span: { from: 10, to: 15 } });
  });

  test("a hold whose range nobody wrote keeps what is asked, and takes 10–20 s for repetitions", () => {
    const free = madeUpExercise({ id: "free", amounts: "hold" });
    expect(amountOf(free, hold({ from: 3, to: 300 }))).toEqual({ kind: "hold", span: { from: 3, to: 300 } });
    expect(amountOf(free, reps(10))).toEqual({ kind: "hold", span: { from: 10, to: 20 } });
  });

  test("distances, times and contacts", () => {
    expect(amountOf(carry, metres(40))).toEqual({ kind: "metres", span: { from: 40, to: 40 } });
    expect(amountOf(carry, reps(10))).toEqual({ kind: "metres", span: { from: 20, to: 30 } });
    expect(amountOf(bike, timeOf(300))).toEqual({ kind: "time", span: { from: 300, to: 300 } });
    expect(amountOf(bike, hold(20))).toEqual({ kind: "time", span: { from: 20, to: 20 } });
    expect(amountOf(bike, reps(10))).toEqual({ kind: "time", span: { from: 30, to: 30 } });
    expect(amountOf(jump, contacts(4))).toEqual({ kind: "contacts", span: { from: 4, to: 4 } });
    expect(amountOf(jump, reps(10))).toEqual({ kind: "contacts", span: { from: 5, to: 5 } });
  });
});

describe("what goes with it", () => {
  const load = { value: 20, unit: "kg" } as const;
  const asked = sets(2, reps(5, { percent: 80, load, within: { bouts: [2, 2], restS: 15 } }), { restS: 120 });

  test("a share and a load stay where a load can be taken, and are dropped elsewhere; rest stays", () => {
    const bar = madeUpExercise({ id: "bar", loadMeaning: "total" });
    expect(doseFor(bar, asked).sets[0]).toMatchObject({ percent: 80, load });
    expect(doseFor(plain, asked).sets[0]).not.toHaveProperty("percent");
    expect(doseFor(plain, asked).sets[0]).not.toHaveProperty("load");
    expect(doseFor(plain, asked).restS).toBe(120);
    expect(takesLoad(bar)).toBe(true);
    expect(takesLoad(plain)).toBe(false);
  });

  test("short rests inside a set stay while what is counted stays the same", () => {
    const plank = madeUpExercise({ id: "plank", amounts: "hold", hold: { from: 10, to: 60, step: 10 } });
    expect(doseFor(plain, asked).sets[0]).toMatchObject({ within: { bouts: [2, 2], restS: 15 } });
    expect(doseFor(plank, asked).sets[0]).not.toHaveProperty("within");
  });

  test("left and right are the form's own, whatever the slot says", () => {
    const lunge = madeUpExercise({ id: "lunge", eachSide: true });
    expect(doseFor(lunge, sets(1, reps(8))).sets[0]!.eachSide).toBe(true);
    expect(doseFor(plain, sets(1, reps(8, { eachSide: true }))).sets[0]!.eachSide).toBe(false);
  });
});

describe("numbers of sets", () => {
  test("fewer sets leave out the last ones, more repeat the last one", () => {
    const top = { sets: [reps(5), reps(8), reps(12)], restS: 90 };
    expect(withSets(top, 2)).toEqual({ sets: [reps(5), reps(8)], restS: 90 });
    expect(withSets(top, 5).sets).toEqual([reps(5), reps(8), reps(12), reps(12), reps(12)]);
    expect(withSets({ sets: [] }, 3)).toEqual({ sets: [] });
  });

  test("from two fewer to one more, at least 1, and 5 at most unless the coach asks for more", () => {
    expect(MOST_SETS).toBe(5);
    expect(setChoices(1)).toEqual([1, 2]);
    expect(setChoices(2)).toEqual([1, 2, 3]);
    expect(setChoices(3)).toEqual([1, 2, 3, 4]);
    expect(setChoices(4)).toEqual([2, 3, 4, 5]);
    expect(setChoices(5)).toEqual([3, 4, 5]);
    expect(setChoices(8)).toEqual([6, 7, 8]);
  });
});
