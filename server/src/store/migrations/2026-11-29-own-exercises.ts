import { type Kysely, type Migration, sql } from "kysely";
import type { Dialect } from "../engine.ts";
import { columnTypes, strict } from "./column-types.ts";

const KINDS = sql`kind in ('person', 'place', 'programme', 'exercises')`;

/** A practice keeps its coach's own exercises beside its people, places and programmes. */
export function ownExercises(dialect: Dialect): Migration {
  return {
    async up(db: Kysely<unknown>) {
      if (dialect === "postgres") {
        await sql`alter table document drop constraint document_kind`.execute(db);
        await sql`alter table document add constraint document_kind check (${KINDS})`.execute(db);
        return;
      }
      // SQLite changes no constraint of a table that is there.
      const { text } = columnTypes(dialect);
      await strict(
        dialect,
        db.schema
          .createTable("document_with_exercises")
          .addColumn("practice_id", text, (column) => column.notNull())
          .addColumn("kind", text, (column) => column.notNull())
          .addColumn("id", text, (column) => column.notNull())
          .addColumn("body", text, (column) => column.notNull())
          .addColumn("hash", text, (column) => column.notNull())
          .addPrimaryKeyConstraint("document_key", ["practice_id", "kind", "id"])
          .addCheckConstraint("document_kind", KINDS)
          .addCheckConstraint("document_programme", sql`kind <> 'programme' or id = hash`),
      ).execute();
      await sql`insert into document_with_exercises select practice_id, kind, id, body, hash from document`.execute(db);
      await db.schema.dropTable("document").execute();
      await db.schema.alterTable("document_with_exercises").renameTo("document").execute();
    },
  };
}
