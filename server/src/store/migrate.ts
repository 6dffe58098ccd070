import { type Kysely, Migrator } from "kysely";
import type { Dialect } from "./engine.ts";
import { migrations } from "./migrations/index.ts";
import type { Tables } from "./tables.ts";

/** Brings the tables up to date; does nothing when they are. */
export async function migrate(db: Kysely<Tables>, dialect: Dialect): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...migrations(dialect) }) } });
  const { error } = await migrator.migrateToLatest();
  if (error !== undefined) throw error;
}
