import { z } from "zod";
import { printDose } from "./dose-print.ts";
import { readDose } from "./dose-read.ts";
import type { Edit, Json, Path, Problem, Read } from "./finding.ts";
import { nearNames } from "./near.ts";
import { type Cuttable, cuttable, nodeAt, stepsOf } from "./yaml-places.ts";
import { cutText, type Splice, spliceAdd, spliceInsert, spliceRemove, spliceSet } from "./yaml-splice.ts";
import { type Positions, readYaml } from "./yaml-text.ts";

/** What can be wrong with an edit. Each names a sentence. */
export const EDIT_PROBLEMS = ["edit/no-path", "edit/there", "edit/clash", "edit/layout"] as const;

/** A new name stands where a coach would look for it. */
const ORDER =
  "stave id key title version about goal status units weekly silence weeks light minutes slot pattern muscles first down up dose changes way note do runWalk or effort ramp pair round restS week check reason must gap sets warmup work conditioning sessions phases".split(
    " ",
  );

/**
 * Changes a programme's text so that only the touched lines change: comments, order, blank lines, quotes and line
 * breaks elsewhere stay as they are. A dose is written in the canonical print.
 *
 * `set` puts a value in place of another or gives a map a new name; `insert` puts an entry into a list before the one
 * that stands there, or at its end, or gives a map a new name; `remove` takes one out. All paths are those of the text
 * before any of the edits; an edit inside a part that another edit replaces or removes is a problem.
 *
 * @param text a programme file; it must be YAML, but need not be a whole programme yet
 * @param file its name, for the problems
 * @returns the new text, or all that is wrong with the text or the edits, with nothing changed
 */
export function editProgramme(text: string, edits: readonly Edit[], file = ""): Read<string> {
  const read = readYaml(text, file, z.unknown());
  if (!read.ok) return read;
  const before = cuttable(text);
  const problems: Problem[] = [];
  const ready = edits.flatMap((edit) => {
    const found = [...problemsOf(before, edit), ...clashOf(edit, edits)].map((slip) =>
      toProblem(slip, edit, read.value.positions, file),
    );
    const value =
      edit.op === "remove"
        ? null
        : canonical(edit.value, edit.at, (slip) => found.push(toProblem(slip, edit, read.value.positions, file)));
    problems.push(...found);
    return found.length > 0 ? [] : [edit.op === "remove" ? edit : { ...edit, value }];
  });
  if (problems.length > 0) return { ok: false, problems };
  const after = applied(before, ready);
  // A layout that we do not know, such as a name behind a question mark, must never cost a coach the file.
  if (!readYaml(after, file, z.unknown()).ok)
    return { ok: false, problems: [{ code: "edit/layout", file, at: [], line: 1, column: 1 }] };
  return { ok: true, value: after, problems: [] };
}

/** What is wrong with an edit, before its place is known. */
interface Slip {
  readonly code: string;
  readonly at?: Path;
  readonly found?: string;
  readonly allowed?: string;
  readonly maybe?: string;
}

function toProblem(slip: Slip, edit: Edit, positions: Positions, file: string): Problem {
  return { ...slip, file, at: slip.at ?? edit.at, ...positions.at(slip.at ?? edit.at) };
}

/** The shallowest step of an edit's path that leads nowhere. */
function problemsOf(from: Cuttable, { op, at }: Edit): readonly Slip[] {
  if (at.length === 0) return [{ code: "edit/no-path", found: "", allowed: listed(stepsOf(from.root)) }];
  for (let depth = 1; depth <= at.length; depth++) {
    const path = at.slice(0, depth);
    const step = path.at(-1)!;
    const steps = stepsOf(nodeAt(from, path.slice(0, -1)));
    const exists = nodeAt(from, path) !== undefined;
    const isLast = depth === at.length;
    const fits = typeof steps === "number" ? Number.isInteger(step) : steps !== undefined && typeof step === "string";
    if (isLast && fits && mayBeNew(op, step, steps)) {
      return op === "insert" && exists && typeof step === "string" ? [{ code: "edit/there", found: step }] : [];
    }
    if (exists && fits) continue;
    const near = typeof steps === "object" ? nearNames(String(step), steps) : [];
    return [
      {
        code: "edit/no-path",
        at: path,
        found: String(step),
        allowed: listed(steps),
        ...(near.length > 0 ? { maybe: near.join(", ") } : {}),
      },
    ];
  }
  return [];
}

