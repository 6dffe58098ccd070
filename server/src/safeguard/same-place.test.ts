import { describe, expect, test } from "vitest";
import type { Refusal } from "./problem.ts";
import { checkOwnPage, checkPlace, isFromHere, ownNames } from "./same-place.ts";

const NAMES = ownNames("127.0.0.1");

function statusOf(job: () => void): number {
  try {
    job();
    return 200;
  } catch (error) {
    return (error as Refusal).statusCode;
  }
}

describe("the Host header (RFC 9110 7.2)", () => {
  test.each<[status: number, host: string | undefined]>([
    [200, "127.0.0.1:4747"],
    [200, "LOCALHOST:4747"],
    [200, "[::1]:4747"],
    [421, undefined],
    [421, ""],
    [421, "127.0.0.1"],
    [421, "127.0.0.1:4748"],
    [421, "stave.example:4747"],
    [421, "127.0.0.1.stave.example:4747"],
    [421, "localhost:4747@stave.example"],
    [421, "127.0.0.1:4747, stave.example"],
    [421, "::1:4747"],
  ])("%i for %s", (status, host) => {
    expect(statusOf(() => checkPlace({ method: "GET", headers: { host }, isApi: false }, NAMES, 4747))).toBe(status);
  });

  test("a server on every address goes by those of its cards, and by no name that another could lead here", () => {
    const all = ownNames("0.0.0.0");
    expect(all).toContain("127.0.0.1");
    for (const name of all) expect(name).toMatch(/^(localhost|\d+(\.\d+){3}|\[[0-9a-f:.]+\])$/);
    expect(ownNames("10.1.2.3")).toContain("10.1.2.3");
    expect(ownNames("fe80::1%eth0")).toContain("[fe80::1]");
  });
});

describe("pages of other origins (Fetch standard: Origin, Sec-Fetch-Site)", () => {
  const host = "127.0.0.1:4747";
  test.each<[status: number, isApi: boolean, headers: Record<string, string>]>([
    [200, true, {}],
    [200, true, { origin: `http://${host}`, "sec-fetch-site": "same-origin" }],
    [200, true, { "sec-fetch-site": "none" }],
    [403, true, { origin: "http://stave.example" }],
    [403, true, { origin: "null" }],
    [403, true, { origin: `https://${host}` }],
    [403, true, { origin: "http://127.0.0.1:80" }],
    [403, true, { "sec-fetch-site": "cross-site" }],
    [403, true, { "sec-fetch-site": "same-site" }],
    [200, false, { "sec-fetch-site": "cross-site" }],
  ])("%i, API %s: %o", (status, isApi, headers) => {
    const asked = { method: "GET", headers: { host, ...headers }, isApi };
    expect(statusOf(() => checkPlace(asked, NAMES, 4747))).toBe(status);
  });

  test("a change by the owner needs the header that browsers always send", () => {
    expect(statusOf(() => checkOwnPage({ method: "POST", headers: {}, isApi: true }))).toBe(403);
    expect(statusOf(() => checkOwnPage({ method: "GET", headers: {}, isApi: true }))).toBe(200);
    expect(statusOf(() => checkOwnPage({ method: "POST", headers: { origin: "x" }, isApi: true }))).toBe(200);
  });
});

test.each<[here: boolean, address: string | undefined, headers: Record<string, string>]>([
  [true, "127.0.0.1", {}],
  [true, "127.8.9.10", {}],
  [true, "::1", {}],
  [true, "::ffff:127.0.0.1", {}],
  [false, "10.0.0.1", {}],
  [false, "1270.0.0.1", {}],
  [false, "::ffff:10.0.0.1", {}],
  [false, undefined, {}],
  [false, "127.0.0.1", { "x-forwarded-for": "127.0.0.1" }],
  [false, "127.0.0.1", { forwarded: "for=127.0.0.1" }],
  [false, "127.0.0.1", { via: "1.1 proxy" }],
])("from here: %s for %s %o", (here, address, headers) => {
  expect(isFromHere(address, headers)).toBe(here);
});
