import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { API_ROOT, ROUTES } from "@stave/core/api";
import Sqlite from "better-sqlite3";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { newToken } from "../safeguard/index.ts";
import { openStore } from "../store/index.ts";
import { sampleEvent } from "../store/testing/sample-events.ts";
import { listen } from "./testing/listen.ts";
import { send } from "./testing/send.ts";
import { fill, type Served, served } from "./testing/served.ts";

const EVENTS = `${API_ROOT}/events`;
const EXCHANGE = `${API_ROOT}/links/exchange`;
const folder = mkdtempSync(join(tmpdir(), "stave-edges-"));
const pages = join(folder, "pages");
const SECRET = "nobody outside may read this";

let it: Served;
beforeAll(async () => {
  for (const [path, text] of Object.entries({
    "desk/index.html": "<!doctype html><title>desk</title>",
    "desk/assets/desk-AAAA.js": "desk();".repeat(200),
    "desk/assets/desk-AAAA.js.map": "{}",
    "floor/index.html": "<!doctype html><title>floor</title>",
    "floor/sw.js": "worker();",
    "floor/assets/face-BBBB.woff2": "font",
    "secret.txt": SECRET,
    "desk/notes.unknown": SECRET,
  })) {
    mkdirSync(join(pages, path, ".."), { recursive: true });
    writeFileSync(join(pages, path), text);
  }
  symlinkSync(join(pages, "secret.txt"), join(pages, "desk/assets/link.js"));
  const store = await openStore(join(folder, "stave.db"));
  await fill(store, ["dagny"]);
  it = await served(store, pages);
}, 60_000);
afterAll(async () => {
  await it.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** Sends bytes as they are, and gives back all that comes. */
async function raw(bytes: string): Promise<string> {
  return await new Promise((resolve, reject) => {
    let text = "";
    const socket = connect(it.port, "127.0.0.1", () => socket.end(bytes));
    socket.setEncoding("utf8").on("data", (chunk: string) => {
      text += chunk;
    });
    socket.once("close", () => resolve(text)).once("error", reject);
  });
}

describe("who may ask", () => {
  test("a name that leads here by another's doing is refused: pages, API, description alike", async () => {
    for (const path of ["/", "/go/", `${API_ROOT}/morning`, `${API_ROOT}/openapi.json`, "/nowhere"])
      for (const host of ["stave.example", `stave.example:${it.port}`, "127.0.0.1", `127.0.0.1:${it.port + 1}`]) {
        const got = await it.ask(path, { headers: { host } });
        expect([got.status, got.json.code]).toEqual([421, "request/wrong-host"]);
        expect(got.headers["set-cookie"]).toBeUndefined();
      }
    const localhost = await send(it.port, "/", { headers: { host: `localhost:${it.port}` } });
    expect(localhost.status).toBe(200);
  });

  test("a page of another origin gets nothing, even with the coach's cookie or a phone's token", async () => {
    const { cookie } = await it.owner();
    const phone = await it.phone("dagny");
    const ways = [{ origin: "http://stave.example" }, { origin: "null" }, { "sec-fetch-site": "cross-site" }];
    for (const way of ways) {
      const link = await it.ask(`${API_ROOT}/people/dagny/links`, {
        method: "POST",
        headers: { cookie: cookie!, ...way },
      });
      const read = await it.ask(EVENTS, { headers: { ...phone, ...way } });
      for (const { status, json } of [link, read]) expect([status, json.code]).toEqual([403, "request/wrong-origin"]);
    }
  });

  test("no answer lets another origin read it", async () => {
    const preflight = await send(it.port, EVENTS, {
      method: "OPTIONS",
      headers: { origin: "http://stave.example", "access-control-request-method": "POST" },
    });
    expect(preflight.status).toBeGreaterThanOrEqual(400);
    for (const path of ["/", `${API_ROOT}/openapi.json`, EVENTS]) {
      const { headers } = await send(it.port, path, { headers: { accept: "text/html" } });
      expect(Object.keys(headers).filter((name) => name.startsWith("access-control"))).toEqual([]);
    }
  });

  test("the owner's cookie comes with the page, stays while it is good, and goes to nothing passed on", async () => {
    const first = await send(it.port, "/");
    const [cookie] = first.headers["set-cookie"]!;
    expect(cookie).toMatch(
      new RegExp(`^stave-${it.port}=[\\w-]{43}; Path=/; Max-Age=2592000; HttpOnly; SameSite=Strict$`),
    );
    const again = await send(it.port, "/people", { headers: { cookie: cookie!.split(";")[0]!, accept: "text/html" } });
    expect(again.status).toBe(200);
    expect(again.headers["set-cookie"]).toBeUndefined();
    const passedOn = { "x-forwarded-for": "192.0.2.1" };
    expect((await send(it.port, "/", { headers: passedOn })).headers["set-cookie"]).toBeUndefined();
    const used = await it.ask(`${API_ROOT}/stream`, { headers: { cookie: cookie!.split(";")[0]!, ...passedOn } });
    expect(used.status).toBe(401);
    expect((await send(it.port, "/go/")).headers["set-cookie"]).toBeUndefined();
  });

  test("without a token, or with half of one, every route but the exchange says so", async () => {
    for (const { method, path, who } of Object.values(ROUTES)) {
      if (who === "anyone") continue;
      for (const headers of [
        {},
        { authorization: "Bearer" },
        { authorization: `Basic ${newToken()}` },
        { cookie: "stave=1" },
      ]) {
        const got = await it.ask(API_ROOT + path.replace(":id", "dagny"), { method, headers });
        expect([got.status, got.json.code]).toEqual([401, "sign-in/missing"]);
        expect(got.headers["www-authenticate"]).toMatch(/^(Bearer|Cookie) /);
      }
    }
  });

  test("a caller who asks too often is told when to ask again; others are not kept waiting", async () => {
    const [one, two] = [await it.phone("dagny"), await it.owner()];
    const statuses: number[] = [];
    for (let i = 0; i < 310; i++) {
      const { status, headers, json } = await it.ask(`${EVENTS}?after=999999`, { headers: one });
      statuses.push(status);
      if (status === 429) expect([json.code, headers["retry-after"]]).toEqual(["request/too-many", "1"]);
    }
    expect(statuses.filter((status) => status === 200).length).toBe(300);
    expect((await it.ask(`${API_ROOT}/people/dagny/links`, { method: "POST", headers: two })).status).toBe(200);
    it.time.now += 60_000;
    expect((await it.ask(EVENTS, { headers: one })).status).toBe(200);
  });
});

describe("what is sent", () => {
  test.each<[name: string, status: number, code: string, body: string | Buffer, type?: string]>([
    ["nothing", 400, "request/malformed", ""],
    ["half of a document", 400, "request/malformed", '{"events":['],
    ["bytes that are no text", 400, "request/malformed", Buffer.from([0x22, 0xff, 0x22])],
    ["nested lists without end", 400, "request/malformed", "[".repeat(100_000) + "]".repeat(100_000)],
    ["a prototype", 400, "request/malformed", '{"events":[],"__proto__":{"person":"tobiah"}}'],
    ["NUL", 400, "request/malformed", JSON.stringify({ events: [sampleEvent(1, "da\0gny")] })],
    ["a list", 400, "request/invalid", "[]"],
    ["a number", 400, "request/invalid", "1e999"],
    ["no event", 400, "request/invalid", '{"events":[]}'],
    [
      "101 events",
      400,
      "request/invalid",
      JSON.stringify({ events: Array.from({ length: 101 }, (_, i) => sampleEvent(i, "dagny")) }),
    ],
    ["a megabyte", 413, "request/too-large", JSON.stringify({ events: "x".repeat(1_000_000) })],
    ["a form", 415, "request/not-json", "events=1", "application/x-www-form-urlencoded"],
    ["JSON that says it is text, as a form of another site can send it", 415, "request/not-json", "{}", "text/plain"],
  ])("%s: %i", async (_, status, code, body, type = "application/json") => {
    it.time.now += 60_000;
    const got = await it.ask(EVENTS, {
      method: "POST",
      headers: { ...(await it.phone("dagny")), "content-type": type },
      body,
    });
    expect([got.status, got.json.code]).toEqual([status, code]);
    expect(it.faults).toEqual([]);
  });

  test("what is wrong is told with its place", async () => {
    const events = [sampleEvent(1, "dagny"), { ...sampleEvent(2, "dagny"), n: -1 }];
    const got = await it.ask(EVENTS, { headers: await it.phone("dagny"), body: { events } });
    expect(got.json.faults.map(({ at }: { at: unknown }) => at)).toEqual([["body", "events", 1, "n"]]);
    const asked = await it.ask(`${EVENTS}?after=yesterday`, { headers: await it.phone("dagny") });
    expect([asked.status, asked.json.faults[0].at]).toEqual([400, ["querystring", "after"]]);
  });

  test("a problem stays small, however much was wrong", async () => {
    const events = Array.from({ length: 100 }, () => ({ ["k".repeat(2000)]: 1 }));
    const got = await it.ask(EVENTS, { headers: await it.phone("dagny"), body: { events } });
    expect(got.status).toBe(400);
    expect(got.bytes.length).toBeLessThan(10_000);
  });

  test("a body that says another length than it has, or none, is refused", async () => {
    const head = `POST ${EXCHANGE} HTTP/1.1\r\nHost: 127.0.0.1:${it.port}\r\nContent-Type: application/json\r\n`;
    for (const more of [
      "Content-Length: 999999999\r\n\r\n{}",
      "Content-Length: x\r\n\r\n{}",
      "Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n{}",
    ])
      expect(await raw(head + more)).toMatch(/^(HTTP\/1\.1 4\d\d .*application\/problem\+json.*)?$/s);
  });

  test("headers past their bound, and what is no HTTP, end with a problem", async () => {
    const long = await raw(`GET / HTTP/1.1\r\nHost: 127.0.0.1:${it.port}\r\nX: ${"y".repeat(9000)}\r\n\r\n`);
    expect(long).toMatch(/^HTTP\/1\.1 431 .*"code":"request\/too-large"/s);
    const none = await raw("hello\r\n\r\n");
    expect(none).toMatch(/^HTTP\/1\.1 400 .*content-security-policy.*"code":"request\/malformed"/is);
  });

  test("an address that leads nowhere, or with another method, is a problem of its own", async () => {
    for (const [method, path] of [
      ["GET", `${API_ROOT}/nothing`],
      ["GET", "/api/v2/morning"],
      ["POST", "/"],
      ["DELETE", EVENTS],
      ["GET", "/favicon.ico"],
    ] as const) {
      const got = await it.ask(path, { method });
      expect([got.status, got.json.code]).toEqual([404, "route/unknown"]);
    }
    expect((await it.ask("/%zz")).status).toBe(400);
  });
});

describe("pages", () => {
  test("are sent whole, small where that helps, the hashed for ever, the others asked again", async () => {
    const script = await send(it.port, "/assets/desk-AAAA.js", { headers: { "accept-encoding": "br, gzip" } });
    expect(script.headers["content-type"]).toBe("text/javascript; charset=utf-8");
    expect(script.headers["content-encoding"]).toBe("gzip");
    expect(gunzipSync(script.bytes).toString()).toBe("desk();".repeat(200));
    expect(script.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
    const plain = await send(it.port, "/assets/desk-AAAA.js", { headers: { "accept-encoding": "gzip;q=0" } });
    expect([plain.headers["content-encoding"], plain.text]).toEqual([undefined, "desk();".repeat(200)]);
    const font = await send(it.port, "/go/assets/face-BBBB.woff2");
    expect([font.headers["content-type"], font.text]).toEqual(["font/woff2", "font"]);
    for (const path of ["/", "/go/", "/go/index.html", "/go/sw.js"]) {
      const page = await send(it.port, path);
      expect([page.status, page.headers["cache-control"]]).toEqual([200, "no-cache"]);
      const { etag } = page.headers;
      const same = await send(it.port, path, { headers: { "if-none-match": etag! } });
      expect([same.status, same.text]).toEqual([304, ""]);
    }
    expect((await send(it.port, "/go")).headers.location).toBe("/go/");
  });

  test("any place on the desk may be opened; a file that is not there is not the page", async () => {
    const accept = "text/html,application/xhtml+xml,*/*;q=0.8";
    for (const path of ["/people", "/people/j%C3%BCrgen.b?week=base%2F1", "/morning"])
      expect((await send(it.port, path, { headers: { accept } })).text).toContain("<title>desk</title>");
    for (const path of ["/assets/gone.js", "/go/gone", "/api/gone"])
      expect((await it.ask(path, { headers: { accept } })).status).toBe(404);
  });

  test.each([
    "/../secret.txt",
    "/assets/../../secret.txt",
    "/%2e%2e/secret.txt",
    "/assets/..%2f..%2fsecret.txt",
    "/assets/..%5c..%5csecret.txt",
    "/go/..%252f..%252fsecret.txt",
    "//secret.txt",
    "/assets/link.js",
    "/notes.unknown",
    "/assets/desk-AAAA.js.map",
    "/assets/desk-AAAA.js%00.txt",
    "/assets/",
  ])("nothing else can be read: %s", async (path) => {
    const got = await send(it.port, path);
    expect(got.text).not.toContain(SECRET);
    expect(got.status).toBeGreaterThanOrEqual(400);
  });

  test("every answer has the headers that keep a page to itself", async () => {
    for (const path of ["/", "/go/sw.js", "/nowhere", `${API_ROOT}/openapi.json`, EVENTS, "/%zz"]) {
      const { headers } = await send(it.port, path);
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect(headers["referrer-policy"]).toBe("no-referrer");
      const policy = String(headers["content-security-policy"]);
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(policy).not.toMatch(/unsafe|\*|https?:/);
    }
  });
});

test("the description is OpenAPI 3.1 and names every route, with its word and its answers", async () => {
  const { json } = await it.ask(`${API_ROOT}/openapi.json`);
  expect(json.openapi).toMatch(/^3\.1\./);
  const described = Object.entries<Record<string, { operationId: string }>>(json.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, { operationId }]) => `${operationId} ${method.toUpperCase()} ${path}`),
  );
  const routes = Object.entries(ROUTES).map(
    ([name, { method, path }]) => `${name} ${method} ${API_ROOT}${path.replace(/:(\w+)/g, "{$1}")}`,
  );
  expect(described.toSorted()).toEqual([...routes, `openapi GET ${API_ROOT}/openapi.json`].toSorted());
  expect(Object.keys(json.paths[`${API_ROOT}/bundle`].get.responses)).toContain("304");
  for (const methods of Object.values<Record<string, { responses: object }>>(json.paths))
    for (const { responses } of Object.values(methods))
      expect(Object.keys(responses)).toEqual(expect.arrayContaining(["200", "4XX", "5XX"]));
});

