/** Fails when an equation, table, check or exercise lacks its test, source, index line or page. */
import { existsSync, readFileSync } from "node:fs";
import { basename, dirname } from "node:path";
import { CATALOGUE } from "@stave/core/exercises";
import { SOURCES } from "@stave/core/sources";
import { filesBelow, type SourceFile } from "./tree.ts";

/** Folders in which one file is one unit that must be able to stand by itself. */
const UNIT_FOLDERS = ["core/src/equations", "core/src/tables", "core/src/checks"];
/** A file longer than this should have been two; tables of data may be longer. */
const MOST_LINES = 400;

function isUnit({ path }: SourceFile): boolean {
  return !path.endsWith(".test.ts") && basename(path) !== "index.ts";
}

/** @returns the source ids a file names: in @source lines, in `source: "…"` and in `sources: ["…"]` */
export function sourcesNamed(text: string): readonly string[] {
  const tags = [...text.matchAll(/@source ([\w, ]+)/g)].flatMap(([, ids]) => ids!.split(/[, ]+/));
  const fields = [...text.matchAll(/\bsources?: (?:\[([^\]]*)\]|"(\w+)")/g)].flatMap(([, list, one]) =>
    one === undefined ? [...list!.matchAll(/"(\w+)"/g)].map(([, id]) => id!) : [one],
  );
  const calls = [...text.matchAll(/\bpublished\(\s*"(\w+)"/g)].map(([, id]) => id!);
  return [...tags, ...fields, ...calls].filter((id) => id !== "");
}

/** @returns faults of one folder of units */
export function unitFaults(folder: string, files: readonly SourceFile[], exists: (path: string) => boolean): string[] {
  const index = files.find(({ path }) => path === `${folder}/index.ts`)?.text ?? "";
  return files.filter(isUnit).flatMap(({ path, text }) => {
    const faults: string[] = [];
    if (/export (?:const|function)/.test(text)) {
      if (!exists(path.replace(/\.ts$/, ".test.ts"))) faults.push(`${path}: has no test beside it`);
      if (sourcesNamed(text).length === 0) faults.push(`${path}: names no source`);
      const entered = files.some((file) => file.path !== path && file.text.includes(`./${basename(path)}"`));
      if (!index.includes(`./${basename(path)}"`) && !entered) faults.push(`${path}: stands in no index`);
    }
    return faults;
  });
}

function main(): string[] {
  const all = ["core/src", "server/src", "bench", "scripts"].flatMap(filesBelow);
  const faults = UNIT_FOLDERS.flatMap((folder) => {
    const files = all.filter(({ path }) => dirname(path) === folder);
    return files.length === 0 ? [`${folder}: holds nothing`] : unitFaults(folder, files, existsSync);
  });
  const used = new Set(
    all.filter(({ path }) => !path.startsWith("scripts/")).flatMap(({ text }) => sourcesNamed(text)),
  );
  for (const id of used) if (!(id in SOURCES)) faults.push(`an unknown source is named: ${id}`);
  for (const id of Object.keys(SOURCES)) if (!used.has(id)) faults.push(`core/src/sources.ts: ${id} is used nowhere`);
  const page = readFileSync("docs/catalogue.md", "utf8");
  for (const exercise of CATALOGUE.exercises.values()) {
    if (!page.includes(`\`${exercise.id}\``)) faults.push(`docs/catalogue.md: lacks ${exercise.id}`);
    if (exercise.sources.length === 0) faults.push(`${exercise.id}: names no source`);
  }
  const checks = readFileSync("docs/checks.md", "utf8");
  for (const { path, text } of all.filter(({ path }) => dirname(path) === "core/src/checks")) {
    const id = /^\s+id: "([a-z]+\/[a-z-]+)"/m.exec(text)?.[1];
    if (id !== undefined && !path.endsWith(".test.ts") && !checks.includes(id))
      faults.push(`docs/checks.md: lacks ${id}`);
  }
  for (const { path, text } of all) {
    const lines = text.split("\n").length;
    const table = /\/(exercises|tables|text)\//.test(path) || path.endsWith("sources.ts");
    if (lines > MOST_LINES && !table) faults.push(`${path}: ${lines} lines, more than ${MOST_LINES}`);
  }
  return faults;
}

if (process.argv[1]?.endsWith("guard.ts")) {
  const faults = main();
  for (const fault of faults) console.error(fault);
  if (faults.length === 0) console.log("guard: every unit has its test, source, index line and page");
  process.exit(faults.length === 0 ? 0 : 1);
}
