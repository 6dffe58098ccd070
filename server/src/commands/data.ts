import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Problem } from "@stave/core/model";
import { OpenStoreError, openStore, type Store } from "../store/index.ts";
import type { Machine } from "./machine.ts";

const FILE = "stave.db";

/** Opens the records that a command only reads: a folder without any is a problem and stays as it is. */
export async function openRecords(folder: string, machine: Pick<Machine, "database">): ReturnType<typeof openData> {
  if (machine.database === undefined && !existsSync(join(folder, FILE)))
    return { problem: { code: "data/nobody", file: folder, at: [], line: 0, column: 0 } };
  return await openData(folder, machine);
}

/** Opens the store of a data folder, or the database that STAVE_DATABASE names. */
export async function openData(
  folder: string,
  { database }: Pick<Machine, "database">,
): Promise<{ readonly store: Store } | { readonly problem: Problem }> {
  try {
    return { store: await openStore(database ?? join(folder, FILE)) };
  } catch (error) {
    const found = error instanceof OpenStoreError ? error.message : ((error as NodeJS.ErrnoException).code ?? "");
    const file = database === undefined ? folder : "STAVE_DATABASE";
    return { problem: { code: "data/cannot-open", file, at: [], line: 0, column: 0, found } };
  }
}
