import type { Day } from "@stave/core/day";
import { CATALOGUE } from "@stave/core/exercises";
import { cohortReader, type Person, type Place, type Read, readRoster } from "@stave/core/model";
import { readInput } from "./read-input.ts";
import { readTable, UnreadableError } from "./read-table.ts";

/** The most people of one table. */
const MOST_PEOPLE = 1_000_000;

/** A person of a file, or what is wrong with them, and where they stand. */
export interface Told {
  readonly read: Read<Person>;
  readonly at: { readonly file: string; readonly line: number; readonly column: number };
}

export interface CohortSource {
  readonly file: string;
  readonly places: readonly Place[];
  readonly on: Day;
  /** Told how many bytes of the file have been read, of how many. */
  readonly onBytes: (read: number, all: number) => void;
}

/**
 * The people of a cohort, one after another: from a table of answers, whose name ends in .csv, or from a roster.
 *
 * @throws UnreadableError when the file, its columns or the roster cannot be read
 */
export async function* cohortPeople(source: CohortSource): AsyncGenerator<Told> {
  yield* source.file.toLowerCase().endsWith(".csv") ? fromTable(source) : fromRoster(source);
}

async function* fromTable({ file, places, on, onBytes }: CohortSource): AsyncGenerator<Told> {
  let reader: ReturnType<typeof cohortReader> | undefined;
  let people = 0;
  for await (const row of readTable(file, onBytes)) {
    const at = { file, line: row.line, column: 1 };
    reader ??= cohortReader(row, { file, places, catalogue: CATALOGUE, on });
    if (!reader.ok) throw new UnreadableError(reader.problems);
    if (people++ === 0) continue;
    if (people > MOST_PEOPLE)
      throw new UnreadableError([{ code: "cohort/too-many", at: [], ...at, allowed: String(MOST_PEOPLE) }]);
    yield { read: reader.value(row), at };
  }
}

async function* fromRoster({ file, places }: CohortSource): AsyncGenerator<Told> {
  const text = await readInput(file);
  const roster = text.ok ? readRoster(text.value, file, places, CATALOGUE) : text;
  if (!roster.ok) throw new UnreadableError(roster.problems);
  const { value, positions } = roster.value;
  for (const [index, person] of value.entries())
    yield { read: { ok: true, value: person, problems: [] }, at: { file, ...positions.at(["people", index]) } };
}
