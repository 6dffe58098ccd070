/** Plans as people bring them, without doses. */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { readBrought, readProgramme } from "../model/index.ts";
import { sayFinding } from "../text/index.ts";
import { checkProgramme } from "./index.ts";

/** A week of sessions, each a list of what is done, as somebody writes them down. */
function plan(days: Readonly<Record<string, readonly string[]>>): string {
  const sessions = Object.entries(days).map(
    ([key, work]) =>
      `      - key: ${key}\n        title: ${key}\n        minutes: 90\n        work:\n${work.map((slot) => `          - { ${slot} }\n`).join("")}`,
  );
  return `stave: 1\nid: brought\ntitle: Brought\nversion: 1\ngoal: size\nstatus: intermediate\nunits: kg\nphases:\n  - key: all\n    title: All\n    weeks: 6\n    sessions:\n${sessions.join("")}`;
}

function said(text: string) {
  const read = readBrought(text, "brought.yaml");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { programme, unsaid } = read.value;
  return checkProgramme({
    programme,
    catalogue: CATALOGUE,
    ...(unsaid.length === 0 ? {} : { unsaid }),
  }).findings;
}

const bench = "slot: bench, pattern: horizontal push, first: barbell-bench-press";
const curl = "slot: curl, pattern: upper isolation, first: dumbbell-curl";
const row = "slot: row, pattern: horizontal pull, first: cable-row-seated";
const squat = "slot: squat, pattern: squat, first: back-squat";

describe("chest, legs and back on three days, and not a word of sets, repetitions or loads (a real question asks so)", () => {
  const findings = said(plan({ mon: [bench], wed: [squat], fri: [row, curl] }));

  test("the first word is what is missing, and what to ask: also sleep, and what has stopped rising", () => {
    expect(findings[0]).toMatchObject({ check: "programme/cannot-judge", data: { side: "dose", doses: 4, of: 4 } });
    expect(sayFinding(findings[0]!)).toMatch(/Cannot judge.*dose of 4 of 4 slots.*sleep.*stopped rising/);
  });
  test("what needs no dose is said: once a week for a muscle, without a number of sets nobody gave", () => {
    const once = findings.find(({ check }) => check === "week/muscle-once")!;
    expect(sayFinding(once)).toContain("chest (in “mon”)");
    expect(sayFinding(once)).not.toMatch(/\d sets/);
    expect(findings.map(({ check }) => check)).toContain("week/pattern-never-trained");
  });
  test("and nothing that a stand-in would make up: no minutes, rests, loads or numbers of sets", () => {
    const made = ["session/over-its-minutes", "dose/rest-too-short", "week/sets-outside-band", "session/first-dose"];
    expect(findings.filter(({ check }) => made.includes(check))).toEqual([]);
  });
  test("neighbour: with one dose said the others are still asked, with all of them nothing is", () => {
    expect(said(plan({ mon: [`${bench}, dose: "3 × 8"`, row] }))[0]?.data).toMatchObject({ doses: 1, of: 2 });
    const whole = said(plan({ mon: [`${bench}, dose: "3 × 8"`] }));
    expect(whole.filter(({ data }) => data["side"] === "dose")).toEqual([]);
  });
  test("whatever else is missing is still a problem of the file, and no stand-in helps a plan that is printed", () => {
    const text = plan({ mon: [bench] });
    expect(readBrought(text.replace("goal: size\n", ""), "x.yaml").ok).toBe(false);
    expect(readBrought(text.replace("minutes: 90", "minutes: soon"), "x.yaml").ok).toBe(false);
    expect(readProgramme(text, "x.yaml").ok).toBe(false);
  });
});
