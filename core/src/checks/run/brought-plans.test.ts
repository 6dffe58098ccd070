import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../exercises/index.ts";
import { type Finding, readProgramme } from "../../model/index.ts";
import { sayFinding } from "../../text/index.ts";
import { checkProgramme } from "./run-checks.ts";

function findings(text: string): readonly Finding[] {
  const read = readProgramme(text, "programme.yaml");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return checkProgramme({ programme: read.value.programme, catalogue: CATALOGUE }).findings;
}
const said = (found: readonly Finding[]) => found.map((finding) => sayFinding(finding));

/** One session each, as people type off a page that they were given. */
const brought = (head: string, work: string) => `stave: 1
id: brought
title: Brought along
version: 1
${head}
phases:
  - key: all
    title: All weeks
    weeks: 4
    sessions:
${work}
`;
const HEAD = "goal: general\nstatus: novice\nunits: kg";

describe("a plan that somebody brings: what is missing is named, and nothing is guessed", () => {
  const judged = (text: string) => said(findings(text)).filter((sentence) => sentence.startsWith("Cannot judge"));

  test("no effort anywhere", () => {
    const text = brought(
      HEAD,
      `      - key: a
        title: Push
        minutes: 60
        work:
          - { slot: bench, pattern: horizontal push, first: barbell-bench-press, dose: "5 × 5, rest 3 min" }
          - { slot: press, pattern: vertical push, first: dumbbell-press-seated, dose: "3 × 10, rest 90 s" }`,
    );
    expect(judged(text)).toEqual([
      "Cannot judge how hard 2 of 2 doses are. Missing: repetitions in reserve or a share of the 1RM.",
    ]);
  });

  test("no rest in one of two", () => {
    const text = brought(
      HEAD,
      `      - key: a
        title: Pull
        minutes: 60
        work:
          - { slot: row, pattern: horizontal pull, first: cable-row-seated, dose: "3 × 10, 3 in reserve" }
          - { slot: pull, pattern: vertical pull, first: lat-pull-down, dose: "3 × 10, rest 90 s, 3 in reserve" }`,
    );
    expect(judged(text)).toEqual(["Cannot judge the rests of 1 of 2 doses. Missing: seconds or minutes of rest."]);
  });

  test("a movement that nobody knows, and conditioning in metres", () => {
    const text = brought(
      HEAD,
      `      - key: a
        title: Mixed
        minutes: 60
        work:
          - { slot: odd, pattern: squat, first: cellar-stride, dose: "2 × 8, rest 90 s, 3 in reserve" }
      - key: b
        title: Out
        minutes: 60
        work: []
        conditioning: [{ do: run, dose: 3000 m, effort: steady }]`,
    );
    expect(judged(text)).toEqual([
      "Cannot judge whether weekly sets in “All weeks” are too few. Missing: what cellar-stride trains.",
      "Cannot judge whether conditioning comes to 150 min a week: 0 min a week of conditioning in “All weeks” are asked in time, and more in something else. Missing: its minutes.",
      "Cannot judge whether “Mixed” fits its 60 min: 0 min without it. Missing: how long cellar-stride takes.",
    ]);
  });

  test("without goal, status, weeks, minutes, a movement's kind, its name and its dose: each is named with its line", () => {
    const read = readProgramme(
      `stave: 1
id: torn
title: Torn page
version: 1
units: kg
phases:
  - key: all
    title: All weeks
    sessions:
      - key: one
        title: One
        work:
          - { slot: bench, first: barbell-bench-press, dose: "5 × 5" }
          - { slot: press, pattern: vertical push, dose: "3 × 10" }
          - { slot: row, pattern: horizontal pull, first: one-arm-row }
`,
      "torn.yaml",
    );
    const missing = read.ok ? [] : read.problems.map(({ code, at, line }) => `${code} ${at.at(-1)} ${line}`);
    expect(missing).toEqual([
      "key/missing goal 1",
      "key/missing status 1",
      "key/missing weeks 7",
      "key/missing minutes 10",
      "key/missing pattern 13",
      "key/missing first 14",
      "key/missing dose 15",
    ]);
  });
});

test("a session of conditioning alone that is over its minutes is told, and offers no sets to take away", () => {
  const text = brought(
    HEAD,
    `      - key: a
        title: Long run
        minutes: 20
        work: []
        conditioning: [{ do: run, dose: 10000 m, effort: steady }]`,
  );
  const over = findings(text).find(({ check }) => check === "session/over-its-minutes");
  expect(over?.severity).toBe("stop");
  expect(over?.remedies.every(({ id }) => id !== "fewer-sets")).toBe(true);
});