/** Whether the last step may lead to something that is not there yet. */
function mayBeNew(op: Edit["op"], step: string | number, steps: readonly string[] | number | undefined): boolean {
  if (typeof steps === "number") return op === "insert" && Number(step) >= 0 && Number(step) <= steps;
  return op !== "remove" && step !== "";
}

function listed(steps: readonly string[] | number | undefined): string {
  if (typeof steps === "number") return steps === 0 ? "" : steps === 1 ? "0" : `0–${steps - 1}`;
  return (steps ?? []).join(", ");
}

/** Two edits of one place, or one inside a place that the other replaces or removes, have no order to be done in. */
function clashOf(edit: Edit, edits: readonly Edit[]): readonly Slip[] {
  const other = edits.find((one) => {
    if (one === edit) return false;
    const isList = typeof edit.at.at(-1) === "number";
    const same = one.at.length === edit.at.length && begins(edit.at, one.at);
    if (same) return !isList || (one.op !== "insert" && edit.op !== "insert");
    return one.op !== "insert" && begins(edit.at, one.at);
  });
  return other ? [{ code: "edit/clash", found: other.op }] : [];
}

function begins(path: Path, start: Path): boolean {
  return start.length <= path.length && start.every((step, i) => step === path[i]);
}

/** The value with every dose in the canonical print. */
function canonical(value: Json, at: Path, tell: (slip: Slip) => void): Json {
  if (at.at(-1) === "dose" && typeof value === "string") {
    const read = readDose(value);
    if (read.ok) return printDose(read.value);
    for (const { offset: _, ...slip } of read.problems) tell({ ...slip, at });
    return value;
  }
  if (Array.isArray(value)) return value.map((item: Json, i) => canonical(item, [...at, i], tell));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, canonical(item, [...at, name], tell)]));
}

/** Values in one line first, all from one reading; then what moves lines, from the end to the start. */
function applied(before: Cuttable, edits: readonly Edit[]): string {
  const isSimple = (edit: Edit) =>
    edit.op === "set" && isOneLine(edit.value) && isOneLine(nodeAt(before, edit.at)?.toJSON());
  const simple = edits.filter(isSimple).flatMap((edit) => spliceOf(before, edit));
  let from = simple.length > 0 ? cuttable(cutText(before.text, simple)) : before;
  const rest = edits.map((edit, i) => ({ edit, i })).filter(({ edit }) => !isSimple(edit));
  rest.sort((a, b) => backwards(a.edit, b.edit) || b.i - a.i);
  for (const { edit } of rest) from = cuttable(cutText(from.text, spliceOf(from, edit)));
  return from.text;
}

function isOneLine(value: unknown): boolean {
  return value !== undefined && (typeof value !== "object" || value === null);
}

/** Later entries of a list before earlier ones; what lies inside an entry before the entry; inserting last. */
function backwards(a: Edit, b: Edit): number {
  for (let i = 0; i < Math.min(a.at.length, b.at.length); i++) {
    const [x, y] = [a.at[i]!, b.at[i]!];
    if (typeof x === "number" && typeof y === "number" && x !== y) return y - x;
    if (x !== y) return String(x) < String(y) ? -1 : 1;
  }
  return b.at.length - a.at.length || Number(a.op === "insert") - Number(b.op === "insert");
}

function spliceOf(from: Cuttable, edit: Edit): readonly Splice[] {
  const step = edit.at.at(-1)!;
  const parent = edit.at.slice(0, -1);
  if (edit.op === "remove") return spliceRemove(from, edit.at);
  const node = nodeAt(from, edit.at);
  if (edit.op === "insert" && typeof step === "number") return spliceInsert(from, parent, step, edit.value);
  if (node === undefined) return spliceAdd(from, parent, String(step), edit.value, ORDER);
  return JSON.stringify(node.toJSON()) === JSON.stringify(edit.value) ? [] : spliceSet(from, edit.at, edit.value);
}
