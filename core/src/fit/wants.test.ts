import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import type { Catalogue, Exercise, Ladder, Lift } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, madeUpPerson, madeUpSlot, reps, sets } from "../testing/index.ts";
import { type WantContext, wantLines } from "./wants.ts";

const form = (id: string, more: Partial<Exercise> = {}) => madeUpExercise({ id, ...more });
const chain = (id: string, ...forms: readonly string[]): Ladder => ({
  id,
  name: id,
  start: forms[0]!,
  steps: forms.slice(1).map((to, index) => ({ from: forms[index]!, to, branch: "main" })),
});

/** squat: s0 → s1 → s2 → s3 → s4. single leg: l0 → l1 → l2. Loose forms stand on none. */
const squats = ["s0", "s1", "s2", "s3", "s4"].map((id) => form(id, { muscles: { "front thigh": 1, buttocks: 0.5 } }));
const lunges = ["l0", "l1", "l2"].map((id) => form(id, { pattern: "single leg" }));
const loose = form("loose");
const hinge = form("hinge", { pattern: "hinge" });
const hybrid = form("hybrid", { pattern: "hinge", alsoCounts: "squat" });
const catalogue: Catalogue = madeUpCatalogue(
  [...squats, ...lunges, loose, hinge, hybrid],
  [chain("squat", "s0", "s1", "s2", "s3", "s4"), chain("lunge", "l0", "l1", "l2")],
);
const did = (exercise: string): Lift => ({ exercise, reps: 8, on: day("2027-02-01") });

function linesOf(id: string, said: Partial<Omit<WantContext, "exercise" | "catalogue">> = {}) {
  const exercise = catalogue.exercises.get(id)!;
  const context = {
    slot: madeUpSlot("s2", "squat", sets(3, reps(8))),
    person: madeUpPerson({ status: "intermediate" }),
    watch: [],
    tooLight: false,
    kept: false,
    ...said,
  };
  return wantLines({ ...context, exercise, catalogue });
}
const points = (id: string, want: string, said: Parameters<typeof linesOf>[1] = {}) =>
  linesOf(id, said).find((line) => line.id === `fit/${want}`)?.points ?? 0;
const all = (want: string, ids: readonly string[], said: Parameters<typeof linesOf>[1] = {}) =>
  ids.map((id) => points(id, want, said));
const ladder = ["s0", "s1", "s2", "s3", "s4"];
const slot = (down: number, up: number) => madeUpSlot("s2", "squat", sets(3, reps(8)), { down, up });

describe("the right rung", () => {
  test("is the coach's choice for somebody who was never assessed: 100 there, 30 fewer a step, never under 0", () => {
    expect(all("suits", ladder)).toEqual([40, 70, 100, 70, 40]);
    const far = madeUpSlot("s4", "squat", sets(3, reps(8)));
    expect(all("suits", ladder, { slot: far })).toEqual([0, 10, 40, 70, 100]);
  });

  test("is the start of the ladder for a novice who was never assessed, as far down as the slot lets it move", () => {
    const novice = madeUpPerson({ status: "novice" });
    expect(all("suits", ladder, { person: novice, slot: slot(2, 2) })).toEqual([100, 70, 40, 10, 0]);
    expect(all("suits", ladder, { person: novice, slot: slot(1, 2) })).toEqual([70, 100, 70, 40, 10]);
    expect(all("suits", ladder, { person: novice, slot: slot(0, 0) })).toEqual([40, 70, 100, 70, 40]);
  });

  test("is where the person stands, or the highest form on record, as far up as the slot lets it move", () => {
    const stands = madeUpPerson({ status: "novice", rungs: { squat: "s3" } });
    expect(all("suits", ladder, { person: stands, slot: slot(1, 2) })).toEqual([10, 40, 70, 100, 70]);
    const shown = madeUpPerson({ status: "novice", rungs: { squat: "s1" }, lifts: [did("s0"), did("s4"), did("l2")] });
    expect(all("suits", ladder, { person: shown, slot: slot(1, 2) })).toEqual([0, 10, 40, 70, 100]);
    expect(all("suits", ladder, { person: shown, slot: slot(1, 1) })).toEqual([10, 40, 70, 100, 70]);
  });

  test("is the coach's choice where no ladder, or no known form of this one, tells", () => {
    const alone = madeUpSlot("loose", "squat", sets(3, reps(8)));
    expect(points("loose", "suits", { slot: alone })).toBe(100);
    const elsewhere = madeUpPerson({ status: "intermediate", rungs: { squat: "l2" } });
    expect(points("s2", "suits", { person: elsewhere })).toBe(100);
  });

  test("says how far it is and how far it should be; a form off the ladder has no rung on it", () => {
    expect(linesOf("s1").find((line) => line.id === "fit/suits")?.data).toEqual({ steps: -1, wanted: 0 });
    expect(linesOf("l1").some((line) => line.id === "fit/suits")).toBe(false);
  });
});

