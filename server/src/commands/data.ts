import { join } from "node:path";
import type { Problem } from "@stave/core/model";
import { OpenStoreError, openStore, type Store } from "../store/index.ts";
import type { Machine } from "./machine.ts";

/** Opens the store of a data folder, or the database that STAVE_DATABASE names. */
export async function openData(
  folder: string,
  { database }: Pick<Machine, "database">,
): Promise<{ readonly store: Store } | { readonly problem: Problem }> {
  try {
    return { store: await openStore(database ?? join(folder, "stave.db")) };
  } catch (error) {
    const found = error instanceof OpenStoreError ? error.message : ((error as NodeJS.ErrnoException).code ?? "");
    const file = database === undefined ? folder : "STAVE_DATABASE";
    return { problem: { code: "data/cannot-open", file, at: [], line: 0, column: 0, found } };
  }
}
