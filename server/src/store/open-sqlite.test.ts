import { mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { storeContract } from "./contract.ts";
import { openSqlite } from "./open-sqlite.ts";
import { sqlStore } from "./sql-store.ts";
import { dumpSqlite } from "./testing/dump-schema.ts";
import { sampleEvent, sampleEvents } from "./testing/sample-events.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-store-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files = 0;
const newFile = () => join(folder, `${files++}.db`);

storeContract("SQLite", async () => {
  const file = newFile();
  return async () => sqlStore(await openSqlite(file));
});

test("schema.sqlite.sql is what the migrations make", async () => {
  const { connection, close } = await openSqlite(newFile());
  await expect(dumpSqlite(connection)).toMatchFileSnapshot("./schema.sqlite.sql");
  await close();
});

test("commits go to the disk: a write-ahead log with synchronous=FULL on the very connection that writes", async () => {
  const { connection, close } = await openSqlite(newFile());
  expect(connection.pragma("journal_mode", { simple: true })).toBe("wal");
  expect(connection.pragma("synchronous", { simple: true })).toBe(2);
  await close();
});

test("the file is its owner's alone", async () => {
  const file = newFile();
  const { close } = await openSqlite(file);
  expect([file, `${file}-wal`].map((name) => statSync(name).mode & 0o777)).toEqual([0o600, 0o600]);
  await close();
});

test("a full disk: the batch is refused as a whole, and goes through once there is room", async () => {
  const engine = await openSqlite(newFile());
  const store = sqlStore(engine);
  await store.appendEvents("p", "ana", [sampleEvent(0)]);
  const pages = Number(engine.connection.pragma("page_count", { simple: true }));
  engine.connection.pragma(`max_page_count = ${pages + 2}`);
  await expect(store.appendEvents("p", "ana", sampleEvents(1, 200))).rejects.toThrow("full");
  expect((await store.eventsOf("p", "ana")).length).toBe(1);
  engine.connection.pragma("max_page_count = 100000");
  expect(new Set(await store.appendEvents("p", "ana", sampleEvents(1, 200)))).toEqual(new Set(["stored"]));
  expect((await store.eventsOf("p", "ana")).length).toBe(200);
  await store.close();
});

test("the table itself refuses to alter or remove an event, or to take another type", async () => {
  const engine = await openSqlite(newFile());
  await sqlStore(engine).appendEvents("p", "ana", [sampleEvent(0)]);
  const run = (text: string) => () => engine.connection.exec(text);
  expect(run("update event set body = '{}'")).toThrow("never altered");
  expect(run("delete from event")).toThrow("never altered");
  expect(run("insert into person_position values ('p', 'x', 'one')")).toThrow("cannot store TEXT");
  await engine.close();
});
