import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { API_ROOT, bundleOutput, morningOutput, peopleOutput } from "@stave/core/api";
import { DEMO_STORIES } from "@stave/core/simulate";
import { afterAll, afterEach, expect, test } from "vitest";
import { newToken } from "../safeguard/index.ts";
import { todayAt } from "./machine.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-serve-demo-"));
let child: ChildProcess | undefined;
afterEach(() => void child?.kill("SIGKILL"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Starts the built program as `npm start` does, and reads on until it says how to end it. */
async function start(): Promise<{ readonly out: string; readonly base: string; end(): Promise<number | null> }> {
  const args = ["server/dist/stave.js", "demo", "--serve", "--port", "0", "--out", folder];
  child = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "ignore"] });
  const running = child;
  const ended = new Promise<number | null>((resolve) => running.once("close", (code) => resolve(code)));
  const out = await new Promise<string>((resolve, reject) => {
    let text = "";
    running.stdout!.on("data", (chunk: Buffer) => {
      text += chunk.toString();
      if (text.includes("Ctrl-C ends it.")) resolve(text);
    });
    void ended.then(() => reject(new Error(`it ended early: ${text}`)));
  });
  return {
    out,
    base: /machine alone: (http:\/\/127\.0\.0\.1:\d+)\/$/m.exec(out)![1]!,
    async end() {
      running.kill("SIGINT");
      return await ended;
    },
  };
}

test("npm start: the demo, then the coach's page with a morning list and a phone of each who has records; what is done stays for the day", async () => {
  const first = await start();
  expect(first.out).toContain("The Ropewalk Room, week of Monday 11 January 2027.");
  const page = await fetch(`${first.base}/`);
  const cookie = page.headers.get("set-cookie")!.split(";")[0]!;
  const coach = async (place: string, base = first.base) =>
    await (await fetch(`${base}${API_ROOT}/${place}`, { headers: { cookie } })).json();

  const morning = morningOutput.parse(await coach("morning"));
  expect(morning.day).toBe(todayAt(Date.now()));
  const titles = morning.people.flatMap(({ items }) => items.map(({ title }) => title.code));
  for (const code of ["progress/go-to-load", "progress/widen-range", "progress/pause-all"])
    expect(titles).toContain(code);
  expect(morning.people[0]!.items[0]!.stop).toBe(true);
  const noted = morning.people.filter(({ notes }) => notes.some(({ code }) => code === "watch/noted"));
  expect(noted.map(({ person }) => person.id)).toEqual(expect.arrayContaining(["tobiah", "dagny", "kofi"]));
  const { people } = peopleOutput.parse(await coach("people"));
  expect(people.length).toBe(18);
  expect(people.filter(({ last }) => last !== undefined).map(({ id }) => id)).toEqual(
    Object.keys(DEMO_STORIES).toSorted(),
  );
  for (const { last } of people) expect(last === undefined || last < morning.day).toBe(true);

  const links = [...first.out.matchAll(/^The phone of (.+), opens once: (http\S+)\/go\/#(\S+)$/gm)];
  expect(links.length).toBe(Object.keys(DEMO_STORIES).length);
  const his = links.find(([, name]) => name === "Sölve Brackenrydge")!;
  const token = newToken();
  const opened = await fetch(`${first.base}${API_ROOT}/links/exchange`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ link: his[3], token }),
  });
  expect(await opened.json()).toEqual({ person: "solve" });
  const phone = { headers: { authorization: `Bearer ${token}` } };
  const bundle = bundleOutput.parse(await (await fetch(`${first.base}${API_ROOT}/bundle`, phone)).json());
  expect(bundle.sessions.length).toBeGreaterThan(0);

  const item = morning.people.flatMap(({ items }) => items).find(({ title }) => title.code === "progress/go-to-load")!;
  const yes = { id: "decision-of-the-test", person: "solve", kind: "accepted", proposal: item.proposal.proposal };
  const decided = await fetch(`${first.base}${API_ROOT}/decisions`, {
    method: "POST",
    headers: { cookie, origin: first.base, "content-type": "application/json" },
    body: JSON.stringify(yes),
  });
  const { plan } = (await decided.json()) as { plan: string };
  expect(plan).not.toBe(bundle.plan);
  expect(await first.end()).toBe(0);

  const second = await start();
  const again = bundleOutput.parse(await (await fetch(`${second.base}${API_ROOT}/bundle`, phone)).json());
  expect(again.plan).toBe(plan);
  expect(await second.end()).toBe(0);
  expect(readdirSync(folder).filter((name) => name.startsWith("room-"))).toEqual([`room-${morning.day}`]);
}, 600_000);
