import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { build } from "esbuild";
import { expect, test } from "vitest";
import type { Person, Plan } from "../../core/src/model/index.ts";
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

test("bundled and run in a worker thread: the same bytes", async () => {
  const folder = mkdtempSync(join(tmpdir(), "ropewalk-"));
  try {
    const outfile = join(folder, "worker.mjs");
    await build({
      stdin: {
        contents: `
          import { parentPort, workerData } from "node:worker_threads";
          import { planEverybody, readRoom } from "./plan-everybody.ts";
          parentPort.postMessage(JSON.stringify(planEverybody(readRoom(workerData))));
        `,
        resolveDir: fileURLToPath(new URL(".", import.meta.url)),
        loader: "ts",
      },
      bundle: true,
      platform: "node",
      format: "esm",
      outfile,
      // The YAML reader is of the old module form and asks for parts of node.
      banner: { js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);' },
    });
    const answer = await new Promise<string>((resolve, reject) => {
      const worker = new Worker(outfile, { workerData: texts });
      worker.once("message", resolve);
      worker.once("error", reject);
    });
    expect(answer).toBe(JSON.stringify(plans));
  } finally {
    rmSync(folder, { recursive: true });
  }
});
