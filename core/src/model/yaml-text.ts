import type { z } from "zod";
import type { Path, Problem, Read } from "./finding.ts";
import { schemaFaults } from "./schema-faults.ts";
import type { Fault } from "./yaml-syntax.ts";
import { type Branch, growTree } from "./yaml-tree.ts";

/** Where things stand in the text. Lines and columns count from 1; a column is one UTF-16 unit, as editors count. */
export interface Positions {
  /** The value at the path; where it is missing, what would hold it. */
  at(path: Path): { line: number; column: number };
}

export interface YamlDocument<T> {
  readonly value: T;
  readonly positions: Positions;
}

/** Longer texts are refused before anything is parsed. A programme is about 30,000 characters. */
export const MAX_TEXT = 1_000_000;
/** So many problems are told; a last one says how many more there are. */
const MAX_PROBLEMS = 1000;
const NO_TEXT = new RegExp(`[${String.fromCodePoint(0)}${String.fromCodePoint(0xff_fd)}]`);

/**
 * Reads a text as strict YAML 1.2 and checks it against a schema, telling all problems at once.
 *
 * A schema's own issue may carry `params: { code, found, allowed, maybe, offset }`, where `offset` counts characters
 * into the value of a scalar, so that the column is that of the slip itself; with `name: true` it is the name before
 * the value that is at fault.
 *
 * @param file its name, for the problems
 * @param fill puts what stands for missing values; places stay those of the text
 * @returns the value with the places of all its parts, or problems in the order of the text
 */
export function readYaml<T>(
  text: string,
  file: string,
  schema: z.ZodType<T>,
  fill: (value: unknown) => unknown = (value) => value,
): Read<YamlDocument<T>> {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const early = refuse(body);
  if (early) return { ok: false, problems: [toProblem(early, file, placeIn(lineStarts(body), early.offset))] };
  const lines = lineStarts(body);
  const { root, faults } = growTree(body);
  const all: Fault[] = [...faults];
  const result = root && schema.safeParse(fill(root.value));
  if (root && result && !result.success) {
    const told = new Set(faults.map((fault) => JSON.stringify(fault.at)));
    all.push(...schemaFaults(root, schema, result.error.issues).filter((f) => !told.has(JSON.stringify(f.at))));
  }
  if (all.length > 0) {
    const sorted = all.sort((a, b) => a.offset - b.offset).slice(0, MAX_PROBLEMS);
    const problems = sorted.map((fault) => toProblem(fault, file, placeIn(lines, fault.offset)));
    if (all.length > MAX_PROBLEMS) {
      const last = problems[MAX_PROBLEMS - 1]!;
      const found = String(all.length - MAX_PROBLEMS);
      problems.push({ code: "yaml/more-problems", file, at: [], line: last.line, column: last.column, found });
    }
    return { ok: false, problems };
  }
  if (!root || !result?.success) return { ok: false, problems: [] };
  const positions: Positions = { at: (path) => placeIn(lines, nearest(root, path).start) };
  return { ok: true, value: { value: result.data, positions }, problems: [] };
}

function refuse(text: string): Fault | undefined {
  if (text.length > MAX_TEXT) {
    return { code: "yaml/too-long", at: [], offset: 0, found: String(text.length), allowed: `1–${MAX_TEXT}` };
  }
  const bad = NO_TEXT.exec(text);
  if (bad) return { code: "yaml/not-text", at: [], offset: bad.index };
  return text.trim() === "" ? { code: "yaml/empty", at: [], offset: 0 } : undefined;
}

function nearest(root: Branch, path: Path): Branch {
  let branch = root;
  for (const step of path) {
    const next = branch.children?.get(step);
    if (!next) break;
    branch = next;
  }
  return branch;
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let i = text.indexOf("\n"); i >= 0; i = text.indexOf("\n", i + 1)) starts.push(i + 1);
  return starts;
}

function placeIn(starts: readonly number[], offset: number): { line: number; column: number } {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: offset - starts[low]! + 1 };
}

function toProblem(fault: Fault, file: string, place: { line: number; column: number }): Problem {
  const { offset: _, at, code, ...pieces } = fault;
  return { code, file, at, ...place, ...pieces };
}
