import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { extname, join, relative, sep } from "node:path";
import { gzipSync } from "node:zlib";

/** A file of a page as it is sent. */
export interface PageFile {
  readonly type: string;
  readonly body: Buffer;
  /** The same, gzipped, where that is smaller. */
  readonly gzipped?: Buffer;
  readonly etag: string;
  readonly cache: string;
}

const TYPES: Readonly<Record<string, string>> = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
};
const FOR_EVER = "public, max-age=31536000, immutable";

/**
 * Reads the files of a built page, once. They are found by their address and never by a path that somebody sent, so that
 * nothing outside can be reached.
 *
 * @param folder of the build; a missing one holds nothing
 * @param base the address at which it is served, ending with a slash
 * @returns files by address; `index.html` stands at the base too
 */
export function readPageFiles(folder: string, base: string): ReadonlyMap<string, PageFile> {
  const files = new Map<string, PageFile>();
  for (const path of filesBelow(folder)) {
    const type = TYPES[extname(path)];
    if (type === undefined) continue;
    const name = relative(folder, path).split(sep).join("/");
    const body = readFileSync(path);
    const gzipped = gzipSync(body, { level: 9 });
    const file: PageFile = {
      type,
      body,
      ...(gzipped.length < body.length * 0.9 ? { gzipped } : {}),
      etag: createHash("sha256").update(body).digest("base64url"),
      cache: name.startsWith("assets/") ? FOR_EVER : "no-cache",
    };
    files.set(base + name, file);
    if (name === "index.html") files.set(base, file);
  }
  return files;
}

function filesBelow(folder: string): readonly string[] {
  try {
    return readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return [];
    throw error;
  }
}