describe("a form on another ladder", () => {
  const stands = (rung: string) => madeUpPerson({ status: "intermediate", rungs: { lunge: rung } });

  test("counts 40 when the person stands on it, 15 fewer a step, never under 0", () => {
    expect(all("own-rung", ["l0", "l1", "l2"], { person: stands("l0") })).toEqual([40, 25, 10]);
    expect(all("own-rung", ["l0", "l1", "l2"], { person: stands("l2") })).toEqual([10, 25, 40]);
  });

  test("counts 40 when it is on record, on a ladder or not; nothing when nothing is known of it", () => {
    const recorded = madeUpPerson({ lifts: [did("loose"), did("l1")] });
    expect(all("own-rung", ["loose", "l0", "l1", "l2"], { person: recorded })).toEqual([40, 25, 40, 25]);
    expect(all("own-rung", ["loose", "l0"], { person: madeUpPerson() })).toEqual([0, 0]);
  });

  test("that nobody assessed them on counts 20 about its middle, 5 fewer a step, and nothing for a novice", () => {
    const past = madeUpPerson({ status: "intermediate" });
    expect(all("usual-rung", ["l0", "l1", "l2"], { person: past })).toEqual([15, 20, 15]);
    expect(all("usual-rung", ["l0", "l1", "l2"], { person: madeUpPerson() })).toEqual([0, 0, 0]);
    expect(all("usual-rung", ["l0", "l1", "l2"], { person: stands("l0") })).toEqual([0, 0, 0]);
    expect(all("usual-rung", ladder, { person: past })).toEqual([0, 0, 0, 0, 0]);
  });

  test("is nothing to the first choice's own ladder", () => {
    const recorded = madeUpPerson({ lifts: [did("s2")] });
    expect(all("own-rung", ladder, { person: recorded })).toEqual([0, 0, 0, 0, 0]);
  });
});

describe("pattern, muscles, steps", () => {
  test("60 for the pattern asked for, 25 for a neighbour or one that also counts as it, 0 else", () => {
    expect(all("pattern", ["s2", "loose", "l0", "hybrid", "hinge"])).toEqual([60, 60, 0, 0, 0]);
    expect(all("neighbour-pattern", ["s2", "loose", "l0", "hybrid", "hinge"])).toEqual([0, 0, 25, 25, 0]);
  });

  test("40 times the cosine of the muscles and those of the first choice, in whole points", () => {
    const both = { muscles: { "front thigh": 1, buttocks: 0.5 } } as const;
    const buttocks = { muscles: { buttocks: 1 } } as const;
    const exercises = [
      form("first", both),
      form("same", both),
      form("hips", buttocks),
      form("arms", { muscles: { biceps: 1 } }),
    ];
    const other = madeUpCatalogue(exercises);
    const pointsOf = (id: string, muscles?: readonly ("buttocks" | "biceps")[]) =>
      wantLines({
        slot: madeUpSlot("first", "squat", sets(3, reps(8)), muscles === undefined ? {} : { muscles }),
        person: madeUpPerson(),
        watch: [],
        tooLight: false,
        kept: false,
        exercise: other.exercises.get(id)!,
        catalogue: other,
      }).find((line) => line.id === "fit/muscles")?.points ?? 0;
    expect(pointsOf("same")).toBe(40);
    // 0.5 / √(1.25 × 1) = 0.447: 40 × that is 17.9.
    expect(pointsOf("hips")).toBe(18);
    expect(pointsOf("arms")).toBe(0);
    // For the buttocks alone: 1 / √1 for the hips; 0.5 / √1.25 for the first choice itself.
    expect(pointsOf("hips", ["buttocks"])).toBe(40);
    expect(pointsOf("first", ["buttocks"])).toBe(18);
    // For buttocks and biceps: 1 / √2 = 0.707.
    expect(pointsOf("arms", ["buttocks", "biceps"])).toBe(28);
  });

  test("no muscles on either side is no likeness", () => {
    expect(points("loose", "muscles")).toBe(0);
    expect(points("s2", "muscles", { slot: madeUpSlot("loose", "squat", sets(3, reps(8))) })).toBe(0);
  });

  test("10 fewer for each step beyond what the slot allows down or up", () => {
    expect(all("steps-outside", ladder, { slot: slot(0, 0) })).toEqual([-20, -10, 0, -10, -20]);
    expect(all("steps-outside", ladder, { slot: slot(1, 2) })).toEqual([-10, 0, 0, 0, 0]);
    expect(points("l0", "steps-outside", { slot: slot(0, 0) })).toBe(0);
  });
});

describe("the person", () => {
  test("a like counts 15, a dislike −25", () => {
    const person = madeUpPerson({ likes: ["s1"], dislikes: ["s3"] });
    expect(all("liked", ["s1", "s2", "s3"], { person })).toEqual([15, 0, 0]);
    expect(all("disliked", ["s1", "s2", "s3"], { person })).toEqual([0, 0, -25]);
  });

  test("every stress at its ceiling costs 5, and says which; a load that is too light here costs 60", () => {
    expect(points("s2", "watch", { watch: ["pressor", "impact"] })).toBe(-10);
    expect(linesOf("s2", { watch: ["pressor"] }).find((line) => line.id === "fit/watch")?.data).toEqual({
      tags: ["pressor"],
    });
    expect([points("s2", "too-light", { tooLight: true }), points("s2", "too-light")]).toEqual([-60, 0]);
  });

  test("what the slot had before counts 20, less than a step of the ladder", () => {
    expect([points("s2", "kept", { kept: true }), points("s2", "kept")]).toEqual([20, 0]);
  });

  test("what has no say has no line; every line is a want", () => {
    const lines = linesOf("s2");
    expect(lines.map(({ id }) => id)).toEqual(["fit/suits", "fit/pattern", "fit/muscles"]);
    expect(lines.every(({ level }) => level === "want")).toBe(true);
  });
});
