import { describe, expect, test } from "vitest";
import { sourcesNamed, unitFaults } from "./guard.ts";

const folder = "core/src/equations";
const unit = { path: `${folder}/epley.ts`, text: "/** @source epley1985 */\nexport function epley() {}" };
const index = { path: `${folder}/index.ts`, text: 'export * from "./epley.ts";' };

describe("guard", () => {
  test("a unit with its test, source and index line passes", () => {
    expect(unitFaults(folder, [unit, index], () => true)).toEqual([]);
  });

  test.each([
    ["no test", [unit, index], () => false, "has no test beside it"],
    ["no index line", [unit, { ...index, text: "" }], () => true, "stands in no index"],
    ["no source", [{ ...unit, text: "export function epley() {}" }, index], () => true, "names no source"],
  ])("a unit with %s fails", (_, files, exists, fault) => {
    expect(unitFaults(folder, files, exists).join("\n")).toContain(fault);
  });

  test("sees sources in every way they are written", () => {
    expect(sourcesNamed('@source epley1985\nsources: ["a", "b"]\nsource: "c"\npublished("d", "x")')).toEqual([
      "epley1985",
      "a",
      "b",
      "c",
      "d",
    ]);
  });
});
