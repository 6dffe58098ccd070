import { OpenStoreError } from "./engine.ts";

/**
 * Takes a file for this process. The lock is the operating system's, held through SQLite on a small file beside it, so
 * that it goes away with the process however that ends, and readers of the file itself are not kept out.
 *
 * @returns what gives the file free again
 * @throws OpenStoreError when another process, or another store of this one, has it
 */
export async function lockFile(file: string): Promise<() => void> {
  const { default: Sqlite } = await import("better-sqlite3");
  const lock = new Sqlite(`${file}.lock`, { timeout: 0 });
  try {
    lock.exec("begin exclusive");
  } catch (error) {
    lock.close();
    if (error instanceof Sqlite.SqliteError && error.code === "SQLITE_BUSY") {
      throw new OpenStoreError(
        `${file} is in use by another Stave. Stop that one first, or give this one another file.`,
      );
    }
    throw error;
  }
  return () => void lock.close();
}
