import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse, stringify } from "yaml";
import { STATEMENTS, USUAL } from "./index.ts";
import { readPlaces } from "./place-read.ts";
import { readRoster } from "./roster-read.ts";

const guide = readFileSync(new URL("../../../docs/guide/people-and-places.md", import.meta.url), "utf8");
const examples = [...guide.matchAll(/```yaml(?: (\w+))?\n([\s\S]*?)```/g)].map(([, of, text]) => ({ of, text: text! }));
const whole = parse(examples[0]!.text) as { places: object[]; people: object[] };

/** The file of the first example, with one example of a place or a person put over its entry. */
function withExample({ of, text }: (typeof examples)[number]): string {
  const part = parse(text) as object;
  if (of === undefined) return text;
  return stringify({
    stave: 1,
    places: [{ ...whole.places[0], ...(of === "place" ? part : {}) }],
    people: [{ ...whole.people[0], ...(of === "person" ? cycleAlone(part) : {}) }],
  });
}

/** A cycle stands instead of the windows of the entry it is put over. */
function cycleAlone(part: object): object {
  return "cycle" in part ? { ...part, windows: undefined } : part;
}

test("the guide has examples of a whole file, of places and of people", () => {
  expect(examples.map(({ of }) => of ?? "file").sort()).toEqual([
    "file",
    ...Array.from({ length: 9 }, () => "person"),
    ...Array.from({ length: 4 }, () => "place"),
  ]);
});

for (const example of examples) {
  test(`the guide's example is read: ${example.text.split("\n", 1)[0]}`, () => {
    const text = withExample(example);
    const places = readPlaces(text, "guide.yaml");
    expect(places.problems).toEqual([]);
    const people = readRoster(text, "guide.yaml", places.ok ? places.value.value : []);
    expect(people.problems).toEqual([]);
  });
}

test("the guide names every key of a place and of a person", () => {
  const keys = (problems: readonly { allowed?: string; code: string }[]) =>
    problems.find(({ code }) => code === "key/unknown")!.allowed!.split(", ");
  const of = [
    ...keys(readPlaces("stave: 1\nplaces: [{ strange: 1 }]\n", "a.yaml").problems),
    ...keys(readRoster("stave: 1\npeople: [{ strange: 1 }]\n", "a.yaml").problems),
  ];
  expect(of).not.toContain("…");
  expect(of.length).toBeGreaterThan(30);
  for (const key of of) expect(guide, key).toMatch(new RegExp(`\`${key}\`|^ *(?:- )?${key}:`, "m"));
});

test("the guide names every statement and every usual thing", () => {
  for (const word of [...STATEMENTS, ...USUAL]) expect(guide).toContain(`\`${word}\``);
});
