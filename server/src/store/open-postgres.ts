import { CompiledQuery, Kysely, PostgresDialect, sql } from "kysely";
import { type Engine, OpenStoreError, type RowsOf } from "./engine.ts";
import { migrate } from "./migrate.ts";
import type { Tables } from "./tables.ts";

/** Type number of bigint, which the driver would hand over as text. */
const BIGINT = 20;

/**
 * Opens a PostgreSQL database. Every transaction names its practice, and the database itself shows and takes rows of
 * that practice only.
 *
 * @throws OpenStoreError when the role could see past that, or the database confirms commits before they are on a disk
 */
export async function openPostgres(address: string): Promise<Engine> {
  const { default: pg } = await import("pg");
  const pool = new pg.Pool({
    connectionString: address,
    types: {
      getTypeParser: (type: number, format?: "text" | "binary") =>
        type === BIGINT ? Number : pg.types.getTypeParser(type, format as "text"),
    },
  });
  // A connection lost while idle is replaced at the next query; without a listener it would end the program.
  pool.on("error", () => {});
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  try {
    await checkServer(db);
    await migrate(db, "postgres");
  } catch (error) {
    await db.destroy();
    throw error;
  }

  const runAs = async (setting: "app.practice" | "app.token", value: string, queries: readonly CompiledQuery[]) =>
    await db.transaction().execute(async (tx) => {
      await tx.executeQuery(CompiledQuery.raw("select set_config($1, $2, true)", [setting, value]));
      const rows: unknown[][] = [];
      for (const query of queries) rows.push((await tx.executeQuery(query)).rows);
      return rows;
    });

  return {
    dialect: "postgres",
    db,
    rowsAtOnce: 200,
    async run<const Rows extends readonly unknown[]>(practice: string, queries: readonly CompiledQuery[]) {
      return (await runAs("app.practice", practice, queries)) as unknown as RowsOf<Rows>;
    },
    async runByToken<const Rows extends readonly unknown[]>(token: string, queries: readonly CompiledQuery[]) {
      return (await runAs("app.token", token, queries)) as unknown as RowsOf<Rows>;
    },
    close: () => db.destroy(),
  };
}

async function checkServer(db: Kysely<Tables>): Promise<void> {
  const { rows } = await sql<{ role: string; free: boolean; fsync: string; commit: string }>`
    select rolname as role, rolsuper or rolbypassrls as free,
      current_setting('fsync') as fsync, current_setting('synchronous_commit') as commit
    from pg_roles where rolname = current_user`.execute(db);
  const { role, free, fsync, commit } = rows[0]!;
  if (free) {
    throw new OpenStoreError(
      `The role ${role} may pass by row-level security, which keeps practices apart. Give Stave a role without superuser and bypassrls.`,
    );
  }
  if (fsync !== "on" || commit === "off") {
    throw new OpenStoreError(
      `The database confirms commits before they are on a disk (fsync ${fsync}, synchronous_commit ${commit}). Switch both on.`,
    );
  }
}
