import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { admitter } from "../offer/index.ts";
import { madeUpPerson, madeUpPlace, reps, sets } from "../testing/index.ts";
import { CATALOGUE, readOwnExercises } from "./index.ts";

const read = (yaml: string) => readOwnExercises(`stave: 1\n${yaml}`, "own.yaml");
const catalogueOf = (yaml: string) => {
  const found = read(yaml);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
};
const problemsOf = (yaml: string) => read(yaml).problems.map(({ code, at, line }) => [code, at.join("."), line]);

const CONTEXT = {
  person: madeUpPerson({ rungs: { squat: "goblet-squat" } }),
  place: madeUpPlace({ equipment: { dumbbell: 2, kettlebell: 1 } }),
  on: day("2027-03-01"),
};
const dose = sets(2, reps(8));

describe("a form that is hidden", () => {
  const catalogue = catalogueOf("hide: [goblet-squat]\n");
  const goblet = catalogue.exercises.get("goblet-squat")!;
  test("is no longer offered, and says why", () => {
    const before = admitter({ ...CONTEXT, catalogue: CATALOGUE })(CATALOGUE.exercises.get("goblet-squat")!, dose);
    expect(before.ok).toBe(true);
    const now = admitter({ ...CONTEXT, catalogue })(goblet, dose);
    expect(now.ok ? [] : now.why.map(({ code }) => code)).toEqual(["offer/coach-only"]);
  });
  test("stays by hand, with a note, and by name on its ladder", () => {
    const byHand = admitter({ ...CONTEXT, catalogue, byHand: true })(goblet, dose);
    expect(byHand.ok && byHand.notes.map(({ code }) => code)).toContain("offer/coach-only");
    expect(goblet.name).toBe(CATALOGUE.exercises.get("goblet-squat")!.name);
    expect(catalogue.ladders).toEqual(CATALOGUE.ladders);
    expect(catalogue.exercises.size).toBe(CATALOGUE.exercises.size);
  });
  test("the catalogue itself stays as it was", () => {
    expect(CATALOGUE.exercises.get("goblet-squat")!.coachOnly).toBe(false);
  });
});

describe("an entry that is said otherwise", () => {
  test("takes words, conditions and times; what is left out stays", () => {
    const before = CATALOGUE.exercises.get("goblet-squat")!;
    const now = catalogueOf(
      "change: [{ id: goblet-squat, move: Sink between the heels and rise, conditions: [heels stay down on the board], set-up seconds: 90, stress: { knee_deep: 3 } }]\n",
    ).exercises.get("goblet-squat")!;
    expect(now).toEqual({
      ...before,
      move: "Sink between the heels and rise",
      setupS: 90,
      stress: { ...before.stress, knee_deep: 3 },
      need: { ...before.need, conditions: [...before.need.conditions, "heels stay down on the board"] },
    });
  });
  test("keeps the rules of the catalogue, each told with its line", () => {
    expect(problemsOf("change: [{ id: goblet-squat, move: Sink }]\n")).toEqual([["own/words", "change.0.move", 2]]);
    expect(
      problemsOf("change:\n  - { id: goblet-squat, cues: [Do not lean, Elbows brush the knees, Rise like a lift] }\n"),
    ).toEqual([["own/cue-says-not", "change.0.cues.0", 3]]);
    expect(problemsOf("change: [{ id: goblet-squat, move: Sink }, { id: goblet-squat }]\n")).toContainEqual([
      "own/changed-twice",
      "change.1.id",
      2,
    ]);
    expect(problemsOf("change: [{ id: goblet-squatt }]\nhide: [no-such-form]\n").map(([code]) => code)).toEqual([
      "name/unknown",
      "name/unknown",
    ]);
  });
  test("a stress is raised and never lowered", () => {
    const { stress } = CATALOGUE.exercises.get("goblet-squat")!;
    expect(stress.knee_deep).toBeGreaterThan(1);
    expect(problemsOf("change: [{ id: goblet-squat, stress: { knee_deep: 1 } }]\n")).toEqual([
      ["own/stress-lower", "change.0.stress.knee_deep", 2],
    ]);
    expect(problemsOf("change: [{ id: goblet-squat, stress: { knee_deep: 0 } }]\n").map(([code]) => code)).toEqual([
      "own/stress-lower",
    ]);
  });
});

test("a file that says nothing leaves the catalogue as it is", () => {
  expect([...catalogueOf("").exercises.values()]).toEqual([...CATALOGUE.exercises.values()]);
});
