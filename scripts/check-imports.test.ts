import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkTree, faultsOf, readLayers } from "./check-imports.ts";

const layers = readLayers(readFileSync("ARCHITECTURE.md", "utf8"));

describe("the import check", () => {
  test("reads the layer table of ARCHITECTURE.md", () => {
    expect(layers.rank.get("units")).toBe(0);
    expect(layers.rank.get("fit")).toBe(5);
    expect(layers.also.has("offer > loads")).toBe(true);
  });

  test.each([
    ["a static import upward", "model/x.ts", 'import { fit } from "../fit/index.ts";', "model may not import fit"],
    ["a type import upward", "model/x.ts", 'import type { A } from "../fit/index.ts";', "model may not import fit"],
    ["a re-export upward", "model/x.ts", 'export * from "../fit/index.ts";', "model may not import fit"],
    ["a dynamic import upward", "model/x.ts", 'const a = await import("../fit/index.ts");', "model may not import fit"],
    ["a bare import upward", "model/x.ts", 'import "../fit/index.ts";', "model may not import fit"],
    [
      "a neighbour of the same layer",
      "checks/x.ts",
      'import { fit } from "../fit/index.ts";',
      "checks may not import fit",
    ],
    ["a side door", "fit/x.ts", 'import { a } from "../model/dose.ts";', "not through its index.ts"],
    ["a platform", "fit/x.ts", 'import { readFileSync } from "node:fs";', "may not use the package node:fs"],
    ["test code", "fit/x.ts", 'import { published } from "../testing/index.ts";', "only tests may import testing"],
  ])("refuses %s", (_, file, text, fault) => {
    expect(faultsOf(file, text, layers).join("\n")).toContain(fault);
  });

  test("lets through what is allowed", () => {
    const text =
      'import { a } from "../model/index.ts"; import { b } from "./b.ts"; import { z } from "zod"; import { kg } from "../units.ts";';
    expect(faultsOf("fit/x.ts", text, layers)).toEqual([]);
    expect(faultsOf("offer/x.ts", 'import { a } from "../loads/index.ts";', layers)).toEqual([]);
  });

  test("the tree as it stands is clean", () => {
    expect(checkTree("core/src", readFileSync("ARCHITECTURE.md", "utf8"))).toEqual([]);
  });
});
