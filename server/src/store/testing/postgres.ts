import { spawn } from "node:child_process";
import { randomBytes } from "node:crypto";
import { fileURLToPath } from "node:url";
import pg from "pg";

const program = fileURLToPath(new URL("./postgres-server.ts", import.meta.url));
let started: Promise<number> | undefined;

/** An empty database of its own, whose addresses are for roles without special powers. */
export interface TestDatabase {
  readonly name: string;
  /** The role that owns the tables. */
  readonly owner: string;
  /** A role that owns nothing. */
  readonly other: string;
  /** The superuser, for what no installation of ours does. */
  readonly superuser: string;
}

/** Starts a real PostgreSQL at the first call; it stops when this process is gone. */
export async function testDatabase(): Promise<TestDatabase> {
  started ??= start();
  const port = await started;
  const name = `test_${randomBytes(6).toString("hex")}`;
  const address = (role: string, database: string) => `postgres://${role}@127.0.0.1:${port}/${database}`;
  await asRole(address("postgres", "postgres"), async (client) => {
    await client.query(`create role ${name}_owner login`);
    await client.query(`create role ${name}_other login`);
    await client.query(`create database ${name} owner ${name}_owner`);
  });
  return {
    name,
    owner: address(`${name}_owner`, name),
    other: address(`${name}_other`, name),
    superuser: address("postgres", name),
  };
}

/** Runs statements on a connection of a role. */
export async function asRole<T>(address: string, job: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: address });
  await client.connect();
  try {
    return await job(client);
  } finally {
    await client.end();
  }
}

async function start(): Promise<number> {
  const server = spawn(process.execPath, ["--import", "tsx", program], { stdio: ["pipe", "pipe", "inherit"] });
  const port = await new Promise<number>((resolve, reject) => {
    server.once("error", reject);
    server.once("exit", () => reject(new Error("PostgreSQL for the tests did not start; its message stands above")));
    server.stdout.once("data", (line: Buffer) => resolve(Number(line.toString())));
  });
  // Nothing of it may keep the tests from ending; its standard input ends with them.
  server.unref();
  for (const stream of [server.stdin, server.stdout]) (stream as unknown as { unref(): void }).unref();
  return port;
}
