import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { timeOnce } from "./clock.ts";
import { FOLLOWER_COLUMNS, madeUpFollowers } from "./made-up-followers.ts";
import type { Measure } from "./measure.ts";

const PEOPLE = 100_000;
const ROOM = "examples/ropewalk";
const STAVE = "server/dist/stave.js";

/** Reads the same people from a file of JSON, one a line, and writes them to another: what any program has to do. */
function readAndWrite(from: string, to: string): void {
  const people = readFileSync(from, "utf8")
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as object);
  writeFileSync(to, `${people.map((person) => JSON.stringify(person)).join("\n")}\n`);
}

/** The followers of a programme, all fitted by the built program in two threads, a class of them once. */
export const fit100000: Measure = {
  name: "fit/100000",
  async run() {
    const folder = mkdtempSync(join(tmpdir(), "stave-bench-cohort-"));
    try {
      const lines = [...madeUpFollowers(1, PEOPLE)];
      const [table, json] = [join(folder, "people.csv"), join(folder, "people.jsonl")];
      writeFileSync(table, `${[FOLLOWER_COLUMNS, ...lines].join("\n")}\n`);
      const columns = FOLLOWER_COLUMNS.split(",");
      const people = lines.map((line) => {
        const fields = line.split(",");
        return JSON.stringify(Object.fromEntries(columns.map((name, at) => [name, fields[at]])));
      });
      writeFileSync(json, `${people.join("\n")}\n`);
      const files = [`${ROOM}/harbour-steps.yaml`, "--people", table, "--places", `${ROOM}/places.yaml`];
      const args = [
        "cohort",
        ...files,
        "--from",
        "2027-01-11",
        "--out",
        join(folder, "out"),
        "--workers",
        "2",
        "--json",
      ];
      let said = "";
      const run = () => {
        said = execFileSync(process.execPath, [STAVE, ...args], {
          encoding: "utf8",
          stdio: ["ignore", "pipe", "ignore"],
        });
      };
      const before = await timeOnce(() => readAndWrite(json, join(folder, "copy.jsonl")));
      const value = await timeOnce(run);
      const after = await timeOnce(() => readAndWrite(json, join(folder, "copy.jsonl")));
      const { people: told, classes } = JSON.parse(said).result;
      if (told.fitted !== PEOPLE || statSync(join(folder, "out/people.csv")).size === 0)
        throw new Error(`${told.fitted} of ${PEOPLE} people have a plan`);
      const baselineValue = (before + after) / 2;
      return {
        name: "fit/100000",
        value,
        unit: "ms",
        baseline: `reading and writing the same ${PEOPLE} people as JSON; ${classes.all} classes, ${classes.unproven} unproven, ${told.unserved} people unserved`,
        baselineValue,
        ratio: value / baselineValue,
        n: 1,
        aim: "at most 120",
      };
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
};
