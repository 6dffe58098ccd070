import { describe, expect, test } from "vitest";
import { foldRecord, type SlotSession } from "../measures/index.ts";
import type { PlanSlot, SetDose } from "../model/index.ts";
import { hold, madeUpEvent, reps, sets } from "../testing/index.ts";
import { strokesAhead, strokesOf } from "./strokes.ts";
import type { View } from "./view-of.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const OF = { plan: "p", session: "base/1/a", slot: "s" };

/** Only what strokes ask of a person: their pains and what they can lift. */
function viewWith(hurtIn: readonly (number | undefined)[] = [], capacity?: number): View {
  const events = hurtIn.map((set, at) =>
    madeUpEvent(
      `hurt-${at}`,
      at + 1,
      "hurt",
      { where: "knee", howMuch: 4 },
      { of: { ...OF, ...(set === undefined ? {} : { set }) } },
    ),
  );
  const known =
    capacity === undefined
      ? undefined
      : ({ kind: "known", value: kg(capacity), low: kg(1), high: kg(1), sessions: 1 } as const);
  return { record: foldRecord(events), capacity: () => known && { once: known } } as unknown as View;
}
function session(set: SetDose, done: SlotSession["sets"], count = 3): SlotSession {
  const asked: PlanSlot = { key: "s", exercise: "x", dose: sets(count, set), load: kg(50), why: [], offer: [] };
  return { session: "base/1/a", phase: "base", week: 1, light: false, at: 0, n: 1, asked, sets: done, leftOut: [] };
}
const did = (set: number, more: Partial<SlotSession["sets"][number]>) => ({ set, exercise: "x", ...more });

describe("sets as signs", () => {
  test("done with what was read, done with nothing read, missed", () => {
    const done = [did(0, { reps: { both: 9 }, lifted: kg(50) }), did(1, {})];
    expect(strokesOf(viewWith([], 100), session(reps({ from: 8, to: 10 }), done))).toEqual([
      { state: "done", asked: { from: 8, to: 10 }, hold: false, share: 0.5, hurt: false, done: { both: 9 } },
      { state: "done", asked: { from: 8, to: 10 }, hold: false, hurt: false, done: { both: undefined } },
      { state: "missed", asked: { from: 8, to: 10 }, hold: false, share: 0.5, hurt: false },
    ]);
  });

  test("sides stay apart, and one number for both sides is both", () => {
    const one = reps(8, { eachSide: true });
    const strokes = strokesOf(
      viewWith(),
      session(one, [
        did(0, { reps: { left: 8, right: 6 } }),
        did(1, { reps: { both: 7 } }),
        did(2, { reps: { left: 5 } }),
      ]),
    );
    expect(strokes.map(({ done }) => done)).toEqual([
      { left: 8, right: 6 },
      { left: 7, right: 7 },
      { left: 5, right: undefined },
    ]);
  });

  test("a hold is one, and as many as possible has the least that was said", () => {
    expect(strokesOf(viewWith(), session(hold(30), [did(0, { holdS: { both: 25 } })], 1))[0]).toMatchObject({
      hold: true,
      asked: { from: 30, to: 30 },
      done: { both: 25 },
    });
    const most: SetDose = { amount: { kind: "most", least: 6 }, eachSide: false };
    expect(strokesOf(viewWith(), session(most, [], 1))[0]!.asked).toEqual({ from: 6, to: 6 });
  });

  test("a set beyond what was asked is shown; a load over the best is all of it", () => {
    const strokes = strokesOf(viewWith([], 40), session(reps(8), [did(3, { reps: { both: 4 }, lifted: kg(50) })]));
    expect(strokes.map(({ state }) => state)).toEqual(["missed", "missed", "missed", "done"]);
    expect(strokes[3]!.share).toBe(1);
  });

  test("pain stands on the set that it was noted in, else on the last one done", () => {
    const done = [did(0, {}), did(1, {})];
    const hurts = (...at: readonly (number | undefined)[]) =>
      strokesOf(viewWith(at), session(reps(8), done)).map(({ hurt }) => hurt);
    expect(hurts(0)).toEqual([true, false, false]);
    expect(hurts(undefined)).toEqual([false, true, false]);
  });

  test("what is to come has the load that is asked, against what can be lifted now", () => {
    const { asked } = session(reps(8), []);
    expect(strokesAhead(viewWith([], 100), asked).map(({ state, share }) => [state, share])).toEqual(
      Array(3).fill(["to come", 0.5]),
    );
    expect(strokesAhead(viewWith(), asked)[0]).not.toHaveProperty("share");
  });
});
