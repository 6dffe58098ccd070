import { createHash, randomBytes } from "node:crypto";
import { mkdir, open, rename, rm, rmdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Problem } from "@stave/core/model";

export interface OutFile {
  /** Path below the folder, made by us and never by a name from outside. */
  readonly path: string;
  readonly content: string | Uint8Array;
}

export interface Written {
  readonly path: string;
  readonly bytes: number;
  readonly sha256: string;
}

async function sync(path: string): Promise<void> {
  const handle = await open(path, "r");
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function stage(path: string, content: string | Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  const handle = await open(path, "wx");
  try {
    await handle.writeFile(content);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: "out/full",
  EDQUOT: "out/full",
  EFBIG: "out/full",
  EACCES: "out/not-allowed",
  EROFS: "out/not-allowed",
  ENOTDIR: "out/not-a-folder",
  EEXIST: "out/not-a-folder",
};

/** @returns what a fault of writing into a folder means to whoever asked for it */
export function outProblem(folder: string, error: unknown): Problem {
  const code = (error as NodeJS.ErrnoException).code ?? "";
  const where = { file: folder, at: [], line: 0, column: 0 };
  const known = REASONS[code];
  return known === undefined ? { code: "out/failed", ...where, found: code } : { code: known, ...where };
}

/**
 * Writes files so that none is ever half there: all are written and synced in a folder of their own, then renamed into place.
 * When anything fails before that, nothing has changed.
 *
 * @returns what was written with its hash, or the problem
 */
export async function writeFiles(
  folder: string,
  files: readonly OutFile[],
): Promise<{ readonly written: readonly Written[] } | { readonly problem: Problem }> {
  const part = join(folder, `.part-${randomBytes(6).toString("hex")}`);
  let made: string | undefined;
  try {
    made = await mkdir(folder, { recursive: true });
    for (const file of files) await stage(join(part, file.path), file.content);
    for (const file of files) {
      await mkdir(dirname(join(folder, file.path)), { recursive: true });
      await rename(join(part, file.path), join(folder, file.path));
    }
    for (const parent of new Set(files.map((file) => dirname(join(folder, file.path))))) await sync(parent);
    return {
      written: files.map(({ path, content }) => ({
        path: join(folder, path),
        bytes: Buffer.byteLength(content),
        sha256: createHash("sha256").update(content).digest("hex"),
      })),
    };
  } catch (error) {
    return { problem: outProblem(folder, error) };
  } finally {
    await rm(part, { recursive: true, force: true }).catch(() => undefined);
    // A folder that is still empty was made for nothing; one that holds the files refuses to go.
    if (made !== undefined) await rmdir(folder).catch(() => undefined);
  }
}
