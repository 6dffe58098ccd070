import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { API_ROOT } from "@stave/core/api";
import { afterAll, beforeAll, expect, test } from "vitest";
import { LOCAL_PRACTICE } from "../local-practice.ts";
import { newToken } from "../safeguard/index.ts";
import { openStore } from "../store/index.ts";
import { sampleEvent, sampleEvents } from "../store/testing/sample-events.ts";
import { newLink } from "./index.ts";
import { type Killable, killAfterReceipt, startServer } from "./testing/killable.ts";
import { send } from "./testing/send.ts";
import { fill } from "./testing/served.ts";

const EVENTS = `${API_ROOT}/events`;
const KILLS = 20;
const BATCH = 60;
const folder = mkdtempSync(join(tmpdir(), "stave-killed-"));
const token = newToken();
let running: Killable | undefined;

async function start(before: readonly string[] = []): Promise<Killable> {
  running = await startServer(folder, before);
  return running;
}

beforeAll(async () => {
  const store = await openStore(join(folder, "stave.db"));
  await fill(store, ["dagny"]);
  const { path } = await newLink(store, LOCAL_PRACTICE, "dagny", Date.now());
  await store.close();
  const server = await start();
  const body = { link: path.slice(5), token };
  expect((await send(server.port, `${API_ROOT}/links/exchange`, { body })).json).toEqual({ person: "dagny" });
  server.child.kill("SIGTERM");
  expect(await server.ended).toBe(null);
}, 60_000);
afterAll(() => {
  running?.child.kill("SIGKILL");
  rmSync(folder, { recursive: true, force: true });
});

// Only Linux tells whether a server has read what arrived.
test.runIf(existsSync("/proc/net/tcp"))(
  `killed ${KILLS} times between receipt and reply, the server loses and doubles no acknowledged event`,
  async () => {
    const acknowledged = new Set<string>();
    const headers = { authorization: `Bearer ${token}` };
    const acknowledge = (acks: readonly { readonly id: string; readonly ack: string }[]) => {
      for (const { id, ack } of acks) {
        expect(ack).not.toBe("conflict");
        acknowledged.add(id);
      }
    };
    let first = 0;
    let unanswered = 0;
    /** How far into the time of an answer the kills reach; a reply that was quicker draws them nearer. */
    let reach = 1;
    for (let round = 0; unanswered < KILLS; round++) {
      expect(round).toBeLessThan(4 * KILLS);
      const server = await start();
      let tookMs = 0;
      for (let warm = 0; warm < 3; warm++) {
        const began = performance.now();
        const events = sampleEvents(first, first + BATCH, "dagny");
        acknowledge((await send(server.port, EVENTS, { headers, body: { events } })).json.acks);
        tookMs = performance.now() - began;
        first += BATCH / 2;
      }
      const body = JSON.stringify({ events: sampleEvents(first, first + BATCH, "dagny") });
      const request = [
        `POST ${EVENTS} HTTP/1.1`,
        `Host: 127.0.0.1:${server.port}`,
        `Authorization: Bearer ${token}`,
        "Content-Type: application/json",
        `Content-Length: ${Buffer.byteLength(body)}`,
        "",
        body,
      ].join("\r\n");
      // Spread over the time that an answer takes, so that some are killed before the commit and some after it.
      const reply = await killAfterReceipt(server, request, (tookMs * reach * (round % 8)) / 8);
      const store = await openStore(join(folder, "stave.db"));
      const events = (await store.eventsOf(LOCAL_PRACTICE, "dagny")).map(({ event }) => event);
      await store.close();
      const ids = new Set(events.map(({ id }) => id));
      expect(ids.size).toBe(events.length);
      expect(events).toEqual(events.map(({ n }) => sampleEvent(n, "dagny")));
      if (reply === "") unanswered++;
      else {
        acknowledge(JSON.parse(reply.slice(reply.indexOf("\r\n\r\n"))).acks);
        reach *= 0.8;
      }
      expect([...acknowledged].filter((id) => !ids.has(id))).toEqual([]);
    }
    // What was never answered is sent again, as a phone does, with what was.
    const server = await start();
    const all = sampleEvents(0, first + BATCH, "dagny");
    for (let from = 0; from < all.length; from += BATCH) {
      const events = all.slice(from, from + BATCH);
      const { json } = await send(server.port, EVENTS, { headers, body: { events } });
      for (const { id, ack } of json.acks) if (acknowledged.has(id)) expect(ack).toBe("known");
    }
    server.child.kill("SIGTERM");
    expect(await server.ended).toBe(null);
    const store = await openStore(join(folder, "stave.db"));
    const numbers = (await store.eventsOf(LOCAL_PRACTICE, "dagny")).map(({ event }) => event.n);
    await store.close();
    expect(numbers.toSorted((a, b) => a - b)).toEqual(all.map(({ n }) => n));
  },
  240_000,
);

const straced = spawnSync("strace", ["-o", "/dev/null", "true"]).status === 0;

test.runIf(straced)(
  "between receipt and reply the log is forced to the disk (system calls counted with strace)",
  async () => {
    const log = join(folder, "calls");
    const calls = "trace=read,recvfrom,recvmsg,write,writev,sendto,sendmsg,fdatasync,fsync";
    const server = await start(["strace", "-D", "-f", "-y", "-s", "40", "-e", calls, "-o", log]);
    const batches = 6;
    for (let batch = 0; batch < batches; batch++) {
      const events = sampleEvents(50_000 + batch * 20, 50_020 + batch * 20, "dagny");
      const { json } = await send(server.port, EVENTS, {
        headers: { authorization: `Bearer ${token}` },
        body: { events },
      });
      expect(json.acks.map(({ ack }: { ack: string }) => ack)).toEqual(Array(20).fill("stored"));
    }
    server.child.kill("SIGTERM");
    await server.ended;
    const forced: number[] = [];
    let since: number | undefined;
    for (const call of readFileSync(log, "utf8").split("\n")) {
      if (call.includes(`"POST ${EVENTS}`)) since = 0;
      else if (call.includes('"HTTP/1.1 200')) {
        if (since !== undefined) forced.push(since);
        since = undefined;
      } else if (since !== undefined && / f(data)?sync\(.*stave\.db-wal/.test(call)) since++;
    }
    expect(forced.length).toBe(batches);
    for (const count of forced) expect(count).toBeGreaterThanOrEqual(1);
  },
  120_000,
);
