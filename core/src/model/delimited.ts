import { nameKey } from "./same-name.ts";

/** One cell with the column in which it begins, counted from 1. */
export interface Cell {
  readonly text: string;
  readonly column: number;
}

export interface Row {
  /** Counted from 1; of its first line where a quoted cell runs over several. */
  readonly line: number;
  readonly cells: readonly Cell[];
}

export type Delimited =
  | {
      readonly ok: true;
      readonly delimiter: string;
      /** Lines above the headings: a title, a name. */
      readonly above: readonly Row[];
      readonly heading: Row;
      readonly rows: readonly Row[];
    }
  | { readonly ok: false; readonly code: DelimitedProblem; readonly line: number; readonly column: number };

export const DELIMITED_PROBLEMS = [
  "table/empty",
  "table/quote-open",
  "table/after-quote",
  "table/too-many-rows",
  "table/too-many-cells",
  "table/cell-too-long",
  "table/heading-twice",
  "table/more-cells",
] as const;
export type DelimitedProblem = (typeof DELIMITED_PROBLEMS)[number];

const DELIMITERS = [",", ";", "\t", "|"];
const MOST_ROWS = 20_000;
const MOST_CELLS = 60;
const LONGEST = 500;

/** Titles stand in the first lines, if at all. */
const MOST_TITLES = 20;
/** So many known headings make a line of headings. */
const HEADINGS = 2;

/** @returns what parts the cells of the headings: whatever stands there most often outside quotes, a comma in a tie */
function delimiterOf(text: string, isKnown: (heading: string) => boolean): string {
  const lines = text.replace(/"(?:[^"]|"")*"?/g, "").split(/\r?\n|\r/, MOST_TITLES);
  const knownIn = (line: string, mark: string) => line.split(mark).filter((name) => isKnown(name.trim())).length;
  const titled = lines.find((line) => DELIMITERS.some((mark) => knownIn(line, mark) >= HEADINGS));
  const first = titled ?? lines[0] ?? "";
  const counts = DELIMITERS.map((mark) => first.split(mark).length - 1);
  return DELIMITERS[counts.indexOf(Math.max(...counts))]!;
}

/**
 * Reads a table as spreadsheets write it: cells parted by commas, semicolons, tabs or bars, as the first line has them;
 * quotes around a cell, doubled inside it; any line ends. A byte-order mark is passed over, empty lines are left out.
 *
 * @param text at most 20,000 rows of 60 cells of 500 characters
 * @param isKnown whether a heading is known: lines above the first that has two of them are told apart
 * @source rfc4180
 */
export function readDelimited(text: string, isKnown: (heading: string) => boolean = () => false): Delimited {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const delimiter = delimiterOf(body, isKnown);
  const rows: Row[] = [];
  let [cells, line, first, lineStart]: [Cell[], number, number, number] = [[], 1, 1, 0];
  const fail = (code: DelimitedProblem, at: number): Delimited => ({
    ok: false,
    code,
    line,
    column: at - lineStart + 1,
  });
  for (let at = 0; at <= body.length; ) {
    const column = at - lineStart + 1;
    let value = "";
    if (body[at] === '"') {
      const start = at++;
      for (;;) {
        const end = body.indexOf('"', at);
        if (end < 0) return fail("table/quote-open", start);
        value += body.slice(at, end);
        at = end + 1;
        if (body[at] !== '"') break;
        value += '"';
        at++;
      }
      const breaks = [...value.matchAll(/\r\n|\n|\r/g)];
      line += breaks.length;
      if (breaks.length > 0) lineStart = Math.max(body.lastIndexOf("\n", at - 1), body.lastIndexOf("\r", at - 1)) + 1;
      if (at < body.length && body[at] !== delimiter && !/[\r\n]/.test(body[at]!)) return fail("table/after-quote", at);
    } else {
      const window = body.slice(at, at + 2 * LONGEST);
      const found = [window.indexOf(delimiter), window.search(/[\r\n]/)].filter((end) => end >= 0);
      const end = at + Math.min(window.length, ...found);
      value = body.slice(at, end);
      at = end;
    }
    if (value.length > LONGEST) return fail("table/cell-too-long", at - value.length);
    cells.push({ text: value.normalize("NFC").trim(), column });
    if (cells.length > MOST_CELLS) return fail("table/too-many-cells", at - value.length);
    if (body[at] === delimiter) {
      at++;
      continue;
    }
    if (cells.some((cell) => cell.text !== "")) rows.push({ line: first, cells });
    if (rows.length > MOST_ROWS) return fail("table/too-many-rows", at);
    if (at >= body.length) break;
    at += body.startsWith("\r\n", at) ? 2 : 1;
    [cells, line, lineStart] = [[], line + 1, at];
    first = line;
  }
  const titles = rows
    .slice(0, MOST_TITLES)
    .findIndex(({ cells: each }) => each.filter((cell) => isKnown(cell.text)).length >= HEADINGS);
  return headed(delimiter, rows.slice(0, Math.max(0, titles)), rows.slice(Math.max(0, titles)));
}

function headed(delimiter: string, above: readonly Row[], [heading, ...rows]: readonly Row[]): Delimited {
  if (heading === undefined || rows.length === 0) return { ok: false, code: "table/empty", line: 1, column: 1 };
  const names = heading.cells.map(({ text }) => nameKey(text));
  const twice = names.findIndex((name, at) => name !== "" && names.indexOf(name) < at);
  if (twice >= 0)
    return { ok: false, code: "table/heading-twice", line: heading.line, column: heading.cells[twice]!.column };
  for (const { line, cells } of rows) {
    const more = cells.slice(names.length).find(({ text }) => text !== "");
    if (more !== undefined) return { ok: false, code: "table/more-cells", line, column: more.column };
  }
  return { ok: true, delimiter, above, heading, rows };
}
