import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { printDose } from "./dose-print.ts";
import { readDose } from "./dose-read.ts";
import { readProgramme } from "./programme-read.ts";
import { RUN_WALK_BOUNDS } from "./run-walk.ts";
import { MAX_TEXT } from "./yaml-text.ts";

const GUIDE = readFileSync(new URL("../../../docs/guide/programme-file.md", import.meta.url), "utf8");
const EXAMPLE = /```yaml programme\n([\s\S]*?)```/.exec(GUIDE)![1]!;

test("the guide's programme is read, with what it leaves unsaid", () => {
  const read = readProgramme(EXAMPLE, "guide.yaml");
  expect(read.problems).toEqual([]);
  if (!read.ok) return;
  const { programme, positions, text } = read.value;
  expect(text).toBe(EXAMPLE);
  expect(programme.weekly?.sets).toEqual({
    chest: { from: 4, to: 8 },
    lats: { from: 4, to: 10 },
    forearm: { from: 0, to: 8 },
  });
  const [squat, pair, plank] = programme.phases[0]!.sessions[0]!.work;
  expect(squat).toMatchObject({ slot: "squat", down: 3, up: 1, way: "reps then load" });
  expect(pair).toMatchObject({
    pair: [
      { slot: "push", down: 99, up: 0, way: "reps then load" },
      { slot: "row", down: 99, up: 0 },
    ],
    restS: 60,
  });
  expect(plank).toMatchObject({ way: "hold time", dose: { restS: 45 } });
  const line = EXAMPLE.split("\n").findIndex((row) => row.includes("first: inverted-row-60")) + 1;
  const at = ["phases", 0, "sessions", 0, "work", 1, "pair", 1, "first"];
  expect(positions.at(at)).toEqual({ line, column: 24 });
});

test("every row of the guide's table of run–walk levels is true", () => {
  const rows = [...GUIDE.matchAll(/^\| (\d) \| (?:(\d+) × )?run (.*?)(?:, walk (.*) between)? \| (\d+):(\d\d) \|$/gm)];
  expect(rows).toHaveLength(RUN_WALK_BOUNDS.to);
  const secondsIn = (text: string) =>
    text
      .split(/(?<=[a-z]) /)
      .reduce((sum, part) => sum + Number.parseInt(part, 10) * (part.endsWith("min") ? 60 : 1), 0);
  for (const [, level, bouts = "1", run, walk = "0 s", minutes, seconds] of rows) {
    const [count, runS, walkS] = [Number(bouts), secondsIn(run!), secondsIn(walk)];
    expect({ level, whole: count * runS + (count - 1) * walkS }).toEqual({
      level,
      whole: 60 * Number(minutes) + Number(seconds),
    });
  }
});

test("a run needs its name and its level; two sessions may have one and the same run", () => {
  const item = "{ slot: run, runWalk: 2, effort: easy, or: [cycle-upright] }";
  const text = SMALL.replace("        work:", `        conditioning: [${item}]\n        work:`);
  const read = readProgramme(text, "a.yaml");
  expect(read.problems).toEqual([]);
  if (!read.ok) return;
  expect(read.value.programme.phases[0]!.sessions[0]!.conditioning).toEqual([
    { slot: "run", runWalk: 2, do: "run", effort: "easy", or: ["cycle-upright"] },
  ]);
});

test("every row of the guide's table of doses is true", () => {
  const rows = [...GUIDE.matchAll(/^\| `([^`]+)` \| `([^`]+)` \|$/gm)].map(
    ([, written, print]) => [written!, print!] as const,
  );
  expect(rows.length).toBeGreaterThan(20);
  for (const [written, print] of rows) {
    const read = readDose(written);
    expect(read.ok ? printDose(read.value) : read.problems, written).toBe(print);
  }
});

const SMALL = `stave: 1
id: a
title: A
version: 1
goal: general
status: novice
units: kg
phases:
  - key: p
    title: P
    weeks: 4
    sessions:
      - key: s
        title: S
        minutes: 40
        work:
          - slot: squat
            pattern: squat
            first: body-squat
            dose: 3 × 8
`;

/** All problems, each as `code line:column found|allowed|maybe`. */
function told(text: string): readonly string[] {
  const read = readProgramme(text, "a.yaml");
  expect(read.ok).toBe(false);
  return read.problems.map(
    (p) => `${p.code} ${p.line}:${p.column} ${[p.found, p.allowed, p.maybe].map((piece) => piece ?? "").join("|")}`,
  );
}

function instead(line: string, other: string): string {
  expect(SMALL).toContain(line);
  return SMALL.replace(line, other);
}

test("the small programme is read", () => expect(readProgramme(SMALL, "a.yaml").problems).toEqual([]));

const slot = (key: string, dose = "3 × 8") => `{ slot: ${key}, pattern: squat, first: body-squat, dose: "${dose}" }`;
const WORK = SMALL.slice(SMALL.indexOf("          - slot"));

