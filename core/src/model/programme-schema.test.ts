import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { COMMENTED_PROGRAMME } from "../testing/index.ts";
import { readDose } from "./dose-read.ts";
import { readProgramme } from "./programme-read.ts";
import { programmeJsonSchema, wayUnsaid } from "./programme-schema.ts";

const fits = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(programmeJsonSchema());

/** What the two say of a text: editors by the published schema, Stave by reading it. */
function verdicts(text: string): { schema: boolean; reader: boolean } {
  return { schema: fits(parse(text)), reader: readProgramme(text, "a.yaml").ok };
}

test("the published file is the schema of today", () => {
  const file = readFileSync(new URL("../../../docs/programme.schema.json", import.meta.url), "utf8");
  expect(file).toBe(`${JSON.stringify(programmeJsonSchema(), undefined, 2)}\n`);
});

const guide = readFileSync(new URL("../../../docs/guide/programme-file.md", import.meta.url), "utf8");
const GOOD = /```yaml programme\n([\s\S]*?)```/.exec(guide)![1]!;

test("both accept good programmes", () => {
  expect(verdicts(GOOD)).toEqual({ schema: true, reader: true });
  expect(verdicts(COMMENTED_PROGRAMME)).toEqual({ schema: true, reader: true });
  expect(verdicts(JSON.stringify(parse(GOOD)))).toEqual({ schema: true, reader: true });
});

/** Every name and value of the good programme, broken in turn in a way that the form alone can show. */
function brokenForms(text: string): readonly string[] {
  const texts: string[] = [];
  const walk = (here: unknown, put: (value: unknown) => unknown): void => {
    const tell = (value: unknown) => texts.push(JSON.stringify(put(value)));
    if (Array.isArray(here)) {
      tell({ a: 1 });
      tell(null);
      for (const [i, item] of here.entries()) {
        walk(item, (value) => put(here.map((other, j) => (i === j ? value : other))));
      }
    } else if (typeof here === "object" && here !== null) {
      tell([]);
      tell("text");
      tell({ ...here, unheard: 1 });
      for (const [name, item] of Object.entries(here)) walk(item, (value) => put({ ...here, [name]: value }));
    } else {
      tell([here]);
      tell({ here });
      tell(null);
      tell(true);
      if (typeof here === "number") {
        tell(here + 0.5);
        tell(-1);
        tell(1e6);
      }
    }
  };
  walk(parse(text), (value) => value);
  return texts;
}

test("both refuse whatever has the wrong form, wherever it stands", () => {
  const broken = brokenForms(GOOD);
  expect(broken.length).toBeGreaterThan(400);
  for (const text of broken) expect(verdicts(text), text).toEqual({ schema: false, reader: false });
});

const REQUIRED =
  "stave id title version goal status units phases key weeks sessions minutes work slot pattern first dose".split(" ");

test("both refuse a programme that lacks what must be there", () => {
  for (const name of REQUIRED) {
    const text = GOOD.replace(new RegExp(`([\\n{-] *)${name}:`), `$1x-${name}:`);
    expect(text, name).not.toBe(GOOD);
    expect(verdicts(text), name).toEqual({ schema: false, reader: false });
  }
});

/** What the form cannot show: only reading tells it. */
const ONLY_READ: readonly (readonly [what: string, line: string, other: string])[] = [
  ["the grammar of a dose", "3 × 8, rest 2 min", "3 × 12–8, rest 2 min"],
  ["a span", "chest: 4–8", "chest: 8–4"],
  ["a slot key twice", "slot: hinge", "slot: squat"],
  ["a light week outside its phase", "light: [4]", "light: [5]"],
  ["a change outside its phase", "week: 3", "week: 5"],
  ["a ramp to nowhere", "ramp: squat", "ramp: press"],
  ["turns with unequal sets", "dose: 2 × 8 each side", "dose: 3 × 8 each side"],
  ["a hidden mark", "title: Quay steps", 'title: "Quay\\u0007steps"'],
];

test("the schema refuses nothing that is read, and lets pass what only reading can tell", () => {
  for (const [what, line, other] of ONLY_READ) {
    expect(GOOD, what).toContain(line);
    expect(verdicts(GOOD.replace(line, other)), what).toEqual({ schema: true, reader: false });
  }
});

test("the way up that a file leaves unsaid, by what the first set asks for", () => {
  const way = (text: string) => {
    const read = readDose(text);
    return read.ok ? wayUnsaid(read.value) : read.problems;
  };
  expect(["3x8", "3x30 s", "3x5 contacts", "3x30 m", "8 min", "3 x AMRAP"].map(way)).toEqual([
    "reps then load",
    "hold time",
    "contacts",
    "stay",
    "stay",
    "stay",
  ]);
});
