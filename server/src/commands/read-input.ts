import { constants } from "node:fs";
import { type FileHandle, open } from "node:fs/promises";
import type { Problem, Read } from "@stave/core/model";

/** The largest file that is read at all, in bytes. A programme of a year is about 60,000. */
export const MOST_BYTES = 2_000_000;

function problem(file: string, code: string, more: Pick<Problem, "found" | "allowed" | "maybe"> = {}): Read<never> {
  return { ok: false, problems: [{ code, file, at: [], line: 0, column: 0, ...more }] };
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "file/missing",
  EACCES: "file/not-allowed",
  EPERM: "file/not-allowed",
  EISDIR: "file/folder",
};

function unreadable(file: string, error: unknown): Read<never> {
  const code = (error as NodeJS.ErrnoException).code ?? "";
  return REASONS[code] === undefined ? problem(file, "file/unreadable", { found: code }) : problem(file, REASONS[code]);
}

/** @returns a plain file, open for reading, with its size in bytes; or a problem that names the file */
export async function openInput(file: string): Promise<Read<{ readonly handle: FileHandle; readonly size: number }>> {
  let handle: FileHandle | undefined;
  try {
    // A pipe that nobody writes to would otherwise be waited for without end.
    handle = await open(file, constants.O_RDONLY | constants.O_NONBLOCK);
    const found = await handle.stat();
    if (found.isFile()) return { ok: true, value: { handle, size: found.size }, problems: [] };
    await handle.close();
    return problem(file, found.isDirectory() ? "file/folder" : "file/not-plain");
  } catch (error) {
    await handle?.close();
    return unreadable(file, error);
  }
}

/** Spreadsheet programs write these two where "Unicode text" is chosen, with a mark in front. */
const WIDE: readonly (readonly [mark: readonly [number, number], label: string])[] = [
  [[0xff, 0xfe], "utf-16le"],
  [[0xfe, 0xff], "utf-16be"],
];
/** The first bytes of an archive, which is what files of spreadsheet and text programs are. */
const ARCHIVE = [0x50, 0x4b, 0x03, 0x04];

function textOf(file: string, bytes: Uint8Array): Read<string> {
  if (ARCHIVE.every((byte, at) => bytes[at] === byte)) return problem(file, "file/archive");
  const wide = WIDE.find(([mark]) => mark.every((byte, at) => bytes[at] === byte))?.[1];
  try {
    const text = new TextDecoder(wide ?? "utf-8", { fatal: true }).decode(bytes);
    return { ok: true, value: text, problems: [] };
  } catch {
    if (wide !== undefined || bytes.includes(0)) return problem(file, "file/not-text");
    const [before = ""] = new TextDecoder().decode(bytes).split("\uFFFD", 1);
    const lines = before.split(/\r\n|\n|\r/);
    const problems = [{ code: "file/encoding", file, at: [], line: lines.length, column: lines.at(-1)!.length + 1 }];
    return { ok: false, problems };
  }
}

/**
 * Reads a text file from outside: bounded in size, UTF-8 (or UTF-16 with its mark) or refused, a byte-order mark dropped.
 *
 * @returns the text, or a problem that names the file
 */
export async function readInput(file: string): Promise<Read<string>> {
  const opened = await openInput(file);
  if (!opened.ok) return opened;
  const { handle, size } = opened.value;
  try {
    if (size > MOST_BYTES)
      return problem(file, "file/too-large", { found: `${size} bytes`, allowed: `${MOST_BYTES} bytes` });
    const bytes = Buffer.alloc(size + 1);
    const { bytesRead } = await handle.read(bytes, 0, bytes.length, 0);
    return textOf(file, bytes.subarray(0, bytesRead));
  } catch (error) {
    return unreadable(file, error);
  } finally {
    await handle.close();
  }
}