/** The small programme with other work; the first line of it is line 17. */
function work(...lines: readonly string[]): string {
  return SMALL.replace(WORK, `${lines.map((line) => `          ${line}\n`).join("")}`);
}

const BAD: readonly (readonly [what: string, text: string, told: readonly string[]])[] = [
  ["empty", "", ["yaml/empty 1:1 ||"]],
  ["only comments", "# to come\n", ["yaml/only-comments 1:1 ||"]],
  ["a tab as indentation", instead("            dose:", "\tdose:"), ["yaml/tab 20:1 ||"]],
  ["a name twice", instead("version: 1", "version: 1\nversion: 2"), ["yaml/duplicate-key 5:1 version||"]],
  ["a NUL", instead("title: A", "title: A\u0000"), ["yaml/not-text 3:9 ||"]],
  ["bytes that are no text", instead("title: A", "title: caf\uFFFD"), ["yaml/not-text 3:11 ||"]],
  ["no shape version", instead("stave: 1\n", ""), ["programme/shape-version 1:1 nothing|1|stave: 1"]],
  ["a later shape version", instead("stave: 1", "stave: 2"), ["programme/shape-version 1:8 2|1|stave: 1"]],
  ["012", instead("version: 1", "version: 012"), ["yaml/number 4:10 012|12, 12.5, -3|12"]],
  ["not a number", instead("weeks: 4", "weeks: .nan"), ["yaml/number 11:12 .nan|12, 12.5, -3|"]],
  ["a version below 1", instead("version: 1", "version: 0"), ["value/small 4:10 0|1–99999|"]],
  ["an id in capitals", instead("id: a", "id: My Plan"), ["id/form 2:5 My Plan|a–z 0–9 -, 1–40|my-plan"]],
  ["a title of 81 letters", instead("title: A", `title: ${"x".repeat(81)}`), ["value/long 3:8 81|1–80|"]],
  ["a hidden mark in a title", instead("title: A", 'title: "A\\u0007B"'), ["name/marks 3:10 U+0007||"]],
  [
    "a goal that is none",
    instead("goal: general", "goal: strenght"),
    ["value/choice 5:7 strenght|general, strength, size, endurance, power|strength"],
  ],
  ["a reversed range", instead("3 × 8", "3 × 12-8"), ["dose/reversed 20:23 12-8|8–12|8–12"]],
  ["10^9 repetitions", instead("3 × 8", "3 × 10^9"), ["dose/out-of-range 20:23 10^9|1–100 reps|"]],
  [
    "a dose in quotes",
    instead("3 × 8", "'3 × 8, rset 2'"),
    ["dose/unknown-word 20:27 rset 2|rest, in reserve, RPE, @, each side, tempo, inside|rest"],
  ],
  ["a number for a dose", instead("3 × 8", "8"), ["value/type 20:19 8|text|"]],
  [
    "two things wrong with one dose",
    instead("3 × 8", "0 × 8, RPE 12"),
    ["dose/out-of-range 20:19 0|1–20 sets|", "dose/out-of-range 20:30 12|RPE 7–10|"],
  ],
  ["minutes below 5", instead("minutes: 40", "minutes: 4"), ["value/small 15:18 4|5–240|"]],
  ["no phase", SMALL.replace(/phases:[\s\S]*/, "phases: []\n"), ["value/few 8:9 0|1–12|"]],
  [
    "a light week outside the phase",
    instead("weeks: 4", "weeks: 4\n    light: [4, 9]"),
    ["programme/week-outside 12:16 9|1–4|"],
  ],
  [
    "light weeks out of order",
    instead("weeks: 4", "weeks: 4\n    light: [4, 2]"),
    ["programme/weeks-order 12:16 2|> 4|"],
  ],
  [
    "a change outside the phase",
    work(`- ${slot("a").replace(" }", ", changes: [{ week: 5, dose: 3x8 }] }")}`),
    ["programme/week-outside 17:92 5|2–4|"],
  ],
  ["a slot key twice", work(`- ${slot("a")}`, `- ${slot("a")}`), ["id/same 18:21 a||a-2"]],
  [
    "a run with the name of a slot",
    instead("        work:", "        conditioning: [{ slot: squat, runWalk: 2, effort: easy }]\n        work:"),
    ["id/same 16:32 squat||"],
  ],
  [
    "a level of running and walking that is none",
    instead("        work:", "        conditioning: [{ slot: run, runWalk: 10, effort: easy }]\n        work:"),
    ["value/big 16:46 10|1–9|"],
  ],
  ["three in a pair", work(`- pair: [${slot("a")}, ${slot("b")}, ${slot("c")}]`), ["value/many 17:19 3|2–2|"]],
  ["two in a round", work(`- round: [${slot("a")}, ${slot("b")}]`), ["value/few 17:20 2|3–6|"]],
  [
    "a pair with unequal sets",
    work("- pair:", `    - ${slot("a")}`, `    - ${slot("b", "2 × 8")}`),
    ["programme/sets-differ 19:69 2|3|"],
  ],
  [
    "a pair whose sets part in week 3",
    work("- pair:", `    - ${slot("a")}`, `    - ${slot("b").replace(" }", ", changes: [{ week: 3, dose: 4x8 }] }")}`),
    ["programme/sets-differ 19:105 4|3|"],
  ],
  [
    "a ramp to nowhere",
    instead("        work:", "        warmup: [{ ramp: sqaut, sets: 2 }]\n        work:"),
    ["name/unknown 16:26 sqaut|squat|squat"],
  ],
  [
    "a silence of no slot",
    instead("phases:", "silence: [{ check: a/b, slot: sqat, reason: x }]\nphases:"),
    ["name/unknown 8:31 sqat|squat|squat"],
  ],
  [
    "a session without anything",
    SMALL.replace(`work:\n${WORK}`, "work: []\n"),
    ["programme/empty-session 16:15 0|1–20|"],
  ],
  [
    "21 slots",
    work(...Array.from({ length: 7 }, (_, i) => `- round: [${["a", "b", "c"].map((k) => slot(k + i)).join(", ")}]`)),
    ["programme/slots 17:11 21|1–20|"],
  ],
  [
    "53 weeks",
    `${SMALL}${SMALL.slice(SMALL.indexOf("  - key: p")).replace("key: p", "key: q").replace("slot: squat", "slot: b").replace("weeks: 4", "weeks: 49")}`,
    ["programme/weeks-total 9:3 53|1–52|"],
  ],
  [
    "a reversed span",
    instead("phases:", "weekly: { sets: { chest: 10–4 } }\nphases:"),
    ["span/reversed 8:26 10–4|4–10, 4-10, 6|4–10"],
  ],
  [
    "a muscle twice",
    instead("phases:", "weekly: { must: [chest, lats, chest] }\nphases:"),
    ["programme/same-muscle 8:31 chest||"],
  ],
  [
    "a misspelt name of a slot",
    instead("first:", "frist:"),
    [
      "key/missing 17:13 |text|",
      "key/unknown 19:13 frist|slot, pattern, muscles, first, down, up, dose, changes, way, note|first",
    ],
  ],
];

