import { type Kysely, type Migration, sql } from "kysely";
import type { Dialect } from "../engine.ts";
import { columnTypes, strict } from "./column-types.ts";

/** Sessions of the owner; and a token's hash alone finds the row that holds it, whatever the practice. */
export function sessionsAndTokens(dialect: Dialect): Migration {
  return {
    async up(db: Kysely<unknown>) {
      const { text, whole } = columnTypes(dialect);
      await strict(
        dialect,
        db.schema
          .createTable("session")
          .addColumn("practice_id", text, (column) => column.notNull())
          .addColumn("token_hash", text, (column) => column.notNull())
          .addColumn("expires_at", whole, (column) => column.notNull())
          .addPrimaryKeyConstraint("session_key", ["practice_id", "token_hash"]),
      ).execute();
      for (const [table, column] of [
        ["link", "token_hash"],
        ["link", "device_hash"],
        ["session", "token_hash"],
      ] as const) {
        await db.schema.createIndex(`${table}_by_${column}`).on(table).column(column).execute();
      }
      if (dialect === "postgres") await openByToken(db);
    },
  };
}

/** Who names the hash of a token may read the rows that hold it; writing still takes the practice. */
async function openByToken(db: Kysely<unknown>): Promise<void> {
  const own = "practice_id = current_setting('app.practice', true)";
  const token = "current_setting('app.token', true)";
  await sql.raw("alter table session enable row level security").execute(db);
  await sql.raw("alter table session force row level security").execute(db);
  await sql.raw(`create policy own on session using (${own}) with check (${own})`).execute(db);
  await sql.raw(`create policy by_token on session for select using (token_hash = ${token})`).execute(db);
  await sql
    .raw(`create policy by_token on link for select using (token_hash = ${token} or device_hash = ${token})`)
    .execute(db);
}
