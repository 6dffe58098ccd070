import { expect, test } from "vitest";
import { z } from "zod";
import { boundsOf, formsWithout, keySchemasOf, namesOf, optionOf, schemasAt } from "./schema-walk.ts";

const Leaf = z.strictObject({ size: z.int().min(8).max(12) });
const Tree = z
  .strictObject({
    plain: Leaf,
    wrapped: Leaf.optional().default({ size: 9 }).readonly(),
    piped: z.string().max(4).transform(Number),
    list: z.array(z.union([Leaf, z.strictObject({ pair: z.array(Leaf) })])),
    map: z.partialRecord(z.enum(["a", "b"]), z.number().gt(0)),
    two: z.tuple([z.number(), z.string().min(2)]),
    lazy: z.lazy(() => Leaf),
  })
  .transform((tree) => tree);

const at = (...path: (string | number)[]) => schemasAt([Tree], path);

test("a path leads through wrappers, lists, maps and tuples to what is read from the text", () => {
  expect(boundsOf(at("plain", "size"))).toBe("8–12");
  expect(boundsOf(at("wrapped", "size"))).toBe("8–12");
  expect(boundsOf(at("piped"))).toBe("≤ 4");
  expect(boundsOf(at("list", 3, "size"))).toBe("8–12");
  expect(boundsOf(at("list", 0, "pair", 7, "size"))).toBe("8–12");
  expect(boundsOf(at("map", "a"))).toBe("> 0");
  expect(boundsOf([z.number().gt(0).max(5)])).toBe("> 0, ≤ 5");
  expect(boundsOf(at("two", 1))).toBe("≥ 2");
  expect(boundsOf(at("lazy", "size"))).toBe("8–12");
});

test("where no schema leads, there is none", () => {
  for (const path of [["none"], ["plain", "none"], ["piped", "x"], ["two", 2]]) expect(at(...path)).toEqual([]);
  expect(boundsOf([])).toBe("");
});

test("names of a map, of all forms of a union together, or of one", () => {
  expect(namesOf(at("map"))).toEqual(["a", "b"]);
  expect(namesOf(at("list", 0))).toEqual(["size", "pair"]);
  expect(namesOf(optionOf(at("list", 0), 1))).toEqual(["pair"]);
  expect(optionOf(at("list", 0), 2)).toEqual([]);
  expect(namesOf(keySchemasOf(at("map")))).toEqual([]);
  expect(keySchemasOf(at("map"))).toHaveLength(1);
});

test("the form in which just these names are unknown", () => {
  expect(namesOf(formsWithout(at("list", 0), ["size", "piar"], ["piar"]))).toEqual(["size"]);
  expect(namesOf(formsWithout(at("list", 0), ["pair", "siz"], ["siz"]))).toEqual(["pair"]);
  expect(namesOf(formsWithout(at("list", 0), ["x"], ["y"]))).toEqual(["size", "pair"]);
});
