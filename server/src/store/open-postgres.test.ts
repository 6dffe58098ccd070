import { expect, test } from "vitest";
import { storeContract } from "./contract.ts";
import { OpenStoreError } from "./engine.ts";
import { openPostgres } from "./open-postgres.ts";
import { openStore } from "./open-store.ts";
import { sqlStore } from "./sql-store.ts";
import { dumpPostgres } from "./testing/dump-schema.ts";
import { asRole, testDatabase } from "./testing/postgres.ts";
import { sampleEvent } from "./testing/sample-events.ts";

storeContract("PostgreSQL", async () => {
  const { owner } = await testDatabase();
  return () => openStore(owner);
});

test("schema.postgres.sql is what the migrations make", async () => {
  const { owner } = await testDatabase();
  await (await openPostgres(owner)).close();
  await expect(await asRole(owner, dumpPostgres)).toMatchFileSnapshot("./schema.postgres.sql");
});

test("row-level security: neither the owner nor another role sees rows without their practice, or writes under another", async () => {
  const { owner, other, name } = await testDatabase();
  const store = await openStore(owner);
  await store.appendEvents("one", "ana", [sampleEvent(1)]);
  await store.appendEvents("two", "ana", [sampleEvent(1), sampleEvent(2)]);
  await asRole(owner, async (client) => {
    await client.query(`grant select, insert, update, delete on all tables in schema public to ${name}_other`);
  });
  for (const role of [owner, other]) {
    await asRole(role, async (client) => {
      const count = async () => Number((await client.query("select count(*) as n from event")).rows[0].n);
      expect(await count()).toBe(0);
      await client.query("select set_config('app.practice', 'one', false)");
      expect(await count()).toBe(1);
      await client.query("select set_config('app.practice', 'two', false)");
      expect(await count()).toBe(2);
      const add = (practice: string) =>
        client.query("insert into event values ($1, 'ana', 'x', 9, '{}', 'h')", [practice]);
      await expect(add("one")).rejects.toThrow("row-level security");
      expect((await client.query("update event set body = '{}'")).rowCount).toBe(0);
      expect((await client.query("delete from event")).rowCount).toBe(0);
    });
  }
  await store.close();

  const asOther = await openStore(other);
  expect(await asOther.appendEvents("one", "ana", [sampleEvent(1), sampleEvent(3)])).toEqual(["known", "stored"]);
  await asOther.close();
});

test("a query that names the wrong practice finds nothing, even if it asks for another's rows", async () => {
  const engine = await openPostgres((await testDatabase()).owner);
  await sqlStore(engine).appendEvents("one", "ana", [sampleEvent(1)]);
  const all = engine.db.selectFrom("event").select("id").compile();
  expect(await engine.run("two", [all])).toEqual([[]]);
  expect(await engine.run("one", [all])).toEqual([[{ id: sampleEvent(1).id }]]);
  await engine.close();
});

test("who names a token sees the rows that hold it and no others, and cannot alter them", async () => {
  const { owner } = await testDatabase();
  const store = await openStore(owner);
  await store.putLink("one", { token: "t1", person: "ana", expires: 10 });
  await store.putLink("two", { token: "t2", person: "ben", expires: 10 });
  await store.takeLink("t2", "d2", 1);
  await store.putSession("one", { token: "s1", expires: 10 }, 1);
  await store.close();
  await asRole(owner, async (client) => {
    const seen = async (token: string) => {
      await client.query("select set_config('app.token', $1, false)", [token]);
      const links = await client.query("select token_hash as hash from link");
      const sessions = await client.query("select token_hash as hash from session");
      return [...links.rows, ...sessions.rows].map(({ hash }) => hash);
    };
    expect(await seen("")).toEqual([]);
    expect(await seen("t1")).toEqual(["t1"]);
    expect(await seen("d2")).toEqual(["t2"]);
    expect((await client.query("update link set expires_at = 99")).rowCount).toBe(0);
    expect(await seen("s1")).toEqual(["s1"]);
    expect((await client.query("delete from session")).rowCount).toBe(0);
  });
});

test("a role that may pass by row-level security is refused", async () => {
  const { superuser } = await testDatabase();
  await expect(openStore(superuser)).rejects.toThrow(OpenStoreError);
});

test("a database that confirms commits too early is refused", async () => {
  const { owner, superuser, name } = await testDatabase();
  await asRole(superuser, async (client) => {
    await client.query(`alter database ${name} set synchronous_commit = off`);
  });
  await expect(openStore(owner)).rejects.toThrow("synchronous_commit off");
});

test("two servers may open a new database at once", async () => {
  const { owner } = await testDatabase();
  const stores = await Promise.all([openStore(owner), openStore(owner)]);
  const acks = await Promise.all(stores.map((store) => store.appendEvents("p", "ana", [sampleEvent(1)])));
  expect(acks.flat().toSorted()).toEqual(["known", "stored"]);
  await Promise.all(stores.map((store) => store.close()));
});
