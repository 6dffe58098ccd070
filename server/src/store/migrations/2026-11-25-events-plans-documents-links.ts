import { type Kysely, type Migration, sql } from "kysely";
import type { Dialect } from "../engine.ts";
import { columnTypes, strict } from "./column-types.ts";

/** Events that are never altered, plan revisions, documents, links with the devices that came in by them. */
export function eventsPlansDocumentsLinks(dialect: Dialect): Migration {
  return {
    async up(db: Kysely<unknown>) {
      const { text, whole } = columnTypes(dialect);
      for (const name of ["event", "plan_revision"]) {
        await strict(
          dialect,
          db.schema
            .createTable(name)
            .addColumn("practice_id", text, (column) => column.notNull())
            .addColumn("person_id", text, (column) => column.notNull())
            .addColumn("id", text, (column) => column.notNull())
            .addColumn("position", whole, (column) => column.notNull())
            .addColumn("body", text, (column) => column.notNull())
            .addColumn("hash", text, (column) => column.notNull())
            .addPrimaryKeyConstraint(`${name}_key`, ["practice_id", "person_id", "id"])
            .addUniqueConstraint(`${name}_position`, ["practice_id", "person_id", "position"]),
        ).execute();
      }
      await strict(
        dialect,
        db.schema
          .createTable("person_position")
          .addColumn("practice_id", text, (column) => column.notNull())
          .addColumn("person_id", text, (column) => column.notNull())
          .addColumn("last", whole, (column) => column.notNull())
          .addPrimaryKeyConstraint("person_position_key", ["practice_id", "person_id"]),
      ).execute();
      await strict(
        dialect,
        db.schema
          .createTable("document")
          .addColumn("practice_id", text, (column) => column.notNull())
          .addColumn("kind", text, (column) => column.notNull())
          .addColumn("id", text, (column) => column.notNull())
          .addColumn("body", text, (column) => column.notNull())
          .addColumn("hash", text, (column) => column.notNull())
          .addPrimaryKeyConstraint("document_key", ["practice_id", "kind", "id"])
          .addCheckConstraint("document_kind", sql`kind in ('person', 'place', 'programme')`)
          .addCheckConstraint("document_programme", sql`kind <> 'programme' or id = hash`),
      ).execute();
      await strict(
        dialect,
        db.schema
          .createTable("link")
          .addColumn("practice_id", text, (column) => column.notNull())
          .addColumn("token_hash", text, (column) => column.notNull())
          .addColumn("person_id", text, (column) => column.notNull())
          .addColumn("expires_at", whole, (column) => column.notNull())
          .addColumn("taken_at", whole)
          .addColumn("device_hash", text)
          .addPrimaryKeyConstraint("link_key", ["practice_id", "token_hash"])
          .addUniqueConstraint("link_device", ["practice_id", "device_hash"])
          .addCheckConstraint("link_taken", sql`(taken_at is null) = (device_hash is null)`),
      ).execute();
      await (dialect === "sqlite" ? keepEventsOnSqlite(db) : keepPracticesApart(db));
    },
  };
}

async function keepEventsOnSqlite(db: Kysely<unknown>): Promise<void> {
  for (const verb of ["update", "delete"]) {
    await sql
      .raw(
        `create trigger event_no_${verb} before ${verb} on event begin select raise(abort, 'events are never altered'); end`,
      )
      .execute(db);
  }
}

/** Rows are seen and written under the practice of the transaction alone; events have no policy to alter or remove them. */
async function keepPracticesApart(db: Kysely<unknown>): Promise<void> {
  const own = "practice_id = current_setting('app.practice', true)";
  for (const table of ["event", "plan_revision", "person_position", "document", "link"]) {
    await sql.raw(`alter table ${table} enable row level security`).execute(db);
    // The owner of the tables is bound too: most installations have one role.
    await sql.raw(`alter table ${table} force row level security`).execute(db);
    if (table === "event") {
      await sql.raw(`create policy own_read on ${table} for select using (${own})`).execute(db);
      await sql.raw(`create policy own_add on ${table} for insert with check (${own})`).execute(db);
    } else {
      await sql.raw(`create policy own on ${table} using (${own}) with check (${own})`).execute(db);
    }
  }
}
