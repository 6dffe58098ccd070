import fc from "fast-check";
import { expect, test } from "vitest";
import { z } from "zod";
import type { Problem } from "./finding.ts";
import { MAX_TEXT, readYaml } from "./yaml-text.ts";

const Slot = z.strictObject({ slot: z.string(), reps: z.number().min(1).max(50).optional() });
const Schema = z.strictObject({
  title: z.string().min(1).max(10).optional(),
  day: z.enum(["mon", "tue", "wed"]).optional(),
  reps: z.int().min(8).max(12).optional(),
  light: z.boolean().optional(),
  work: z
    .array(z.union([Slot, z.strictObject({ pair: z.array(Slot).min(2) }), z.strictObject({ round: z.array(Slot) })]))
    .max(3)
    .optional(),
  load: z.union([z.string(), z.number()]).optional(),
  plates: z.record(z.string().max(5), z.number()).optional(),
  sets: z.partialRecord(z.enum(["chest", "calf"]), z.number()).optional(),
  kind: z
    .discriminatedUnion("kind", [
      z.strictObject({ kind: z.literal("rest"), part: z.enum(["arm", "leg"]) }),
      z.strictObject({ kind: z.literal("load") }),
    ])
    .optional(),
  dose: z
    .string()
    .transform((text, ctx) => {
      const offset = text.indexOf("12-8");
      if (offset < 0) return text.length;
      const params = { code: "dose/reversed", found: "12-8", allowed: "8–12", maybe: "8–12", offset };
      ctx.addIssue({ code: "custom", message: "reversed", params });
      return z.NEVER;
    })
    .optional(),
});

function problems(text: string, schema: z.ZodType = Schema): readonly Problem[] {
  const read = readYaml(text, "a.yaml", schema);
  expect(read.ok).toBe(false);
  return read.problems;
}

/** The only problem of the text, as `code line:column found|allowed|maybe`. */
function only(text: string): string {
  const all = problems(text);
  expect(all.map((p) => p.code)).toHaveLength(1);
  return line(all[0]!);
}

function line(p: Problem): string {
  return `${p.code} ${p.line}:${p.column} ${[p.found, p.allowed, p.maybe].map((piece) => piece ?? "").join("|")}`;
}

