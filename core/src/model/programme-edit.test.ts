import { expect, test } from "vitest";
import { parse } from "yaml";
import { COMMENTED_PROGRAMME as FILE } from "../testing/index.ts";
import type { Edit, Path, Problem } from "./finding.ts";
import { editProgramme } from "./programme-edit.ts";

function edited(text: string, ...edits: readonly Edit[]): string {
  const read = editProgramme(text, edits);
  expect(read.problems).toEqual([]);
  return read.ok ? read.value : "";
}

/** Lines that went and lines that came. */
function change(...edits: readonly Edit[]): { gone: readonly string[]; come: readonly string[] } {
  const [before, after] = [FILE.split("\n"), edited(FILE, ...edits).split("\n")];
  let first = 0;
  while (before[first] === after[first] && first < before.length) first++;
  let last = 0;
  while (before.at(-1 - last) === after.at(-1 - last) && last < before.length - first && last < after.length - first)
    last++;
  return { gone: before.slice(first, before.length - last), come: after.slice(first, after.length - last) };
}

const SESSION: Path = ["phases", 0, "sessions", 0];
const SLOT: Path = [...SESSION, "work", 0];
const PAIR: Path = [...SESSION, "work", 1, "pair"];

test("a dose is written in the canonical print; the comment behind it stays", () => {
  expect(change({ op: "set", at: [...SLOT, "dose"], value: "4x6-8 rest 2:00" })).toEqual({
    gone: ["            dose: 3 × 8–10, rest 90 s   # slow down"],
    come: ["            dose: 4 × 6–8, rest 2 min   # slow down"],
  });
});

test("quotes stay as the coach wrote them", () => {
  const dose = change({ op: "set", at: [...SLOT, "changes", 0, "dose"], value: "5 × 5" });
  expect(dose.come).toEqual(['                dose: "5 × 5"']);
  expect(change({ op: "set", at: ["phases", 0, "title"], value: "Base: it's on" }).come).toEqual([
    "    title: 'Base: it''s on'",
  ]);
});

test("in brackets a dose with a comma gets quotes", () => {
  expect(change({ op: "set", at: [...SESSION, "warmup", 0, "dose"], value: "5 min, rest 60 s" }).come).toEqual([
    '        - {do: cycle, dose: "1 × 5 min, rest 60 s"}   # easy',
  ]);
});

test("a name that was not there comes where a coach would look for it", () => {
  expect(change({ op: "set", at: [...SLOT, "muscles"], value: ["front thigh", "buttocks"] })).toEqual({
    gone: [],
    come: ["            muscles: [ front thigh, buttocks ]".replace("[ ", "[").replace(" ]", "]")],
  });
  expect(change({ op: "insert", at: [...PAIR, 1, "way"], value: "load" }).come).toEqual(["                way: load"]);
  expect(change({ op: "set", at: ["weekly", "sets", "calf"], value: "0–6" })).toEqual({
    gone: ["  sets: {chest: 4–10, 'lats': 6–12} # two only"],
    come: ["  sets: {chest: 4–10, 'lats': 6–12, calf: 0–6} # two only"],
  });
  const silence = [{ check: "week/sets-outside-band", reason: "short block" }];
  expect(change({ op: "set", at: ["silence"], value: silence }).come).toEqual([
    "silence:",
    "  - check: week/sets-outside-band",
    "    reason: short block",
  ]);
});

test("a slot goes in between without moving the comments of its neighbours", () => {
  const value = { slot: "hinge", pattern: "hinge", first: "hip-hinge", dose: "2x8" };
  expect(change({ op: "insert", at: [...SESSION, "work", 1], value })).toEqual({
    gone: [],
    come: [
      "          - slot: hinge",
      "            pattern: hinge",
      "            first: hip-hinge",
      "            dose: 2 × 8",
    ],
  });
});

test("into an empty list, at the front, and at the end", () => {
  const value = { slot: "hinge", pattern: "hinge", first: "hip-hinge", dose: "2x8" };
  expect(change({ op: "insert", at: ["phases", 0, "sessions", 1, "work", 0], value }).come).toEqual([
    "        work:",
    "          - slot: hinge",
    "            pattern: hinge",
    "            first: hip-hinge",
    "            dose: 2 × 8",
  ]);
  expect(change({ op: "insert", at: [...SESSION, "warmup", 0], value: { ramp: "squat", sets: 1 } }).come).toEqual([
    "        - ramp: squat",
    "          sets: 1",
  ]);
  expect(change({ op: "insert", at: ["phases", 0, "light", 1], value: 5 }).come).toEqual(["    light: [4, 5]"]);
  expect(change({ op: "insert", at: ["phases", 0, "light", 0], value: 2 }).come).toEqual(["    light: [2, 4]"]);
});

test("taken out: a name, the first name of an entry, an entry, the last entry", () => {
  expect(change({ op: "remove", at: [...SLOT, "note"] })).toEqual({
    gone: ["            note: |", "              Breathe.", "              Stand tall."],
    come: [],
  });
  expect(change({ op: "remove", at: [...PAIR, 1, "slot"] })).toEqual({
    gone: ["              - slot: row", "                pattern: horizontal pull"],
    come: ["              - pattern: horizontal pull"],
  });
  expect(change({ op: "remove", at: [...PAIR, 0, "slot"] })).toEqual({
    gone: ["              - slot: press"],
    come: ["              -"],
  });
  expect(change({ op: "remove", at: [...SESSION, "warmup", 1] }).gone).toEqual([
    "        - ramp: squat",
    "          sets: 2",
  ]);
  expect(change({ op: "remove", at: [...SLOT, "changes", 0] }).come).toEqual(["            changes: []"]);
  expect(change({ op: "remove", at: ["weekly", "sets", "lats"] }).come).toEqual(["  sets: {chest: 4–10} # two only"]);
});

