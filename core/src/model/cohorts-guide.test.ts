import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { madeUpPlace } from "../testing/index.ts";
import { COHORT_COLUMNS, COHORT_MAY, cohortReader } from "./cohort-read.ts";

const guide = readFileSync(new URL("../../../docs/guide/cohorts.md", import.meta.url), "utf8");
const places = [madeUpPlace({ id: "wren-home" }), madeUpPlace({ id: "customs-house-gym" })];
const context = { file: "guide.csv", places, catalogue: CATALOGUE, on: day("2027-01-11") };

test("the guide's table is read", () => {
  const [header, ...lines] = /```csv\n([\s\S]*?)\n```/
    .exec(guide)![1]!
    .split("\n")
    .map((raw, index) => ({ fields: raw.split(","), raw, line: index + 1 }));
  const reader = cohortReader(header!, context);
  if (!reader.ok) throw new Error(JSON.stringify(reader.problems));
  expect(lines.map((line) => reader.value(line).problems)).toEqual([[], []]);
});

test("the guide names every column", () => {
  for (const name of [...COHORT_COLUMNS, ...COHORT_MAY]) expect(guide).toContain(`\`${name}\``);
});
