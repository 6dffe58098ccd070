import fc from "fast-check";
import { expect, test } from "vitest";
import { parse } from "yaml";
import type { Json } from "./finding.ts";
import { writeBlock, writeInline } from "./yaml-write.ts";

test("in brackets a comma gets quotes, outside it needs none", () => {
  expect(writeInline("3 × 8, rest 90 s", true)).toBe('"3 × 8, rest 90 s"');
  expect(writeInline("3 × 8, rest 90 s", false)).toBe("3 × 8, rest 90 s");
});

test("quotes are kept, and text that reads as something else gets them", () => {
  expect(writeInline("it's", false, "single")).toBe("'it''s'");
  expect(writeInline("a", false, "double")).toBe('"a"');
  expect(writeInline("012", false)).toBe('"012"');
  expect(writeInline("two\nlines", false, "single")).toBe('"two\\nlines"');
});

test("lists of single words stay on one line, all else gets lines of its own", () => {
  expect(writeBlock({ muscles: ["chest", "lats"], changes: [{ week: 3, dose: "3 × 8" }] })).toEqual([
    "muscles: [chest, lats]",
    "changes:",
    "  - week: 3",
    "    dose: 3 × 8",
  ]);
});

test("whatever is written reads back, in lines and in brackets, and never folds", () => {
  const json = fc
    .jsonValue({ noUnicodeString: false, maxDepth: 3 })
    .map((value) => JSON.parse(JSON.stringify(value)) as Json);
  fc.assert(
    fc.property(json, fc.constantFrom("plain", "single", "double" as const), (value, quotes) => {
      const inline = writeInline(value, true, quotes as "plain");
      expect(inline).not.toContain("\n");
      expect(parse(`[${inline}]`)).toEqual([value]);
      expect(
        parse(
          `a:\n${writeBlock(value)
            .map((line) => `  ${line}`)
            .join("\n")}\n`,
        ),
      ).toEqual({ a: value });
    }),
    { numRuns: 500 },
  );
});
