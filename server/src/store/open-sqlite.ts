import { closeSync, existsSync, fsyncSync, openSync } from "node:fs";
import { dirname } from "node:path";
import type { Database, Statement } from "better-sqlite3";
import { Kysely, SqliteDialect } from "kysely";
import type { Engine, RowsOf } from "./engine.ts";
import { migrate } from "./migrate.ts";
import type { Tables } from "./tables.ts";

/** Statements kept prepared; far more than the queries there are. */
const MOST_PREPARED = 200;

export interface SqliteEngine extends Engine {
  readonly connection: Database;
}

/**
 * Opens a SQLite file, readable by its owner alone, and makes it if need be. Every commit is on the disk before it
 * returns: write-ahead log, synchronous=FULL. It takes no lock: see `lockFile`.
 */
export async function openSqlite(file: string): Promise<SqliteEngine> {
  const { default: Sqlite } = await import("better-sqlite3");
  if (!existsSync(file)) {
    closeSync(openSync(file, "ax", 0o600));
    syncFolder(dirname(file));
  }
  const connection = new Sqlite(file);
  connection.pragma("busy_timeout = 5000");
  connection.pragma("journal_mode = WAL");
  // The build of this driver turns to NORMAL with the log, and NORMAL may lose the last commits when the power goes.
  connection.pragma("synchronous = FULL");
  connection.pragma("foreign_keys = ON");
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: connection }) });
  try {
    await migrate(db, "sqlite");
  } catch (error) {
    connection.close();
    throw error;
  }

  const prepared = new Map<string, Statement<unknown[], unknown>>();
  const statementOf = (text: string) => {
    let statement = prepared.get(text);
    if (statement === undefined) {
      if (prepared.size >= MOST_PREPARED) prepared.clear();
      statement = connection.prepare<unknown[], unknown>(text);
      prepared.set(text, statement);
    }
    return statement;
  };
  type Query = { readonly sql: string; readonly parameters: readonly unknown[] };
  const runOne = ({ sql, parameters }: Query): unknown[] => {
    const statement = statementOf(sql);
    if (statement.reader) return statement.all(...parameters);
    statement.run(...parameters);
    return [];
  };
  const runAll = connection.transaction((queries: readonly Query[]) => queries.map(runOne));

  async function run<const Rows extends readonly unknown[]>(_: string, queries: readonly Query[]) {
    return (queries.length === 1 ? [runOne(queries[0]!)] : runAll.immediate(queries)) as unknown as RowsOf<Rows>;
  }

  return {
    dialect: "sqlite",
    db,
    connection,
    rowsAtOnce: 1,
    run,
    runByToken: run,
    async close() {
      connection.close();
    },
  };
}

/** A new file survives a power cut only once its folder is on the disk. */
function syncFolder(folder: string): void {
  const handle = openSync(folder, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
