import { type CreateTableBuilder, type RawBuilder, sql } from "kysely";
import type { Dialect } from "../engine.ts";

interface ColumnTypes {
  /** Compared byte by byte, whatever the locale of the database. */
  readonly text: RawBuilder<unknown>;
  /** Whole numbers to 2^53: positions, epoch milliseconds. */
  readonly whole: RawBuilder<unknown>;
}

/** Types that keep the same values on both databases. */
export function columnTypes(dialect: Dialect): ColumnTypes {
  return dialect === "sqlite"
    ? { text: sql`text`, whole: sql`integer` }
    : { text: sql`text collate "C"`, whole: sql`bigint` };
}

/** Without it SQLite takes any value in any column. */
export function strict<Name extends string, Columns extends string>(
  dialect: Dialect,
  table: CreateTableBuilder<Name, Columns>,
): CreateTableBuilder<Name, Columns> {
  return dialect === "sqlite" ? table.modifyEnd(sql`strict`) : table;
}
