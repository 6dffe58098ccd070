import fc from "fast-check";
import { expect, test } from "vitest";
import { isMap, isScalar, isSeq, type ParsedNode, parse, parseDocument } from "yaml";
import { COMMENTED_PROGRAMME as FILE } from "../testing/index.ts";
import type { Edit, Json, Path } from "./finding.ts";
import { editProgramme } from "./programme-edit.ts";

function edited(text: string, edits: readonly Edit[]): string {
  const read = editProgramme(text, edits);
  expect(read.problems).toEqual([]);
  return read.ok ? read.value : "";
}

type Tree = Json | undefined;

/** The edits on plain values: sets first, then lists from their end. */
function onTree(value: Json, edits: readonly Edit[]): Json {
  const box = { root: structuredClone(value) as Json };
  const marked = edits.map((edit) => ({ edit, target: parentIn(box.root, edit.at) }));
  const lists = new Map<Json[], { edit: Edit; index: number }[]>();
  for (const { edit, target } of marked) {
    const step = edit.at.at(-1)!;
    if (Array.isArray(target)) {
      lists.set(target as Json[], [...(lists.get(target as Json[]) ?? []), { edit, index: step as number }]);
    } else if (edit.op === "remove") {
      delete (target as Record<string, Tree>)[String(step)];
    } else {
      (target as Record<string, Tree>)[String(step)] = edit.value;
    }
  }
  for (const [list, changes] of lists) {
    const old = [...list];
    list.length = 0;
    for (let i = 0; i <= old.length; i++) {
      for (const { edit, index } of changes) if (index === i && edit.op === "insert") list.push(edit.value);
      const other = changes.find(({ edit, index }) => index === i && edit.op !== "insert")?.edit;
      if (i < old.length && other?.op !== "remove") list.push(other?.op === "set" ? other.value : old[i]!);
    }
  }
  return box.root;
}

function parentIn(root: Json, at: Path): Json {
  let node = root;
  for (const step of at.slice(0, -1)) node = (node as Record<string | number, Json>)[step]!;
  return node;
}

/** Every place of the file, with the lines that it covers. */
function placesOf(text: string): readonly { at: Path; from: number; to: number; length?: number }[] {
  const document = parseDocument(text);
  const lineOf = (offset: number) => text.slice(0, offset).split("\n").length - 1;
  const places: { at: Path; from: number; to: number; length?: number }[] = [];
  const walk = (node: ParsedNode, at: Path, start: number): void => {
    const end = node.range[0] + text.slice(node.range[0], node.range[1]).trimEnd().length;
    if (at.length > 0) {
      places.push({ at, from: lineOf(start), to: lineOf(end), ...(isSeq(node) ? { length: node.items.length } : {}) });
    }
    if (isMap(node)) {
      for (const { key, value } of node.items) {
        if (isScalar(key)) walk(value as ParsedNode, [...at, String(key.value)], (key as ParsedNode).range[0]);
      }
    }
    if (!isSeq(node)) return;
    for (const [i, item] of (node.items as ParsedNode[]).entries()) {
      // An entry begins with its dash.
      walk(item, [...at, i], node.flow ? item.range[0] : text.lastIndexOf("-", item.range[0] - 1));
    }
  };
  walk(document.contents as ParsedNode, [], 0);
  return places;
}

const VALUES: readonly Json[] = [
  7,
  "plain words",
  'it\'s: a, "hard" one # not a comment',
  "012",
  "- [x]",
  "two\nlines",
  "",
  true,
  null,
  [1, 2],
  [],
  {},
  ["a, b", "c"],
  { week: 3, note: "x: y" },
  [{ slot: "new", list: [{ a: 1 }, "b"] }],
];

const places = placesOf(FILE);

const oneEdit: fc.Arbitrary<Edit & { lines: readonly [number, number] }> = fc
  .tuple(
    fc.constantFrom(...places),
    fc.constantFrom("set", "remove", "insert", "name"),
    fc.constantFrom(...VALUES),
    fc.nat(3),
  )
  .map(([place, op, any, n]) => {
    const value = place.at.at(-1) === "dose" ? "4 × 6, rest 75 s" : any;
    const lines = [place.from, place.to + 1] as const;
    if (op === "remove") return { op, at: place.at, lines };
    if (op === "insert" && place.length !== undefined) {
      return { op, at: [...place.at, Math.min(n, place.length)], value, lines };
    }
    if (
      op === "name" &&
      places.some(
        ({ at }) =>
          at.length === place.at.length + 1 &&
          typeof at.at(-1) === "string" &&
          at.slice(0, -1).join() === place.at.join(),
      )
    ) {
      return { op: "set" as const, at: [...place.at, `new${n}`], value, lines };
    }
    return { op: "set" as const, at: place.at, value, lines };
  });

/** Taking out the last entry writes empty brackets behind the name of the list or map. */
function bracketLines(edits: readonly Edit[]): readonly number[] {
  const removed = new Set(edits.filter(({ op }) => op === "remove").map(({ at }) => at.join()));
  const children = (at: Path) => places.filter((one) => one.at.length === at.length + 1 && begins(one.at, at));
  const emptied = places.filter(({ at }) => {
    const inside = children(at);
    return inside.length > 0 && inside.every((one) => removed.has(one.at.join()));
  });
  return emptied.map(({ from }) => from);
}

function begins(path: Path, start: Path): boolean {
  return start.length <= path.length && start.every((step, i) => step === path[i]);
}

/** Edits that do not get in each other's way. */
const someEdits = fc
  .array(oneEdit, { minLength: 1, maxLength: 5 })
  .map((all) =>
    all.filter(
      (one, i) =>
        !all.some(
          (other, j) =>
            i !== j &&
            ((other.op !== "insert" && begins(one.at, other.at)) || (j < i && one.at.join() === other.at.join())),
        ),
    ),
  );

test("random edits do to the text what they do to a plain tree, and leave every untouched line as it was", () => {
  fc.assert(
    fc.property(someEdits, (edits) => {
      const after = edited(FILE, edits);
      expect(parse(after)).toEqual(onTree(parse(FILE), edits));
      const brackets = bracketLines(edits);
      const untouched = FILE.split("\n").filter(
        (_, i) => !brackets.includes(i) && !edits.some(({ lines: [from, to] }) => i >= from && i <= to),
      );
      const kept = after.split("\n");
      let at = 0;
      for (const line of untouched) {
        at = kept.indexOf(line, at) + 1;
        expect(at, `lost: ${line}`).toBeGreaterThan(0);
      }
    }),
    { numRuns: 400 },
  );
});

test("a list that loses all its entries keeps the comments above them", () => {
  const work: Path = ["phases", 0, "sessions", 0, "work"];
  const after = edited(FILE, [
    { op: "remove", at: [...work, 0] },
    { op: "remove", at: [...work, 1] },
  ]);
  expect(after).toContain(
    "        work: []\n          # legs first\n\n          # then the upper body\n\n      # the second\n",
  );
});

test("line breaks of another system stay, and come with what is new", () => {
  fc.assert(
    fc.property(someEdits, (edits) => {
      const crlf = FILE.replaceAll("\n", "\r\n");
      expect(edited(crlf, edits)).toBe(edited(FILE, edits).replaceAll("\n", "\r\n"));
    }),
    { numRuns: 100 },
  );
});
