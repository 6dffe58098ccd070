import { describe, expect, test } from "vitest";
import { madeUpCatalogue, madeUpExercise } from "../testing/index.ts";
import { CATALOGUE } from "./catalogue.ts";
import { nearExercises } from "./near-names.ts";

function near(text: string, catalogue = CATALOGUE): readonly string[] {
  return nearExercises(catalogue, text).map(({ id }) => id);
}

describe("nearExercises", () => {
  test.each([
    ["bodysquat", "body-squat"],
    ["goblet sqaut", "goblet-squat"],
    ["back_squat", "back-squat"],
    ["Barbell Back Squatt", "back-squat"],
    ["kettlebel-swing", "kettlebell-swing"],
    ["RDL", "dumbbell-rdl"],
    ["trap-bar deadlift", "hex-bar-deadlift"],
    ["raise calf one-leg floor", "one-leg-calf-raise"],
  ])("%s: first of all %s", (text, id) => {
    expect(near(text)[0]).toBe(id);
  });

  test.each(["", " ", "x", "zzzzzzzz", "dragon flag on the moon", "squat ".repeat(2000)])(
    "nothing is near %s",
    (text) => {
      expect(near(text)).toEqual([]);
    },
  );

  test("three at most, also where many have the word", () => {
    expect(near("squat").length).toBe(3);
  });

  const small = madeUpCatalogue([
    madeUpExercise({ id: "z", name: "Other thing", synonyms: ["abcdefgh"] }),
    madeUpExercise({ id: "y", name: "Abcdefgh", synonyms: [] }),
    madeUpExercise({ id: "abcdefgh", name: "Third", synonyms: [] }),
    madeUpExercise({ id: "abcdefg", name: "Fourth", synonyms: [] }),
    madeUpExercise({ id: "w", name: "Long abcdefgh name", synonyms: [] }),
  ]);

  test("ties: id before name before synonym", () => {
    expect(near("abcdefgh", small)).toEqual(["abcdefgh", "y", "z"]);
  });

  test("fewest slips first, and words only after slips", () => {
    const two = madeUpCatalogue([...small.exercises.values()].filter(({ id }) => ["abcdefg", "w", "z"].includes(id)));
    expect(near("abcdefgh", two)).toEqual(["z", "abcdefg", "w"]);
  });

  test("equal in all: by the letters of the id, whatever the order of the catalogue", () => {
    const pair = [
      madeUpExercise({ id: "b1", name: "Bridge, long" }),
      madeUpExercise({ id: "a1", name: "Bridge, wide" }),
    ];
    expect(near("bridge", madeUpCatalogue(pair))).toEqual(["a1", "b1"]);
    expect(near("bridge", madeUpCatalogue(pair.toReversed()))).toEqual(["a1", "b1"]);
  });

  test("the best label of an exercise counts, wherever it stands", () => {
    const far = madeUpExercise({ id: "abcdefghij", name: "Abcdefgh", synonyms: ["abcdefghi"] });
    const mid = madeUpExercise({ id: "abcdefg", name: "Mid" });
    expect(near("abcdefgh", madeUpCatalogue([mid, far]))).toEqual(["abcdefghij", "abcdefg"]);
  });

  test("one letter is too little to mean anything", () => {
    expect(near("x", madeUpCatalogue([madeUpExercise({ id: "x" })]))).toEqual([]);
  });

  test("a short name may have one slip, a long one three, no more", () => {
    expect(near("abcdex", small)).toEqual([]);
    expect(near("abcdefgxx", small)).toEqual(["abcdefg", "abcdefgh", "y"]);
    expect(near("xx", small)).toEqual([]);
  });

  test("finds every entry by its own id, name and synonyms", () => {
    const lost = [...CATALOGUE.exercises.values()].filter(
      ({ id, name, synonyms }) => ![id, name, ...synonyms].every((label) => near(label).includes(id)),
    );
    expect(lost.map(({ id }) => id)).toEqual([]);
  });
});