test("a fault of our own tells the machine's owner where, and nobody what was sent", async () => {
  const phone = await it.phone("dagny");
  const database = new Sqlite(join(folder, "stave.db"));
  database.exec("alter table event rename to gone");
  const got = await it.ask(EVENTS, { headers: phone, body: { events: [sampleEvent(9000, "dagny")] } });
  database.exec("alter table gone rename to event");
  database.close();
  expect([got.status, got.json.code]).toEqual([500, "server/fault"]);
  expect(got.text).not.toMatch(/ at |\.ts|no such table/);
  expect(it.faults.length).toBe(1);
  expect(it.faults[0]).toMatch(/^POST \/api\/v1\/events: SQLITE_ERROR\n\s+at /);
  for (const secret of ["no such table", "dagny", phone["authorization"]!.slice(7)])
    expect(it.faults[0]).not.toContain(secret);
  const again = await it.ask(EVENTS, { headers: phone, body: { events: [sampleEvent(9000, "dagny")] } });
  expect(again.json.acks[0].ack).toBe("stored");
});

test("stopping ends the streams and answers what was begun", async () => {
  const store = await openStore(join(folder, "other.db"));
  await fill(store, ["dagny"]);
  const other = await served(store, pages);
  const phone = await other.phone("dagny");
  const stream = await listen(other.port, `${API_ROOT}/stream`, phone);
  const sent = other.ask(EVENTS, { headers: phone, body: { events: [sampleEvent(1, "dagny")] } });
  await stream.until(1);
  await other.stop();
  await stream.ended;
  expect((await sent).json.acks[0].ack).toBe("stored");
  await expect(send(other.port, "/")).rejects.toThrow("ECONNREFUSED");
});
