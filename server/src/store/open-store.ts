import { mkdirSync, realpathSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { lockFile } from "./lock-file.ts";
import { openPostgres } from "./open-postgres.ts";
import { openSqlite } from "./open-sqlite.ts";
import { sqlStore } from "./sql-store.ts";
import type { Store } from "./store.ts";

/**
 * Opens the store and brings its tables up to date.
 *
 * @param address what STAVE_DATABASE says: a postgres:// address, or else the path of a SQLite file, which one process
 * at a time may have open
 * @throws OpenStoreError when it is in use or cannot keep its promises
 */
export async function openStore(address: string): Promise<Store> {
  if (/^postgres(ql)?:\/\//.test(address)) return sqlStore(await openPostgres(address));
  mkdirSync(dirname(address), { recursive: true });
  const file = realFile(address);
  const unlock = await lockFile(file);
  try {
    const engine = await openSqlite(file);
    return sqlStore({
      ...engine,
      async close() {
        await engine.close();
        unlock();
      },
    });
  } catch (error) {
    unlock();
    throw error;
  }
}

/** One name for one file, so that a second path to it finds the same lock. */
function realFile(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return join(realpathSync(dirname(path)), basename(path));
  }
}
