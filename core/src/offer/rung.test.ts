import { describe, expect, test } from "vitest";
import type { ExerciseId, Ladder, Person } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise, madeUpPerson } from "../testing/index.ts";
import { earnedBy } from "./rung.ts";

/** easy → start → middle → hard, with a side branch start → aside, and hard also ends another ladder. */
const MAIN: Ladder = {
  id: "main",
  name: "Main",
  start: "start",
  steps: [
    { from: "easy", to: "start", branch: "main" },
    { from: "start", to: "middle", branch: "main" },
    { from: "middle", to: "hard", branch: "main" },
    { from: "start", to: "aside", branch: "aside" },
  ],
};
const OTHER: Ladder = {
  id: "other",
  name: "Other",
  start: "first",
  steps: [{ from: "first", to: "hard", branch: "main" }],
};
const loose = madeUpExercise({ id: "loose" });
const counted = madeUpExercise({ id: "counted", need: { count: { of: "start", reps: 10 }, conditions: [] } });
const onLadders = ["easy", "start", "middle", "hard", "aside", "first"].map((id) => madeUpExercise({ id }));
const catalogue = madeUpCatalogue([...onLadders, loose, counted], [MAIN, OTHER]);

function earned(said: Partial<Person>): ExerciseId[] {
  const ask = earnedBy(madeUpPerson(said), catalogue);
  return [...catalogue.exercises.values()].filter((exercise) => ask(exercise).ok).map(({ id }) => id);
}
function asked(said: Partial<Person>, id: ExerciseId) {
  return earnedBy(madeUpPerson(said), catalogue)(catalogue.exercises.get(id)!);
}

describe("a novice", () => {
  test("who was never assessed has the start and what is easier, and what asks for no count", () => {
    expect(earned({})).toEqual(["easy", "start", "first", "loose"]);
  });
  test("has the form they stand on and all easier ones, not the branch beside it", () => {
    expect(earned({ rungs: { main: "middle" } })).toEqual(["easy", "start", "middle", "first", "loose"]);
    expect(earned({ rungs: { main: "aside" } })).toEqual(["easy", "start", "aside", "first", "loose"]);
  });
  test("may stand below the start", () => {
    expect(earned({ rungs: { main: "easy" } })).toEqual(["easy", "first", "loose"]);
  });
  test("has a form that ends two ladders as soon as one of them is climbed", () => {
    expect(earned({ rungs: { other: "hard" } })).toContain("hard");
  });
  test("with a rung that is not on the ladder counts as never assessed", () => {
    expect(earned({ rungs: { main: "loose" } })).toEqual(earned({}));
  });
  test("is told where they stand, on every ladder of the form", () => {
    expect(asked({ rungs: { main: "start" } }, "hard")).toEqual({
      ok: false,
      why: [
        { code: "offer/above-rung", data: { ladder: "main", stands: "start", assessed: true } },
        { code: "offer/above-rung", data: { ladder: "other", stands: "first", assessed: false } },
      ],
    });
    expect(asked({}, "counted")).toEqual({
      ok: false,
      why: [{ code: "offer/count-not-shown", data: { needs: { of: "start", reps: 10 } } }],
    });
  });
});

describe("anybody else", () => {
  test("has the forms below the hardest third of a ladder that nobody assessed them on, and the note says so", () => {
    expect(earned({ status: "intermediate", rungs: { other: "first" } })).not.toContain("hard");
    expect(earned({ status: "intermediate" })).toHaveLength(8);
    expect(asked({ status: "advanced" }, "middle")).toEqual({
      ok: true,
      notes: [{ code: "offer/not-assessed", data: { ladder: "main" } }],
    });
    expect(asked({ status: "advanced" }, "counted")).toEqual({ ok: true, notes: [] });
  });
  test("has a harder form that nobody assessed them for only where its load can begin light", () => {
    const said = { status: "intermediate", rungs: { other: "first" } } as const;
    expect(asked(said, "hard")).toEqual({
      ok: false,
      why: [
        { code: "offer/not-shown", data: { ladder: "main" } },
        { code: "offer/above-rung", data: { ladder: "other", stands: "first", assessed: true } },
      ],
    });
    const held = madeUpCatalogue(
      [...onLadders.filter(({ id }) => id !== "hard"), madeUpExercise({ id: "hard", loadMeaning: "per hand" })],
      [MAIN, OTHER],
    );
    expect(earnedBy(madeUpPerson(said), held)(held.exercises.get("hard" as ExerciseId)!)).toEqual({
      ok: true,
      notes: [{ code: "offer/not-assessed", data: { ladder: "main" } }],
    });
  });
  test("is held to the rung once assessed", () => {
    expect(asked({ status: "advanced", rungs: { main: "start" } }, "middle").ok).toBe(false);
    expect(asked({ status: "advanced", rungs: { main: "middle" } }, "start")).toEqual({ ok: true, notes: [] });
  });
});
