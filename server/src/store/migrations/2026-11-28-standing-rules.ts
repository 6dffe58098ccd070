import { type Kysely, type Migration, sql } from "kysely";
import type { Dialect } from "../engine.ts";
import { columnTypes, strict } from "./column-types.ts";

/** Standing rules of a practice, every version of each: what was decided by one stays explained. */
export function standingRules(dialect: Dialect): Migration {
  return {
    async up(db: Kysely<unknown>) {
      const { text, whole } = columnTypes(dialect);
      await strict(
        dialect,
        db.schema
          .createTable("standing_rule")
          .addColumn("practice_id", text, (column) => column.notNull())
          .addColumn("id", text, (column) => column.notNull())
          .addColumn("version", whole, (column) => column.notNull())
          .addColumn("body", text, (column) => column.notNull())
          .addPrimaryKeyConstraint("standing_rule_key", ["practice_id", "id", "version"]),
      ).execute();
      if (dialect === "sqlite") return;
      const own = "practice_id = current_setting('app.practice', true)";
      await sql.raw("alter table standing_rule enable row level security").execute(db);
      await sql.raw("alter table standing_rule force row level security").execute(db);
      await sql.raw(`create policy own on standing_rule using (${own}) with check (${own})`).execute(db);
    },
  };
}
