import { execFileSync, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openSqlite } from "./open-sqlite.ts";
import { openStore } from "./open-store.ts";
import { sampleEvent } from "./testing/sample-events.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-durable-"));
/** Below the workspace, so that it finds the database driver. */
const writer = fileURLToPath(new URL("../../dist/testing/writer.js", import.meta.url));
const KILLS = 20;

beforeAll(() => {
  const program = fileURLToPath(new URL("./testing/writer.ts", import.meta.url));
  buildSync({
    entryPoints: [program],
    outfile: writer,
    bundle: true,
    platform: "node",
    format: "esm",
    external: ["better-sqlite3", "pg"],
    banner: {
      js: 'import { createRequire as requireFrom } from "node:module"; const require = requireFrom(import.meta.url);',
    },
  });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Said {
  readonly receipts: readonly number[];
  readonly replies: readonly { readonly first: number; readonly acks: readonly string[] }[];
}

/** Lets it write until so many receipts were seen, then kills it after a few turns. */
async function killedWriter(file: string, from: number, receipts: number, delayMs: number): Promise<Said> {
  const child = spawn(process.execPath, [writer, file, String(from)], { stdio: ["ignore", "pipe", "inherit"] });
  let text = "";
  let doomed = false;
  child.stdout.on("data", (chunk: Buffer) => {
    text += chunk.toString();
    if (doomed || text.split("receipt").length <= receipts) return;
    doomed = true;
    setTimeout(() => child.kill("SIGKILL"), delayMs);
  });
  const signal = await new Promise((resolve) => child.once("close", (_, by) => resolve(by)));
  expect(signal).toBe("SIGKILL");
  const lines = text.split("\n").slice(0, -1);
  return {
    receipts: lines.filter((line) => line.startsWith("receipt")).map((line) => Number(line.split(" ")[1])),
    replies: lines
      .filter((line) => line.startsWith("reply"))
      .map((line) => ({ first: Number(line.split(" ")[1]), acks: line.split(" ").slice(2) })),
  };
}

test(`killed ${KILLS} times between receipt and reply, the store loses and doubles no acknowledged event`, async () => {
  const file = join(folder, "killed.db");
  const acknowledged = new Set<string>();
  let from = 0;
  let between = 0;
  for (let round = 0; between < KILLS; round++) {
    expect(round).toBeLessThan(3 * KILLS);
    const { receipts, replies } = await killedWriter(file, from, 1 + (round % 3), round % 4);
    if (receipts.length > replies.length) between++;
    for (const { first, acks } of replies) {
      expect(acks).not.toContain("conflict");
      acks.forEach((_, i) => void acknowledged.add(sampleEvent(first + i).id));
    }
    // Opening again shows that the lock went with the process.
    const store = await openStore(file);
    const read = await store.eventsOf("p", "ana");
    await store.close();
    const ids = new Set(read.map(({ event }) => event.id));
    expect(ids.size).toBe(read.length);
    expect([...acknowledged].filter((id) => !ids.has(id))).toEqual([]);
    expect(read.map(({ event }) => event)).toEqual(read.map(({ event }) => sampleEvent(event.n)));
    // What was not answered is sent again, with some that were.
    from = Math.max(0, receipts.at(-1)! - 17);
  }
  expect(acknowledged.size).toBeGreaterThan(KILLS);
});

const straced = spawnSync("strace", ["-o", "/dev/null", "true"]).status === 0;
const way = straced ? "system calls counted with strace" : "no strace here: by what the connection itself reports";

test(`between receipt and reply the log is forced to the disk (${way})`, async () => {
  const file = join(folder, "synced.db");
  if (!straced) {
    const { connection, close } = await openSqlite(file);
    expect(connection.pragma("journal_mode", { simple: true })).toBe("wal");
    expect(connection.pragma("synchronous", { simple: true })).toBe(2);
    await close();
    return;
  }
  const log = join(folder, "calls");
  const trace = ["-f", "-y", "-e", "trace=write,fdatasync,fsync", "-s", "16", "-o", log];
  const batches = 6;
  execFileSync("strace", [...trace, process.execPath, writer, file, "0", String(batches)], { stdio: "pipe" });
  const calls = readFileSync(log, "utf8").split("\n");
  const forced: number[] = [];
  let since: number | undefined;
  for (const call of calls) {
    if (call.includes('"receipt ')) since = 0;
    else if (call.includes('"reply ')) {
      if (since !== undefined) forced.push(since);
      since = undefined;
    } else if (since !== undefined && / f(data)?sync\(.*synced\.db-wal/.test(call)) since++;
  }
  expect(forced.length).toBe(batches);
  for (const count of forced) expect(count).toBeGreaterThanOrEqual(1);
});
