import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import type { Measure } from "./measure.ts";

const PEOPLE = 1000;
const FIRST = 100;

/** Fits so many different people one after another, and tells the heap in use after the first hundred and after all. */
const PROGRAM = `
  import { readFileSync } from "node:fs";
  import { day } from "@stave/core/day";
  import { CATALOGUE } from "@stave/core/exercises";
  import { cohortReader, readPlaces, readProgramme } from "@stave/core/model";
  import { FitMemory } from "@stave/core/fit";
  import { planFor } from "@stave/core/revise";
  import { FOLLOWER_COLUMNS, madeUpFollowers } from "./made-up-followers.ts";
  const read = (name) => readFileSync("examples/ropewalk/" + name, "utf8");
  const programme = readProgramme(read("harbour-steps.yaml"), "p").value.programme;
  const places = readPlaces(read("places.yaml"), "q").value.value;
  const on = day("2027-01-11");
  const row = (raw) => ({ fields: raw.split(","), raw, line: 1 });
  const reader = cohortReader(row(FOLLOWER_COLUMNS), { file: "f", places, catalogue: CATALOGUE, on }).value;
  const made = { engine: "", catalogue: "", state: "", decisions: "" };
  const memory = new FitMemory(8);
  const heap = () => { globalThis.gc(); globalThis.gc(); return process.memoryUsage().heapUsed; };
  let done = 0;
  let first = 0;
  for (const line of madeUpFollowers(7, ${PEOPLE})) {
    const person = reader(row(line)).value;
    const place = places.find(({ id }) => id === person.place);
    planFor({ programme, programmeHash: "", person, place, others: places, catalogue: CATALOGUE, on, made, memory });
    if (++done === ${FIRST}) first = heap();
  }
  console.log(JSON.stringify([first, heap()]));
`;

/** By how much the heap grows while many people are fitted: what is kept of each of them. */
export const fitHeap: Measure = {
  name: "fit/heap",
  async run() {
    const folder = mkdtempSync(join(tmpdir(), "stave-bench-heap-"));
    try {
      const outfile = join(folder, "heap.mjs");
      await build({
        stdin: { contents: PROGRAM, resolveDir: "bench", loader: "ts" },
        bundle: true,
        platform: "node",
        format: "esm",
        outfile,
        banner: { js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);' },
      });
      const said = execFileSync(process.execPath, ["--expose-gc", outfile], { encoding: "utf8" });
      const [first, all] = JSON.parse(said) as [number, number];
      const [value, baselineValue] = [all / 1000, first / 1000];
      const grown = ((value - baselineValue) / 1000).toFixed(1);
      const baseline = `after ${FIRST} people, of ${PEOPLE}: it grew by ${grown} MB`;
      const aim = "grows by less than 20 MB";
      return { name: "fit/heap", value, unit: "kB", baseline, baselineValue, ratio: value / baselineValue, n: 1, aim };
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
};
