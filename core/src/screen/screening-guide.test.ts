import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { PRINTED_RULES, PURPOSES, readAnswers, readRules, readToday } from "./index.ts";

const PAGE = readFileSync("docs/guide/screening.md", "utf8");
const BLOCKS = [...PAGE.matchAll(/^```yaml (\w+)\n([\s\S]*?)^```/gm)].map(([, kind, text]) => [kind!, text!] as const);
const READERS = { answers: readAnswers, today: readToday, rules: readRules } as const;

test.each(BLOCKS)("what the guide shows as %s is read without a problem", (kind, text) => {
  expect(READERS[kind as keyof typeof READERS](text, "guide").problems).toEqual([]);
});

test("the guide shows every kind of file, names every printed rule and every purpose", () => {
  expect(new Set<string>(BLOCKS.map(([kind]) => kind))).toEqual(new Set(Object.keys(READERS)));
  for (const { id } of Object.values(PRINTED_RULES).flat()) expect(PAGE).toContain(`\`${id}\``);
  // A coach of somebody blind guides by hand only with permission, which is recorded (common practice, no source).
  expect(PURPOSES).toContain("guide me by touch");
  for (const purpose of PURPOSES) expect(PAGE).toContain(`\`${purpose}\``);
});
