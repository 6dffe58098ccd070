import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { READ_PROBLEMS } from "./read-problems.ts";

const FILES = [
  "file-pieces",
  "load-text",
  "person-health",
  "person-training",
  "place-read",
  "roster-read",
  "roster-rules",
  "schema-faults",
  "window-text",
  "yaml-syntax",
  "yaml-text",
  "yaml-tree",
];

test("the list holds every code that the readers write, once, and no other", () => {
  const written = new Set(
    FILES.flatMap((name) => {
      const text = readFileSync(new URL(`${name}.ts`, import.meta.url), "utf8").replace(
        /const \w+_PROBLEMS = \[[^\]]*\]/,
        "",
      );
      return [
        ...text.matchAll(
          /"((?:yaml|key|value|date|name|id|load|window|place|screening|person|caution|lift|recent)\/[a-z-]+)"/g,
        ),
      ];
    }).map(([, code]) => code),
  );
  expect([...written].sort()).toEqual([...READ_PROBLEMS].sort());
});
