import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { type BuildOptions, build } from "esbuild";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openChromium } from "../../web/src/testing/open-chromium.ts";
import { dateEverybody } from "./date-everybody.ts";
import { planEverybody, readRoom, type Texts } from "./plan-everybody.ts";

const text = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");
const texts: Texts = {
  people: text("people.yaml"),
  places: text("places.yaml"),
  programmes: [text("harbour-steps.yaml"), text("slipway-strength.yaml")],
};
/** Some of the people: of windows of every kind, at several places, and on a rota. */
const SOME = ["esteban", "wren", "dagny", "bao-linh", "tobiah"];
const everybody = readRoom(texts);
const room = { ...everybody, people: everybody.people.filter(({ id }) => SOME.includes(id)) };
const plans = planEverybody(room);
const days = JSON.stringify(dateEverybody(room, plans));
const input = { texts, plans, some: SOME };

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "ropewalk-days-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The same computation as one file that another place can run. */
async function bundled(name: string, contents: string, options: BuildOptions): Promise<string> {
  const outfile = join(folder, name);
  const imports = `
    import { dateEverybody } from "./date-everybody.ts";
    import { readRoom } from "./plan-everybody.ts";
    const days = ({ texts, plans, some }) => {
      const room = readRoom(texts);
      const people = room.people.filter(({ id }) => some.includes(id));
      return JSON.stringify(dateEverybody({ ...room, people }, plans));
    };
  `;
  const stdin = { contents: imports + contents, resolveDir: fileURLToPath(new URL(".", import.meta.url)) };
  await build({ stdin: { ...stdin, loader: "ts" }, bundle: true, outfile, ...options });
  return outfile;
}
const NODE: BuildOptions = { platform: "node", format: "cjs" };

test("there are days of many people, with ties, drops and moves among them", () => {
  expect(room.people).toHaveLength(SOME.length);
  expect(room.people.some(({ cycle }) => cycle !== undefined)).toBe(true);
  for (const part of ['"answer":"move"', '"answer":"skip"', '"dropped":[{', "calendar/waits", "calendar/other-hours"]) {
    expect(days).toContain(part);
  }
});

test("windows, days away, places and people in another order: the same days", () => {
  const turned = {
    ...room,
    people: room.people.toReversed().map((person) => ({
      ...person,
      windows: person.windows.toReversed(),
      away: person.away.toReversed(),
      ...(person.cycle === undefined ? {} : { cycle: { ...person.cycle, days: person.cycle.days.toReversed() } }),
    })),
    places: room.places.toReversed().map((place) => {
      const { open, ...rest } = place;
      return open === undefined ? rest : { ...rest, open: open.toReversed() };
    }),
    programmes: room.programmes.toReversed(),
  };
  const found = dateEverybody(turned, plans.toReversed()) as readonly unknown[];
  expect(JSON.stringify(found.toReversed())).toBe(days);
});

// Zones of three quarters of an hour and of a day without midnight; languages with other numerals and other small letters.
test.each([
  ["Pacific/Chatham", "ar_EG.UTF-8"],
  ["America/Santiago", "tr_TR.UTF-8"],
])("in a process of its own, in the zone %s and the language %s: the same bytes", async (zone, language) => {
  const file = await bundled(
    "process.cjs",
    'import { readFileSync } from "node:fs"; process.stdout.write(days(JSON.parse(readFileSync(process.argv[2]))));',
    NODE,
  );
  const given = join(folder, `${language}.json`);
  writeFileSync(given, JSON.stringify(input));
  const env = { ...process.env, TZ: zone, LANG: language, LC_ALL: language };
  const where = execFileSync(process.execPath, ["-p", "new Intl.DateTimeFormat().resolvedOptions().timeZone"], { env });
  expect(String(where).trim()).toBe(zone);
  expect(String(execFileSync(process.execPath, [file, given], { env, maxBuffer: 2 ** 28 }))).toBe(days);
});

test("in a worker thread: the same bytes", async () => {
  const contents = `
    import { parentPort, workerData } from "node:worker_threads";
    parentPort.postMessage(days(workerData));
  `;
  const file = await bundled("worker.cjs", contents, NODE);
  const answer = await new Promise<string>((resolve, reject) => {
    const worker = new Worker(file, { workerData: input });
    worker.once("message", resolve);
    worker.once("error", reject);
  });
  expect(answer).toBe(days);
});

test("in Chromium: the same bytes", async () => {
  const file = await bundled("page.js", "globalThis.days = days;", { platform: "browser", format: "iife" });
  const browser = await openChromium();
  try {
    const context = await browser.newContext({ timezoneId: "Australia/Lord_Howe", locale: "fa-IR" });
    const page = await context.newPage();
    await page.addScriptTag({ path: file });
    const found = await page.evaluate((given) => {
      const { days: daysOf } = globalThis as unknown as { readonly days: (of: unknown) => string };
      return [daysOf(given), new Intl.DateTimeFormat().resolvedOptions().timeZone];
    }, input);
    expect(found).toEqual([days, "Australia/Lord_Howe"]);
  } finally {
    await browser.close();
  }
});