const cases: readonly (readonly [what: string, text: string, problem: string])[] = [
  ["empty", "", "yaml/empty 1:1 ||"],
  ["blank lines", "\n  \n", "yaml/empty 1:1 ||"],
  ["only comments", "# nothing\n# yet\n", "yaml/only-comments 1:1 ||"],
  ["only a start line", "---\n", "yaml/empty 1:1 ||"],
  ["a text and nothing else", "reps\n", "value/type 1:1 reps|map|"],
  ["two slips of one line, the first at the very start", "@a: @b\n", 'yaml/quotes-needed 1:1 @a: @b||"@a: @b"'],
  ["a NUL", "title: a\nday: m\u0000n\n", "yaml/not-text 2:7 ||"],
  ["bytes that are no UTF-8", "title: caf\uFFFD\n", "yaml/not-text 1:11 ||"],
  ["a tab as indentation", "kind:\n\tkind: load\n", "yaml/tab 2:1 ||"],
  ["a name twice", "reps: 8\ntitle: a\nreps: 9\n", "yaml/duplicate-key 3:1 reps||"],
  ["a list that is left open", "work: [1, 2\nreps: 8\n", "yaml/unclosed 2:1 reps: 8|]|"],
  ["a quote that is left open", 'title: "x\nreps: 8\n', 'yaml/unclosed 3:1 |"|'],
  ["a second colon", "title: x: y\n", "yaml/second-colon 1:8 x: y||"],
  ["a line without a colon", "reps: 8\ntitle\nday: mon\n", "yaml/colon-missing 2:1 title||"],
  ["a start that needs quotes", "title: @home\n", 'yaml/quotes-needed 1:8 @home||"@home"'],
  ["an unknown escape", 'title: "\\q"\n', 'yaml/escape 1:9 \\q"||'],
  ["text after a quoted text", "title: 'it's'\n", "yaml/syntax 1:12 s'||"],
  ["012", "reps: 012\n", "yaml/number 1:7 012|12, 12.5, -3|12"],
  ["+5", "load: +5\n", "yaml/number 1:7 +5|12, 12.5, -3|5"],
  ["1e9", "reps: 1e9\n", "yaml/number 1:7 1e9|12, 12.5, -3|1000000000"],
  ["10^9", "reps: 10^9\n", "value/type 1:7 10^9|8–12|"],
  [".nan", "reps: .nan\n", "yaml/number 1:7 .nan|12, 12.5, -3|"],
  ["-.inf", "reps: -.inf\n", "yaml/number 1:7 -.inf|12, 12.5, -3|"],
  ["0x1F", "title: 0x1F\n", "yaml/number 1:8 0x1F|12, 12.5, -3|31"],
  ["an alias", "title: *x\n", "yaml/alias 1:8 *x||"],
  ["an anchor", "title: &x a\n", "yaml/anchor 1:11 &x||"],
  ["a tag", "title: !!str 12\n", "yaml/tag 1:14 tag:yaml.org,2002:str||"],
  ["a merge", "<<: { title: a }\n", "yaml/merge 1:1 <<||"],
  ["a directive", "%YAML 1.1\n---\ntitle: no\n", "yaml/directive 1:1 %YAML 1.1||"],
  ["only comments around a start line", "# a\n---\n# b\n", "yaml/only-comments 1:1 ||"],
  ["a second document", "title: a\n---\ntitle: b\n", "yaml/second-document 2:1 ||"],
  ["a list as a name", "? [a]\n: b\n", "yaml/key 1:3 ||"],
  ["a name that could reach into objects", "__proto__: 1\n", "yaml/key 1:1 ||"],
  [
    "an unknown name",
    "reps: 8\n titel: a\n".replace("\n ", "\n"),
    "key/unknown 2:1 titel|title, day, reps, light, work, load, plates, sets, kind, dose|title",
  ],
  ["a missing name", "work:\n  - reps: 8\n", "key/missing 2:5 |text|"],
  ["text for a number", "reps: many\n", "value/type 1:7 many|8–12|"],
  ["a part of a whole number", "reps: 8.5\n", "value/type 1:7 8.5|whole number|"],
  ["a list for text", "title: [a]\n", "value/type 1:8 list|text|"],
  ["nothing for text", "reps: 8\ntitle:\n", "value/type 2:7 nothing|text|"],
  ["yes for true", "light: yes\n", "value/type 1:8 yes|true, false|"],
  ["too small", "reps: 7\n", "value/small 1:7 7|8–12|"],
  ["too big", "reps: 13\n", "value/big 1:7 13|8–12|"],
  ["too short", 'title: ""\n', "value/short 1:8 0|1–10|"],
  ["too long", "title: abcdefghijk\n", "value/long 1:8 11|1–10|"],
  ["too few", "work:\n  - pair:\n      - slot: a\n", "value/few 3:7 1|≥ 2|"],
  ["too many", "work: [{ slot: a }, { slot: b }, { slot: c }, { slot: d }]\n", "value/many 1:7 4|≤ 3|"],
  ["a near choice", "day: mom\n", "value/choice 1:6 mom|mon, tue, wed|mon"],
  ["a far choice", "day: someday\n", "value/choice 1:6 someday|mon, tue, wed|"],
  ["neither of two kinds", "load: [1]\n", "value/type 1:7 list|text, number|"],
  ["inside the form that was meant", "work:\n  - pair:\n      - slot: a\n      - slot: 4\n", "value/type 4:15 4|text|"],
  ["a slip in the form that was meant", "work:\n  - slot: a\n    rep: 8\n", "key/unknown 3:5 rep|slot, reps|reps"],
  ["a name that no list has", "sets: { chst: 4 }\n", "key/unknown 1:9 chst|chest, calf|chest"],
  ["a name of a bad form", "plates: { far-too-long: 1 }\n", "value/long 1:11 far-too-long|≤ 5|"],
  ["a kind that is none", "kind: { kind: lod }\n", "value/choice 1:15 lod|rest, load|load"],
  ["no kind", "kind: { part: arm }\n", "key/missing 1:7 |rest, load|"],
  ["a shorthand, plain", "reps: 8\ndose: 3 × 12-8\n", "dose/reversed 2:11 12-8|8–12|8–12"],
  ["a shorthand, single quotes", "dose: 'it''s 12-8'\n", "dose/reversed 1:14 12-8|8–12|8–12"],
  ["a shorthand, double quotes", 'dose: "3\\x20 × 12-8"\n', "dose/reversed 1:16 12-8|8–12|8–12"],
];

for (const [what, text, problem] of cases) test(`${what}: ${problem}`, () => expect(only(text)).toBe(problem));

test("too long is refused before it is parsed", () => {
  const [problem] = problems(`a: ${"x".repeat(5_000_000)}`);
  expect(line(problem!)).toBe(`yaml/too-long 1:1 5000003|1–${MAX_TEXT}|`);
});

test("30 lists deep is read, 31 is refused at its bracket, and so is any depth without a fall", () => {
  const deep = (n: number) => `${"[".repeat(n)}${"]".repeat(n)}`;
  expect(readYaml(deep(30), "a.yaml", z.array(z.unknown())).ok).toBe(true);
  expect(problems(deep(31)).map(line)).toEqual(["yaml/too-deep 1:31 > 30|1–30|"]);
  expect(problems("[".repeat(100_000))[0]?.code).toBe("yaml/too-deep");
  expect(problems("- ".repeat(5000))[0]?.code).toBe("yaml/too-deep");
  expect(problems("{a: ".repeat(5000))[0]?.code).toBe("yaml/too-deep");
});

