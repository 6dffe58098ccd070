/** Bundles the program `stave` into files that plain Node runs, what few commands need apart, and the pages that it serves. */
import { chmodSync, cpSync, mkdirSync, readdirSync, rmSync } from "node:fs";
import { build } from "esbuild";
import { buildWeb } from "./build-web.mjs";

mkdirSync("server/dist", { recursive: true });
for (const name of readdirSync("server/dist")) if (/\.js(\.map)?$/.test(name)) rmSync(`server/dist/${name}`);
await build({
  entryPoints: {
    stave: "server/src/main.ts",
    typeset: "server/src/documents/sheet/typeset.ts",
    "fit-worker": "server/src/classes/fit-worker.ts",
  },
  outdir: "server/dist",
  bundle: true,
  splitting: true,
  platform: "node",
  format: "esm",
  target: "node20",
  sourcemap: true,
  logLevel: "warning",
  external: ["better-sqlite3", "pg", "@myriaddreamin/typst-ts-node-compiler"],
  banner: {
    js: 'import { createRequire as requireFrom } from "node:module"; const require = requireFrom(import.meta.url);',
  },
});
mkdirSync("server/dist/layouts", { recursive: true });
for (const name of readdirSync("server/src/documents/sheet").filter((each) => each.endsWith(".typ")))
  cpSync(`server/src/documents/sheet/${name}`, `server/dist/layouts/${name}`);
chmodSync("server/dist/stave.js", 0o755);
await buildWeb();
