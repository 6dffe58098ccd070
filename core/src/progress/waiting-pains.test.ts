import { describe, expect, test } from "vitest";
import type { Decided } from "../measures/index.ts";
import type { Patch } from "../model/index.ts";
import { madeUpExercise, reps, setDone, slotTrained } from "../testing/index.ts";
import { unansweredPains, unansweredStop } from "./waiting-pains.ts";

const squat = madeUpExercise({ id: "squat", stress: { knee_deep: 2 } });
const lunge = madeUpExercise({ id: "lunge", stress: { knee_deep: 1 } });

/** A coach's word, said when so much of the phone was known. */
const word = (patch: Patch, phone: number, more: Partial<Decided> = {}): Decided => ({
  id: "word",
  n: 99,
  at: 0,
  by: "Imke",
  kind: "accepted",
  patch,
  cut: { phone },
  ...more,
});
const hurting = (where: string, ...decisions: readonly Decided[]) => {
  const input = slotTrained({
    exercise: squat,
    set: reps(8),
    sets: 2,
    place: {},
    did: [[0, { ...setDone(8), load: "none" }]],
    hurts: { 0: { where, howMuch: 4 } },
    today: 1,
    harder: [lunge],
  });
  return { ...input, record: { ...input.record, decisions } };
};
const KNOWN = hurting("knee").record.hurts[0]!.n;
const pause = (slot: string): Patch => ({ slot, change: "pause" });
const resume = (slot: string): Patch => ({ slot, change: "resume" });
const open = (where: string, slot: string, ...decisions: readonly Decided[]) =>
  unansweredPains(hurting(where, ...decisions), slot, squat).length;

describe("a pain is answered", () => {
  test("by a pause, by another form and by taking it up again, said of the slot", () => {
    expect(open("knee", "it")).toBe(1);
    expect(open("knee", "it", word(pause("it"), KNOWN))).toBe(0);
    expect(open("knee", "it", word(resume("it"), KNOWN))).toBe(0);
    expect(open("knee", "it", word({ slot: "it", change: "exercise", exercise: "lunge" }, KNOWN))).toBe(0);
  });

  test("by refusing the pause that was proposed", () => {
    const { patch: _, ...refused } = word(pause("it"), KNOWN, {
      kind: "refused",
      proposal: { proposal: "p", patch: pause("it"), evidence: [], cut: {}, engine: "1" },
    });
    expect(open("knee", "it", refused)).toBe(0);
  });

  test("not by a word on something else, said of another slot, or said before the pain was known", () => {
    const load: Patch = { slot: "it", change: "load", load: { value: 20, unit: "kg" } };
    expect(open("knee", "it", word(load, KNOWN))).toBe(1);
    expect(open("knee", "it", word(pause("other"), KNOWN))).toBe(1);
    expect(open("knee", "it", word(pause("it"), KNOWN - 1))).toBe(1);
    expect(open("knee", "it", word(pause("it"), KNOWN, { cut: { tablet: 99 } }))).toBe(1);
  });

  test("for each slot by itself", () => {
    const input = hurting("knee", word(pause("it"), KNOWN));
    expect(unansweredPains(input, "lunges", lunge)).toHaveLength(1);
  });
});

describe("a sign to stop", () => {
  test("is answered by no pause: only a word that goes on does", () => {
    expect(open("chest", "it", word(pause("it"), KNOWN))).toBe(1);
    expect(open("chest", "it", word(resume("it"), KNOWN))).toBe(0);
  });

  test("a word on the slot in which it came is for every slot; one on another slot is for that one", () => {
    expect(open("chest", "other", word(resume("it"), KNOWN))).toBe(0);
    expect(open("chest", "other", word(resume("other"), KNOWN))).toBe(0);
    expect(open("chest", "other", word(resume("third"), KNOWN))).toBe(1);
  });
});

describe("the sign to stop that nobody has answered", () => {
  const stop = (where: string, ...decisions: readonly Decided[]) => unansweredStop(hurting(where, ...decisions));
  test("stands until a word lets something go on, of whatever slot, said when it was known", () => {
    expect(stop("chest")).toMatchObject({ hurt: { where: "chest" }, waits: true, everything: true });
    expect(stop("chest", word(pause("it"), KNOWN))).toBeDefined();
    expect(stop("chest", word(resume("it"), KNOWN - 1))).toBeDefined();
    expect(stop("chest", word({ slot: "it", change: "load", load: { value: 20, unit: "kg" } }, KNOWN))).toBeDefined();
    expect(stop("chest", word(resume("third"), KNOWN))).toBeUndefined();
    expect(stop("chest", word(pause("it"), KNOWN), word(resume("it"), KNOWN))).toBeUndefined();
  });

  test("is none where it only hurts", () => {
    expect(stop("knee")).toBeUndefined();
    expect(stop("knee", word(pause("it"), KNOWN))).toBeUndefined();
  });

  test("of two the one that is open", () => {
    const input = hurting("chest", word(resume("it"), KNOWN));
    const [hurt] = input.record.hurts;
    const hurts = [hurt!, { ...hurt!, id: "later", where: "dizzy", n: KNOWN + 1 }];
    expect(unansweredStop({ ...input, record: { ...input.record, hurts } })).toMatchObject({ hurt: { id: "later" } });
  });
});

test("a word that knew nothing of the device answers nothing, not even its first pain", () => {
  const input = hurting("knee", word(pause("it"), KNOWN, { cut: { tablet: 99 } }));
  const hurts = input.record.hurts.map((hurt) => ({ ...hurt, n: 0 }));
  expect(unansweredPains({ ...input, record: { ...input.record, hurts } }, "it", squat)).toHaveLength(1);
});
