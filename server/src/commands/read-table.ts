import type { FileHandle } from "node:fs/promises";
import type { CsvRow, Problem } from "@stave/core/model";
import { CsvError, parse } from "csv-parse";
import { openInput } from "./read-input.ts";

/** Characters of the longest line that is read. One of answers is about 100. */
const MOST_CHARACTERS = 10_000;

/**
 * Reads a table (RFC 4180, UTF-8) line by line, however long it is.
 *
 * @param onBytes told now and then how many bytes have been read, of how many
 * @throws UnreadableError where the file cannot be read or is no table
 */
export async function* readTable(
  file: string,
  onBytes: (read: number, all: number) => void = () => undefined,
): AsyncGenerator<CsvRow> {
  const opened = await openInput(file);
  if (!opened.ok) throw new UnreadableError(opened.problems);
  const { handle, size } = opened.value;
  const mark = await markOf(handle);
  const parser = parse({
    bom: true,
    delimiter: mark,
    info: true,
    raw: true,
    relax_column_count: true,
    skip_empty_lines: true,
    max_record_size: MOST_CHARACTERS,
  });
  const stream = handle.createReadStream({ start: 0 });
  stream.on("error", (error) => parser.destroy(error));
  stream.on("data", () => onBytes(stream.bytesRead, size));
  stream.pipe(parser);
  try {
    for await (const { record, raw, info } of parser as AsyncIterable<Parsed>) {
      const text = raw.replace(/\r?\n$/, "");
      yield { fields: record, raw: text, line: info.lines - (text.split("\n").length - 1), mark };
    }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error["lines"] === "number" ? error["lines"] : 0;
    throw new UnreadableError([{ code: "cohort/csv", file, at: [], line, column: 1 }]);
  } finally {
    stream.destroy();
  }
}

/** What parts the names of the first line: a comma, or where it has none a semicolon or a tab, as spreadsheets write them. */
async function markOf(handle: FileHandle): Promise<string> {
  const bytes = Buffer.alloc(MOST_CHARACTERS);
  const { bytesRead } = await handle.read(bytes, 0, bytes.length, 0);
  const [first = ""] = bytes.toString("utf8", 0, bytesRead).split(/[\r\n]/, 1);
  return first.includes(",") ? "," : ([";", "\t"].find((mark) => first.includes(mark)) ?? ",");
}

interface Parsed {
  readonly record: readonly string[];
  readonly raw: string;
  readonly info: { readonly lines: number };
}

/** A file that cannot be read any further, with what is wrong. */
export class UnreadableError extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems[0]?.code);
    this.problems = problems;
  }
}
