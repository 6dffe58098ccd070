import { readdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import type { Measure } from "./measure.ts";

const PAGE = "server/dist/pages/floor";
/** What a phone must read before it can draw; faces of type may come later and are not counted. */
const CODE = new Set([".js", ".css", ".html"]);

function gzippedKb(bytes: Uint8Array): number {
  return gzipSync(bytes, { level: 9 }).length / 1000;
}

/** The phone's page: its code, gzipped file by file, against the library that draws it, alone. */
export const floorScript: Measure = {
  name: "floor/script",
  async run() {
    const value = readdirSync(PAGE, { recursive: true, encoding: "utf8" })
      .filter((name) => CODE.has(extname(name)))
      .reduce((sum, name) => sum + gzippedKb(readFileSync(join(PAGE, name))), 0);
    const { outputFiles } = await build({
      stdin: { contents: 'export * from "preact"; export * from "preact/hooks";', resolveDir: "web" },
      bundle: true,
      minify: true,
      format: "esm",
      write: false,
    });
    const baselineValue = gzippedKb(outputFiles[0]!.contents);
    return {
      name: "floor/script",
      value,
      unit: "kB",
      baseline: "Preact with its hooks, alone",
      baselineValue,
      ratio: value / baselineValue,
      n: 1,
      aim: "at most 70 kB",
    };
  },
};
