/** One line of a table: its fields, and the text that they stand in. */
export interface CsvRow {
  readonly fields: readonly string[];
  readonly raw: string;
  /** Line of the file on which it begins, from 1. */
  readonly line: number;
  /** What parts the fields; a comma when left out. */
  readonly mark?: string;
}

/** Where each field begins in the text of the row. Source: RFC 4180. */
export function startsOf({ raw, mark = "," }: Pick<CsvRow, "raw" | "mark">): readonly number[] {
  const starts = [0];
  let quoted = false;
  for (let i = 0; i < raw.length; i++) {
    if (raw[i] === '"') quoted = !quoted;
    else if (raw[i] === mark && !quoted) starts.push(i + 1);
  }
  return starts;
}

/** A field may hold line breaks, so that a place in a row may stand on a later line. */
export function placeIn({ raw, line }: CsvRow, offset: number): { readonly line: number; readonly column: number } {
  const before = raw.slice(0, offset);
  return { line: line + before.split("\n").length - 1, column: offset - (before.lastIndexOf("\n") + 1) + 1 };
}
