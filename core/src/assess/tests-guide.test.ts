import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { ASSESSMENT_TESTS, readResults, startingRungs } from "./index.ts";

const PAGE = readFileSync("docs/guide/tests.md", "utf8");

test("what the guide shows is read, and starts where the guide says", () => {
  const [, text] = /^```yaml results\n([\s\S]*?)^```/m.exec(PAGE)!;
  const read = readResults(text!, "guide");
  expect(read.problems).toEqual([]);
  const { rungs } = startingRungs(read.ok ? read.value.value : { born: 0 as never, results: [] }, CATALOGUE);
  expect(rungs.map(({ exercise }) => exercise)).toEqual(["touch-and-go-squat", "knee-plank", "one-leg-calf-raise"]);
});

test("every test that gives a start stands in its table", () => {
  const named = [...PAGE.matchAll(/^\| `.*/gm)].join(" ");
  for (const { id, sides } of ASSESSMENT_TESTS) {
    const result = { test: id, on: 20_000 as never, conditions: {}, ...(sides ? { left: 9, right: 9 } : { value: 9 }) };
    const { rungs } = startingRungs({ born: 0 as never, sex: "man", results: [result] }, CATALOGUE);
    if (rungs.length > 0) expect(named).toContain(`\`${id}\``);
  }
});