test("aliases that would grow into millions are refused, each at its place", () => {
  const bomb = "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n";
  expect(problems(bomb, z.unknown()).map((p) => `${p.code} ${p.line}:${p.column}`)).toEqual([
    "yaml/anchor 1:7",
    "yaml/anchor 2:7",
    "yaml/alias 2:8",
    "yaml/alias 2:12",
    "yaml/alias 3:5",
    "yaml/alias 3:9",
  ]);
});

test("all problems at once, in the order of the text", () => {
  const text = "day: mom\nreps: 012\ntitel: a\nwork:\n  - rep: 3\nreps: 8\nload: [1]\n";
  expect(problems(text).map((p) => `${p.line}:${p.column} ${p.code}`)).toEqual([
    "1:6 value/choice",
    "2:7 yaml/number",
    "3:1 key/unknown",
    "5:5 key/missing",
    "5:5 key/unknown",
    "6:1 yaml/duplicate-key",
    "7:7 value/type",
  ]);
});

test("a stumbling parser is heard once a line, on every line", () => {
  const all = problems("a: @x\nb: `y\nc: x: y\n");
  expect(all.map((p) => `${p.line} ${p.code}`)).toEqual([
    "1 yaml/quotes-needed",
    "2 yaml/quotes-needed",
    "3 yaml/second-colon",
  ]);
});

test("the path of a problem names the place in the document", () => {
  expect(problems("work:\n  - slot: a\n  - slot: 3\n")[0]?.at).toEqual(["work", 1, "slot"]);
  expect(problems("work:\n  - reps: 3\n")[0]?.at).toEqual(["work", 0, "slot"]);
  expect(problems("titel: a\n")[0]?.at).toEqual(["titel"]);
});

test("a decimal comma that would part one value into two is refused, a plain list of numbers is not", () => {
  const list = z.array(z.union([z.string(), z.number()]));
  expect(problems("[1–4 kg by 1,5]\n", list).map(line)).toEqual(["yaml/comma 1:13 ,||, "]);
  expect(readYaml("[1,2,3]\n", "a.yaml", list).ok).toBe(true);
  expect(readYaml("[1 kg by 1, 5 kg]\n", "a.yaml", list).ok).toBe(true);
});

test("YAML 1.2: no, yes, dates and times stay text", () => {
  const words = "- no\n- yes\n- 2027-01-11\n- 17:30\n- 1_000\n";
  const read = readYaml(words, "a.yaml", z.array(z.string()));
  expect(read.ok && read.value.value).toEqual(["no", "yes", "2027-01-11", "17:30", "1_000"]);
});

test("everything that was read knows where it stands", () => {
  const text =
    '\uFEFF# top\r\ntitle: "a b"\r\nwork:\r\n  - slot: a\r\n    reps: 8\r\n  - pair: [{ slot: b }, { slot: c }]\r\n';
  const read = readYaml(text, "a.yaml", Schema);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { at } = read.value.positions;
  expect(at(["title"])).toEqual({ line: 2, column: 8 });
  expect(at(["work", 0])).toEqual({ line: 4, column: 5 });
  expect(at(["work", 0, "reps"])).toEqual({ line: 5, column: 11 });
  expect(at(["work", 1, "pair", 1, "slot"])).toEqual({ line: 6, column: 33 });
  expect(at(["work", 0, "note"])).toEqual({ line: 4, column: 5 });
  expect(at([])).toEqual({ line: 2, column: 1 });
});

test("many names cost time in proportion, and only the first thousand problems are told", () => {
  const text = Array.from({ length: 20_000 }, (_, i) => `k${i}: 1`).join("\n");
  const all = problems(text);
  expect(all).toHaveLength(1001);
  expect(all.at(-1)).toMatchObject({ code: "yaml/more-problems", found: "19000" });
});

test("no text whatever makes it fall, and every place lies inside the text", () => {
  const piece = fc.constantFrom(
    "a",
    "b: ",
    ": ",
    "- ",
    "-",
    "\n",
    "  ",
    "\t",
    "[",
    "]",
    "{",
    "}",
    ",",
    "'",
    '"',
    "\\",
    "|\n",
    ">-\n",
    "&a ",
    "*a",
    "!!str ",
    "!x ",
    "? ",
    "# c",
    "---\n",
    "...\n",
    "%YAML 1.1\n",
    "<<: ",
    "012",
    "1e9",
    ".nan",
    "é",
    "😀",
    "\uD800",
    "\r\n",
    "title",
    "work",
    "slot",
    "__proto__",
  );
  const texts = fc.oneof(
    fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join("")),
    fc.string(),
  );
  fc.assert(
    fc.property(texts, (text) => {
      const read = readYaml(text, "a.yaml", Schema);
      const lines = text.split("\n");
      expect(read.ok || read.problems.length > 0).toBe(true);
      for (const { line: at, column } of read.problems) {
        expect(at >= 1 && at <= lines.length && column >= 1 && column <= lines[at - 1]!.length + 1).toBe(true);
      }
    }),
    { numRuns: 2000 },
  );
});
