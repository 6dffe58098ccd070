import type { Problem, Reason, Row } from "../model/index.ts";
import type { Column, Columns } from "./columns.ts";
import { type RecordProblem, type Repair, shown, type Taken } from "./taken.ts";

/** One row of a table of records, and what is said about it while it is read. */
export class RowNotes {
  readonly line: number;
  readonly repairs: Reason[] = [];
  readonly problems: Problem[] = [];
  readonly #row: Row;
  readonly #columns: Columns;
  readonly #file: string;
  readonly #put = new Map<Column, string>();

  constructor(row: Row, columns: Columns, file: string) {
    this.line = row.line;
    this.#row = row;
    this.#columns = columns;
    this.#file = file;
  }

  /** @returns what stands in a column, empty where there is none */
  text(column: Column): string {
    return this.#put.get(column) ?? this.#cell(column)?.text ?? "";
  }

  /** @returns the first thing that stands in the row */
  firstText(): string {
    return this.#row.cells.find(({ text }) => text !== "")?.text ?? "";
  }

  /** Reads a column as if this stood there, and shows what stood there. */
  put(column: Column, text: string, repair?: Repair): void {
    if (repair !== undefined) this.repair(column, repair);
    this.#put.set(column, text);
  }

  /** Shows that the row is passed over. */
  leaveOut(repair: Repair): void {
    this.repairs.push(shown(repair, "", this.firstText()));
  }

  /** @returns the value of a cell; undefined when something is asked about it, which is noted, as repairs are */
  take<T>(column: Column, read: Taken<T>): T | undefined {
    if (!read.ok) {
      this.ask(column, read.ask, read);
      return undefined;
    }
    for (const each of read.repairs) this.repair(column, each);
    return read.value;
  }

  repair(column: Column, repair: Repair): void {
    this.repairs.push(shown(repair, column, this.text(column)));
  }

  ask(
    column: Column,
    code: RecordProblem,
    { allowed, maybe }: { readonly allowed?: string; readonly maybe?: string } = {},
  ): void {
    const found = this.text(column);
    this.problems.push({
      code,
      file: this.#file,
      at: [column],
      line: this.line,
      column: this.#cell(column)?.column ?? 1,
      ...(found === "" ? {} : { found }),
      ...(allowed === undefined || allowed === "" ? {} : { allowed }),
      ...(maybe === undefined || maybe === "" ? {} : { maybe }),
    });
  }

  #cell(column: Column) {
    const at = this.#columns.at.get(column);
    return at === undefined ? undefined : this.#row.cells[at];
  }
}
