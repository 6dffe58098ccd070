import { expect, test } from "vitest";
import { madeUpExercise } from "../testing/index.ts";
import { ListedExercises } from "./listed-exercises.ts";

function threeOf(asked: string[]) {
  const listed = ["b", "a", "c"].map((id) => ({
    id,
    make: () => {
      asked.push(id);
      return madeUpExercise({ id });
    },
  }));
  return new ListedExercises(listed);
}

test("names and sizes ask for nothing, a look-up for one, and each is made once", () => {
  const asked: string[] = [];
  const three = threeOf(asked);
  expect([three.size, three.has("a"), three.has("d"), [...three.keys()]]).toEqual([3, true, false, ["b", "a", "c"]]);
  expect(asked).toEqual([]);
  expect(three.get("a")).toBe(three.get("a"));
  expect(three.get("d")).toBeUndefined();
  expect(asked).toEqual(["a"]);
});

test("it reads like the map of the same entries, in their order, with the same objects", () => {
  const asked: string[] = [];
  const three = threeOf(asked);
  const a = three.get("a");
  const plain = new Map(["b", "a", "c"].map((id) => [id, madeUpExercise({ id })]));
  expect(new Map(three)).toEqual(plain);
  expect([...three.values()]).toEqual([...plain.values()]);
  expect([...three.entries()]).toEqual([...plain.entries()]);
  const each: string[] = [];
  three.forEach((exercise, id, map) => {
    each.push(`${id} ${exercise.id} ${map === three}`);
  });
  expect(each).toEqual(["b b true", "a a true", "c c true"]);
  expect([...three.values()][1]).toBe(a);
  expect(asked).toEqual(["a", "b", "c"]);
});
