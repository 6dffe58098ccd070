/** Bundles the program `stave` into one file that plain Node runs, and the pages that it serves. */
import { chmodSync, cpSync, mkdirSync } from "node:fs";
import { build } from "esbuild";
import { buildWeb } from "./build-web.mjs";

await build({
  entryPoints: { stave: "server/src/main.ts", typeset: "server/src/documents/sheet/typeset.ts" },
  outdir: "server/dist",
  bundle: true,
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
cpSync("server/src/documents/sheet/sheet.typ", "server/dist/layouts/sheet.typ");
chmodSync("server/dist/stave.js", 0o755);
await buildWeb();
