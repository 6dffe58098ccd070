/** Fails when a file of core imports what its layer may not see. The layers stand in ARCHITECTURE.md. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";

/** Every form: import … from "x" and export … from "x" as statements, import "x", import("x"), require("x"). */
const IMPORTS = [
  /(?:^|;)\s*(?:import|export)\b[^;"'`]*?\bfrom\s*["']([^"'\n]+)["']/gm,
  /(?:^|;)\s*import\s*["']([^"'\n]+)["']/gm,
  /\b(?:import|require)\s*\(\s*["'`]([^"'`\n]+)["'`]/g,
];
/** The only packages that core may use. */
const PACKAGES = new Set(["yaml", "zod"]);

export interface Layers {
  readonly rank: ReadonlyMap<string, number>;
  readonly also: ReadonlySet<string>;
}

/** Reads the table under "Layers of core". */
export function readLayers(architecture: string): Layers {
  const rank = new Map<string, number>();
  const also = new Set<string>();
  for (const line of architecture.split("\n")) {
    const match = /^\| *(\d) *\|([^|]+)\|[^|]*\|([^|]*)\|$/.exec(line);
    if (!match) continue;
    for (const [, name] of match[2]!.matchAll(/`(\w+)`/g)) rank.set(name!, Number(match[1]));
    for (const [, to, from] of match[3]!.matchAll(/`(\w+)` from `(\w+)`/g)) also.add(`${from} > ${to}`);
  }
  return { rank, also };
}

/** @param file path below core/src, with forward slashes; @returns what is wrong with its imports */
export function faultsOf(file: string, text: string, layers: Layers): string[] {
  const folderOf = (path: string) => path.split("/")[0]!.replace(/\.ts$/, "");
  const own = folderOf(file);
  const isTest = file.endsWith(".test.ts") || own === "testing";
  const faults: string[] = [];
  if (!isTest && !layers.rank.has(own)) faults.push(`${file}: its folder stands in no layer`);
  for (const [, spec] of IMPORTS.flatMap((form) => [...text.matchAll(form)])) {
    if (!spec!.startsWith(".")) {
      if (!isTest && !PACKAGES.has(spec!)) faults.push(`${file}: core may not use the package ${spec}`);
      continue;
    }
    const target = join(dirname(file), spec!).split(sep).join("/");
    const to = folderOf(target);
    if (to === own) continue;
    if (to === "testing") {
      if (!isTest) faults.push(`${file}: only tests may import testing`);
      continue;
    }
    if (target.startsWith("..")) faults.push(`${file}: reaches outside core with ${spec}`);
    const door = target === `${to}.ts` || target === `${to}/index.ts`;
    if (!door) faults.push(`${file}: enters ${to} by ${spec} and not through its index.ts`);
    if (isTest) continue;
    const mine = layers.rank.get(own)!;
    const theirs = layers.rank.get(to);
    const allowed = theirs !== undefined && (theirs < mine || layers.also.has(`${own} > ${to}`));
    if (!allowed) faults.push(`${file}: ${own} may not import ${to}`);
  }
  return faults;
}

/** Checks a whole tree and fails if it saw fewer files than there are. */
export function checkTree(root: string, architecture: string): string[] {
  const layers = readLayers(architecture);
  const faults = layers.rank.size < 5 ? ["ARCHITECTURE.md: the layer table was not found"] : [];
  const all = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((name) => /\.tsx?$/.test(name));
  let seen = 0;
  for (const name of all) {
    const text = readFileSync(join(root, name), "utf8");
    if (text.length > 0) seen++;
    faults.push(...faultsOf(relative(root, join(root, name)).split(sep).join("/"), text, layers));
  }
  if (seen < all.length || seen === 0) faults.push(`saw ${seen} of ${all.length} files`);
  return faults;
}

if (process.argv[1]?.endsWith("check-imports.ts")) {
  const faults = checkTree("core/src", readFileSync("ARCHITECTURE.md", "utf8"));
  for (const fault of faults) console.error(fault);
  if (faults.length === 0) console.log("imports: every file of core keeps to its layer");
  process.exit(faults.length === 0 ? 0 : 1);
}
