import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openStore, type Store } from "../store/index.ts";
import { beginSession, sessionIn } from "./owner.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-owner-"));
const file = join(folder, "stave.db");
let store: Store;
beforeAll(async () => {
  store = await openStore(file);
});
afterAll(async () => {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

const NOW = Date.UTC(2027, 0, 11);
const DAY = 86_400_000;

test("a session is a cookie that no script and no other site can use; it opens its practice for thirty days", async () => {
  const cookie = await beginSession(store, "local", 4747, NOW);
  const [pair, ...attributes] = cookie.split("; ");
  expect(pair).toMatch(/^stave-4747=[\w-]{43}$/);
  expect(attributes).toEqual(["Path=/", "Max-Age=2592000", "HttpOnly", "SameSite=Strict"]);
  expect(await sessionIn(store, pair, 4747, NOW)).toBe("local");
  expect(await sessionIn(store, `other=1; ${pair}; last=2`, 4747, NOW + 30 * DAY - 1)).toBe("local");
  expect(await sessionIn(store, pair, 4747, NOW + 30 * DAY)).toBeUndefined();
  expect(await sessionIn(store, pair, 4748, NOW)).toBeUndefined();
  expect(await sessionIn(store, `${pair}; ${pair}`, 4747, NOW)).toBeUndefined();
  expect(await sessionIn(store, pair!.slice(0, -1), 4747, NOW)).toBeUndefined();
  expect(await sessionIn(store, undefined, 4747, NOW)).toBeUndefined();
});

test("the token itself is not on the disk", async () => {
  const cookie = await beginSession(store, "local", 4747, NOW);
  const token = /=([\w-]{43});/.exec(cookie)![1]!;
  for (const name of [file, `${file}-wal`]) expect(readFileSync(name).includes(token)).toBe(false);
});