test("a list in place of another keeps the comments around it", () => {
  const value = [
    { week: 2, dose: "3x10" },
    { week: 4, dose: "2x8, rest 60" },
  ];
  expect(change({ op: "set", at: [...SLOT, "changes"], value })).toEqual({
    gone: ["              - week: 3", '                dose: "4 × 8"'],
    come: [
      "              - week: 2",
      "                dose: 3 × 10",
      "              - week: 4",
      "                dose: 2 × 8, rest 60 s",
    ],
  });
});

test("paths are those of the text before any of the edits", () => {
  const value = (slot: string) => ({ slot, pattern: "hinge", first: "hip-hinge", dose: "2x8" });
  const at = (index: number): Path => [...SESSION, "work", index];
  const after = parse(
    edited(
      FILE,
      { op: "insert", at: at(0), value: value("one") },
      { op: "insert", at: at(0), value: value("two") },
      { op: "set", at: [...at(1), "restS"], value: 90 },
      { op: "remove", at: at(0) },
      { op: "insert", at: at(2), value: value("three") },
    ),
  );
  const work = after.phases[0].sessions[0].work as { slot?: string; restS?: number }[];
  expect(work.map(({ slot, restS }) => slot ?? restS)).toEqual(["one", "two", 90, "three"]);
});

test("a value that stands there already changes nothing", () => {
  expect(edited(FILE, { op: "set", at: ["weekly", "gap"], value: 48 })).toBe(FILE);
  expect(edited(FILE)).toBe(FILE);
});

function problems(edits: readonly Edit[], text = FILE): readonly string[] {
  const read = editProgramme(text, edits, "a.yaml");
  expect(read.ok).toBe(false);
  return read.problems.map(
    (p: Problem) => `${p.code} ${p.line}:${p.column} ${[p.found, p.allowed, p.maybe].map((x) => x ?? "").join("|")}`,
  );
}

test("an edit that cannot be done is told, and nothing is changed", () => {
  expect(problems([{ op: "set", at: ["phases", 0, "sesions", 0, "minutes"], value: 50 }])).toEqual([
    "edit/no-path 22:5 sesions|key, title, weeks, light, sessions|sessions",
  ]);
  expect(problems([{ op: "set", at: [...SESSION, "work", 7, "dose"], value: "3x8" }])).toEqual([
    "edit/no-path 38:11 7|0–1|",
  ]);
  expect(problems([{ op: "remove", at: ["silence"] }])[0]).toMatch(/^edit\/no-path 2:1 silence\|stave, id/);
  expect(problems([{ op: "remove", at: [] }])[0]).toMatch(/^edit\/no-path/);
  expect(problems([{ op: "set", at: ["id", "x"], value: 1 }])).toEqual(["edit/no-path 3:5 x||"]);
  expect(problems([{ op: "insert", at: ["id"], value: "x" }])).toEqual(["edit/there 3:5 id||"]);
  expect(problems([{ op: "insert", at: [...SESSION, "work", -1], value: 1 }])).toEqual(["edit/no-path 38:11 -1|0–1|"]);
  expect(problems([{ op: "insert", at: [...SESSION, "work", 0.5], value: 1 }])).toEqual([
    "edit/no-path 38:11 0.5|0–1|",
  ]);
  expect(problems([{ op: "set", at: [...SLOT, "dose"], value: "3 × 12-8, rset 2" }])).toEqual([
    "dose/reversed 41:19 12-8|8–12|8–12",
    "dose/unknown-word 41:19 rset 2|rest, in reserve, RPE, @, each side, tempo, inside|rest",
  ]);
  expect(problems([{ op: "insert", at: [...SESSION, "work", 0], value: { slot: "x", dose: "0x8" } }])).toEqual([
    "dose/out-of-range 41:19 0|1–20 sets|",
  ]);
});

test("edits that get in each other's way are told", () => {
  const dose: Edit = { op: "set", at: [...SLOT, "dose"], value: "3x8" };
  expect(problems([dose, { op: "remove", at: SLOT }])).toEqual(["edit/clash 41:19 remove||"]);
  expect(problems([dose, { ...dose, value: "4x8" }])).toHaveLength(2);
});

test("a text that is no YAML is told and not touched", () => {
  expect(problems([], "a: [1\n")).toEqual(["yaml/unclosed 2:1 |]|"]);
});

test("a layout that is not known is left alone", () => {
  expect(problems([{ op: "remove", at: ["id"] }], "? id\n: a\n? title\n: b\n")).toEqual(["edit/layout 1:1 ||"]);
});

test("a file without a last line break, or with a mark before its first character, is edited too", () => {
  const bare = FILE.trimEnd().replace(/\n# the end$/, "");
  expect(edited(bare, { op: "remove", at: ["phases", 0, "sessions", 1, "conditioning", 0, "effort"] })).toBe(
    bare.replace("\n            effort: steady", ""),
  );
  expect(edited(`\uFEFF${FILE}`, { op: "set", at: ["id"], value: "pier" })).toBe(
    `\uFEFF${FILE.replace("id: harbour", "id: pier")}`,
  );
});