for (const [what, text, problems] of BAD) test(`${what}: ${problems[0]}`, () => expect(told(text)).toEqual(problems));

test("a list, a word or a number in place of a programme", () => {
  expect(told("- a\n- b\n")).toEqual(["value/type 1:1 list|map|"]);
  expect(told("hello\n")).toEqual(["value/type 1:1 hello|map|"]);
  expect(told("7\n")).toEqual(["value/type 1:1 7|map|"]);
});

test("aliases that would grow are refused, each at its place", () => {
  const bomb = `${SMALL}a: &a [x, x]\nb: &b [*a, *a, *a]\nc: [*b, *b, *b]\n`;
  const lines = told(bomb);
  expect(lines).toContain("yaml/anchor 21:7 &a||");
  expect(lines.filter((line) => line.startsWith("yaml/alias"))).toHaveLength(6);
});

test("2 MB and any depth are refused without a fall", () => {
  expect(told(`title: ${"x".repeat(2_000_000)}\n`)).toEqual([`yaml/too-long 1:1 2000008|1–${MAX_TEXT}|`]);
  expect(told(`phases: ${"[".repeat(5000)}`)[0]).toMatch(/^yaml\/too-deep 1:/);
  expect(
    told(
      `${"a:\n ".repeat(200)}`
        .split("\n")
        .map((line, i) => " ".repeat(i) + line.trim())
        .join("\n"),
    )[0],
  ).toMatch(/^yaml\/too-deep/);
});

test("everything that is wrong is told at once, in the order of the text", () => {
  const text = SMALL.replace("stave: 1", "stave: 3")
    .replace("version: 1", "versoin: 1")
    .replace("units: kg", "units: stone")
    .replace("weeks: 4", "weeks: 4\n    light: [9]")
    .replace("minutes: 40", "minutes: 400")
    .replace("pattern: squat", "pattern: sqat")
    .replace("dose: 3 × 8", "dose: 3 × 12–8, RPE 12\n            changes: [{ week: 1, dose: 21x8 }]");
  expect(told(text).map((line) => line.split(" ", 2).join(" "))).toEqual([
    "key/missing 1:1",
    "programme/shape-version 1:8",
    "key/unknown 4:1",
    "value/choice 7:8",
    "programme/week-outside 12:13",
    "value/big 16:18",
    "value/choice 19:22",
    "dose/reversed 21:23",
    "dose/out-of-range 21:33",
    "value/small 22:31",
    "dose/out-of-range 22:40",
  ]);
});
