import type { Cell, Row } from "../model/index.ts";
import { partsOf } from "./straighten.ts";

/** What stands before a message when a talk is copied out of a telephone: a day, an hour, who wrote it. */
const STAMP =
  /^\[?(\d{1,4}[./-]\d{1,2}[./-]\d{2,4}),? \d{1,2}:\d{2}(?::\d{2})?(?: ?[ap]m)?(?:\]| -|:)? (?:[^:\d]{1,60}: )?/i;
/** A day on a line of its own or in front of the first movement. */
const DAY =
  /^((?:\p{L}{2,12}\.?,? )?(?:\d{4}-\d{2}-\d{2}|\d{1,2}[./]\d{1,2}[./]\d{2,4}|\d{1,2}\.? \p{L}{3,10}\.? \d{4})),?:?(?: |$)/u;
/** A movement in words, and all that is counted behind it. */
const DONE = /^(\p{L}[^@\d+;]*?)[ :,]+((?:bw ?[+-]? ?|amrap |max )?\d.*)$/iu;
const LOAD =
  /^(?:(.+) )?(?:@ ?|at )?(bw(?: ?[+−-] ?\d+(?:[.,]\d+)?)?|\d+(?:[.,]\d+)? ?(?:kgs?|lbs?|#)(?: ?(?:each|a side|\/side|\/hand))?)(?: (.+))?$/i;
const LEFT = / ?,? ?(?:\()?(\d(?:\.5)?) ?(?:rir|left|in reserve)\)?$/i;
const MOST_LINES = 2000;

const NAMES = ["day", "movement", "load", "result", "reserve"] as const;

/**
 * Reads notes in lines, as they stand in a message or a notebook, as rows of a table: a day above or before them, then a
 * movement with its load and result (`row 10kg 3x10`, `squat 3x5 @ 60 kg, press 10/10/8`).
 *
 * @returns undefined where no line names a movement and a number
 */
export function readNoteLines(text: string): { readonly heading: Row; readonly rows: readonly Row[] } | undefined {
  const rows: Row[] = [];
  let day = "";
  for (const [index, whole] of text.split(/\r\n|\n|\r/, MOST_LINES).entries()) {
    const stamp = STAMP.exec(whole);
    const line = whole.slice(stamp?.[0].length ?? 0);
    const dated = DAY.exec(line);
    day = dated?.[1] ?? stamp?.[1] ?? day;
    const said = line.slice(dated?.[0].length ?? 0);
    for (const part of said.split(/; ?| then | and (?=\p{L})|[,.] (?=\p{L}{3})/iu)) {
      const done = DONE.exec(part.trim().replace(/[.,]$/, ""));
      if (done === null) continue;
      const column = whole.indexOf(part.trim()) + 1;
      const [left = "", cells] = cellsOf(done[2]!);
      rows.push(rowOf(index + 1, column, [day, done[1]!.trim(), ...cells, left]));
    }
  }
  return rows.length === 0 ? undefined : { heading: rowOf(1, 1, NAMES), rows };
}

/** @returns what is left in reserve, and the load and the result */
function cellsOf(counted: string): readonly [string | undefined, readonly [string, string]] {
  const left = LEFT.exec(counted);
  const bare = counted.slice(0, left?.index ?? counted.length).trim();
  if (partsOf(bare) !== undefined) return [left?.[1], ["", bare]];
  const [, before = "", load = "", after = ""] = LOAD.exec(bare) ?? [];
  if (load === "") return [left?.[1], ["", bare]];
  return [
    left?.[1],
    [
      load,
      [before, after]
        .join(" ")
        .replace(/ ?[@:,]$/, "")
        .trim(),
    ],
  ];
}

function rowOf(line: number, column: number, texts: readonly string[]): Row {
  return { line, cells: texts.map((text): Cell => ({ text: text.normalize("NFC"), column })) };
}
