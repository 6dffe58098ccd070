import { describe, expect, test } from "vitest";
import type { ExerciseId, Ladder } from "../model/index.ts";
import { madeUpCatalogue, madeUpExercise } from "../testing/index.ts";
import { CATALOGUE } from "./catalogue.ts";
import { atOrBelow, distance, easierOf, harderOf, ladderOf } from "./ladder.ts";

function step(from: ExerciseId, to: ExerciseId, branch = "main") {
  return { from, to, branch };
}

/** a → b → c → d with a short cut a → c, a branch b → side, and a second ladder that goes on from d. */
const MAIN: Ladder = {
  id: "main",
  name: "Main",
  start: "a",
  steps: [step("a", "b"), step("b", "c"), step("c", "d"), step("a", "c", "short"), step("b", "side", "side")],
};
const ON: Ladder = { id: "on", name: "On", start: "d", steps: [step("d", "e")] };
const ALONE: Ladder = { id: "alone", name: "Alone", start: "only", steps: [] };
const SMALL = madeUpCatalogue(
  ["a", "b", "c", "d", "e", "side", "only", "loose"].map((id) => madeUpExercise({ id })),
  [MAIN, ON, ALONE],
);

describe("a small ladder with a short cut and a side branch", () => {
  test("easier and harder forms are one step away, over all ladders", () => {
    expect(easierOf(SMALL, "c")).toEqual(["b", "a"]);
    expect(harderOf(SMALL, "b")).toEqual(["c", "side"]);
    expect(harderOf(SMALL, "d")).toEqual(["e"]);
    expect([easierOf(SMALL, "a"), harderOf(SMALL, "loose")]).toEqual([[], []]);
  });

  test("distance takes the shortest way and is negative downwards", () => {
    expect(distance(SMALL, "a", "d")).toBe(2);
    expect(distance(SMALL, "d", "a")).toBe(-2);
    expect(distance(SMALL, "b", "side")).toBe(1);
    expect([distance(SMALL, "c", "c"), distance(SMALL, "only", "only")]).toEqual([0, 0]);
  });

  test("a pair that stands on two ladders is as far as on the shorter of them", () => {
    const long = { ...MAIN, id: "long", steps: [step("a", "p"), step("p", "q"), step("q", "d")] };
    expect(distance({ ...SMALL, ladders: [long, MAIN] }, "a", "d")).toBe(2);
    expect(distance({ ...SMALL, ladders: [MAIN, long] }, "d", "a")).toBe(-2);
  });

  test("there is no distance between branches, between ladders, or off all ladders", () => {
    expect(distance(SMALL, "side", "c")).toBeUndefined();
    expect(distance(SMALL, "c", "e")).toBeUndefined();
    expect(distance(SMALL, "loose", "loose")).toBeUndefined();
    expect(distance(SMALL, "a", "nowhere")).toBeUndefined();
  });

  test("who stands on a form owns it and all below it, nearest first, and no other branch", () => {
    expect(atOrBelow(SMALL, "main", "d")).toEqual(["d", "c", "b", "a"]);
    expect(atOrBelow(SMALL, "main", "side")).toEqual(["side", "b", "a"]);
    expect(atOrBelow(SMALL, "alone", "only")).toEqual(["only"]);
  });

  test("no such ladder, or no such form on it: nothing is owned", () => {
    expect(atOrBelow(SMALL, "none", "a")).toEqual([]);
    expect(atOrBelow(SMALL, "main", "loose")).toEqual([]);
    expect(atOrBelow(SMALL, "on", "a")).toEqual([]);
  });

  test("a form belongs to the first ladder that starts on it or leads to it", () => {
    expect(["a", "d", "e", "only"].map((id) => ladderOf(SMALL, id)?.id)).toEqual(["main", "main", "on", "alone"]);
    expect(ladderOf(SMALL, "loose")).toBeUndefined();
  });

  test("a ring does not go on for ever", () => {
    const ring = madeUpCatalogue([], [{ ...MAIN, steps: [step("a", "b"), step("b", "a")] }]);
    expect(distance(ring, "a", "b")).toBe(1);
    expect(atOrBelow(ring, "main", "a")).toEqual(["a", "b"]);
  });
});

describe.each(CATALOGUE.ladders.map((ladder) => [ladder.id, ladder] as const))("the %s ladder", (id, ladder) => {
  const forms = [...new Set([ladder.start, ...ladder.steps.flatMap(({ from, to }) => [from, to])])];

  test("has only forms of the catalogue, no step twice and none onto itself", () => {
    expect(forms.filter((form) => !CATALOGUE.exercises.has(form))).toEqual([]);
    const pairs = ladder.steps.map(({ from, to }) => `${from} → ${to}`);
    expect(pairs.filter((pair, i) => pairs.indexOf(pair) !== i)).toEqual([]);
    expect(ladder.steps.filter(({ from, to }) => from === to)).toEqual([]);
    expect(ladder.steps.filter(({ branch }) => branch.trim() === "")).toEqual([]);
  });

  test("reaches every form from its start and never comes back to it", () => {
    expect(easierOf(CATALOGUE, ladder.start).filter((form) => forms.includes(form))).toEqual([]);
    expect(forms.filter((form) => !atOrBelow(CATALOGUE, id, form).includes(ladder.start))).toEqual([]);
  });

  test("has no ring: nothing stands under what it leads to", () => {
    const rings = ladder.steps.filter(({ from, to }) => atOrBelow(CATALOGUE, id, from).includes(to));
    expect(rings).toEqual([]);
  });

  test("makes easier and harder mutual, one step up and one down", () => {
    for (const { from, to } of ladder.steps) {
      expect(harderOf(CATALOGUE, from)).toContain(to);
      expect(easierOf(CATALOGUE, to)).toContain(from);
      expect([distance(CATALOGUE, from, to), distance(CATALOGUE, to, from)]).toEqual([1, -1]);
    }
  });
});

test("no two ladders together lead round in a ring", () => {
  const all = { id: "all", name: "All", start: "", steps: CATALOGUE.ladders.flatMap(({ steps }) => steps) };
  const joined = { ...CATALOGUE, ladders: [all] };
  expect(all.steps.filter(({ from, to }) => atOrBelow(joined, "all", from).includes(to))).toEqual([]);
});
