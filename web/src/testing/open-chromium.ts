import { mkdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import packed from "@sparticuz/chromium";
import { type Browser, chromium } from "playwright-core";

/** Unpacking takes seconds; a lock older than this was left by a run that was killed. */
const LONGEST_UNPACK_MS = 120_000;

/** The browser comes packed and is unpacked once for a machine; runs that start together take turns. */
async function executable(): Promise<string> {
  const lock = join(tmpdir(), "stave-chromium.lock");
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
      const age = Date.now() - (statSync(lock, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
      if (age > LONGEST_UNPACK_MS) rmSync(lock, { recursive: true, force: true });
      else await new Promise((again) => setTimeout(again, 100));
    }
  }
  try {
    return await packed.executablePath();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

/**
 * A real Chromium; one for a test file. `CHROMIUM=/usr/bin/chromium` uses another than the packed one.
 *
 * @param args of the command line, beside those that a container needs
 */
export async function openChromium(args: readonly string[] = []): Promise<Browser> {
  const executablePath = process.env["CHROMIUM"] ?? (await executable());
  return chromium.launch({ executablePath, args: ["--no-sandbox", ...args] });
}
