import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { build } from "esbuild";
import { afterAll, describe, expect, test } from "vitest";
import type { Person, Plan } from "../../core/src/model/index.ts";
import { openChromium } from "../../web/src/testing/open-chromium.ts";
import { planEverybody, type Room, readRoom, type Texts } from "./plan-everybody.ts";

const text = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");
const texts: Texts = {
  people: text("people.yaml"),
  places: text("places.yaml"),
  programmes: [text("harbour-steps.yaml"), text("slipway-strength.yaml")],
};
const room = readRoom(texts);
const plans = planEverybody(room);

/** A fixed order that is not the given one: Fisher–Yates with a small generator of our own. */
function shuffled<T>(list: readonly T[], seed: number): T[] {
  const all = [...list];
  let state = seed;
  for (let i = all.length - 1; i > 0; i--) {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    const j = state % (i + 1);
    [all[i], all[j]] = [all[j]!, all[i]!];
  }
  return all;
}

function shuffledPerson(person: Person, seed: number): Person {
  return {
    ...person,
    windows: shuffled(person.windows, seed),
    lifts: shuffled(person.lifts, seed),
    cautions: shuffled(person.cautions, seed),
    likes: shuffled(person.likes, seed),
    dislikes: shuffled(person.dislikes, seed),
    rungs: Object.fromEntries(shuffled(Object.entries(person.rungs), seed)),
  };
}

function shuffledRoom(seed: number): Room {
  const { exercises, ladders } = room.catalogue;
  return {
    people: shuffled(room.people, seed).map((person) => shuffledPerson(person, seed)),
    places: shuffled(room.places, seed),
    programmes: shuffled(room.programmes, seed),
    catalogue: {
      exercises: new Map(shuffled([...exercises], seed)),
      ladders: shuffled(ladders, seed).map((ladder) => ({ ...ladder, steps: shuffled(ladder.steps, seed) })),
    },
  };
}

const byPerson = (all: readonly Plan[]) => new Map(all.map((plan) => [plan.person, plan]));

test.each([1, 20_270_111])(
  "people, places, catalogue, windows and records in another order, seed %i: the same plans",
  (seed) => {
    const other = shuffledRoom(seed);
    expect(other.people.map(({ id }) => id)).not.toEqual(room.people.map(({ id }) => id));
    expect([...other.catalogue.exercises.keys()]).not.toEqual([...room.catalogue.exercises.keys()]);
    const found = byPerson(planEverybody(other));
    for (const plan of plans) expect(found.get(plan.person), plan.person).toEqual(plan);
  },
);

test("the same files once more: the same bytes", () => {
  expect(JSON.stringify(planEverybody(readRoom(texts)))).toBe(JSON.stringify(plans));
});

describe("bundled, and run elsewhere: the same bytes", () => {
  const folder = mkdtempSync(join(tmpdir(), "ropewalk-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const bytes = JSON.stringify(plans);

  /** One file of the program that plans everybody, with a last line that says what to do with it. */
  async function bundled(name: string, platform: "node" | "browser", lastLine: string): Promise<string> {
    const outfile = join(folder, name);
    const contents = `import { planEverybody, readRoom } from "./plan-everybody.ts";\n${lastLine}`;
    const resolveDir = fileURLToPath(new URL(".", import.meta.url));
    // The YAML reader is of the old module form and asks for parts of node.
    const js = 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);';
    const banner = platform === "node" ? { banner: { js } } : {};
    await build({
      stdin: { contents, resolveDir, loader: "ts" },
      bundle: true,
      platform,
      format: "esm",
      outfile,
      ...banner,
    });
    return outfile;
  }

  test("in a worker thread", async () => {
    const program = await bundled(
      "worker.mjs",
      "node",
      `import { parentPort, workerData } from "node:worker_threads";
       parentPort.postMessage(JSON.stringify(planEverybody(readRoom(workerData))));`,
    );
    const answer = await new Promise<string>((resolve, reject) => {
      const worker = new Worker(program, { workerData: texts });
      worker.once("message", resolve);
      worker.once("error", reject);
    });
    expect(answer).toBe(bytes);
  });

  test.each([
    ["Pacific/Kiritimati", "tr_TR.UTF-8", "tr-TR"],
    ["America/St_Johns", "ar_EG.UTF-8", "ar-EG"],
  ])("in a process whose zone is %s and whose language is %s", async (zone, language, locale) => {
    const program = await bundled(
      "process.mjs",
      "node",
      `import { readFileSync } from "node:fs";
       const { timeZone, locale } = new Intl.DateTimeFormat().resolvedOptions();
       const plans = planEverybody(readRoom(JSON.parse(readFileSync(0, "utf8"))));
       console.log(JSON.stringify({ timeZone, locale, plans: JSON.stringify(plans) }));`,
    );
    const env = { ...process.env, TZ: zone, LANG: language, LC_ALL: language };
    const said = execFileSync(process.execPath, [program], {
      input: JSON.stringify(texts),
      env,
      encoding: "utf8",
      maxBuffer: 2 ** 28,
    });
    const answer = JSON.parse(said);
    expect([answer.timeZone, answer.locale.slice(0, 5)]).toEqual([zone, locale]);
    expect(answer.plans).toBe(bytes);
  });

  test("in Chromium", async () => {
    const program = await bundled(
      "page.js",
      "browser",
      "globalThis.planned = (texts) => JSON.stringify(planEverybody(readRoom(texts)));",
    );
    const browser = await openChromium();
    try {
      const page = await browser.newPage();
      await page.addScriptTag({ path: program, type: "module" });
      await page.waitForFunction(() => "planned" in globalThis);
      const answer = await page.evaluate(
        (given) => (globalThis as unknown as { planned: (t: Texts) => string }).planned(given),
        texts,
      );
      expect(answer).toBe(bytes);
    } finally {
      await browser.close();
    }
  });
});
