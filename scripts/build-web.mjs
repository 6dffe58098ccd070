/**
 * Builds the two pages into `server/dist/pages/{floor,desk}`: an `index.html` that names hashed files below `assets/`,
 * so that everything but the `index.html` and the phone's service worker may be cached for ever.
 */
import { createHash } from "node:crypto";
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";

const OUT = "server/dist/pages";
/** The oldest browsers that are served: the first with `navigator.locks`, which the phone's sender needs, and dialogs. */
const TARGET = ["chrome89", "firefox98", "safari15.4"];

/** Address at which the server serves each app, whose elements its JSX makes, and files that are served as they are. */
const APPS = [
  { app: "floor", base: "/go/", jsxImportSource: "preact", asIs: ["manifest.webmanifest", "icon.svg"] },
  { app: "desk", base: "/", jsxImportSource: "react", asIs: [] },
];

/** @returns names of the written files, below `folder`, as addresses */
function filesOf(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.endsWith(".map"))
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll("\\", "/"),
    )
    .sort();
}

async function buildApp({ app, base, jsxImportSource, asIs }) {
  const folder = `${OUT}/${app}`;
  const { metafile } = await build({
    entryPoints: { [app]: `web/src/${app}/main.tsx` },
    outdir: `${folder}/assets`,
    entryNames: "[name]-[hash]",
    assetNames: "[name]-[hash]",
    publicPath: `${base}assets`,
    bundle: true,
    minify: true,
    format: "esm",
    target: TARGET,
    sourcemap: true,
    sourcesContent: false,
    jsx: "automatic",
    jsxImportSource,
    loader: { ".woff2": "file", ".svg": "file" },
    define: { "process.env.NODE_ENV": '"production"' },
    metafile: true,
    logLevel: "warning",
  });
  const [script, { cssBundle }] = Object.entries(metafile.outputs).find(
    ([, { entryPoint }]) => entryPoint !== undefined,
  );
  const address = (file) => base + file.slice(folder.length + 1);
  const page = readFileSync(`web/src/${app}/index.html`, "utf8")
    .replace("{{script}}", address(script))
    .replace("{{style}}", cssBundle === undefined ? "" : address(cssBundle));
  writeFileSync(`${folder}/index.html`, page);
  for (const file of asIs) cpSync(`web/src/${app}/${file}`, `${folder}/${file}`);
}

/** The phone's service worker knows every file of its page, and its version is what they hold. */
async function buildWorker() {
  const folder = `${OUT}/floor`;
  const files = filesOf(folder);
  const hash = createHash("sha256");
  for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
  await build({
    entryPoints: { sw: "web/src/floor/worker/sw.ts" },
    outdir: folder,
    bundle: true,
    minify: true,
    format: "iife",
    target: TARGET,
    define: { FILES: JSON.stringify(files), VERSION: JSON.stringify(hash.digest("hex").slice(0, 16)) },
    logLevel: "warning",
  });
}

/** Builds both pages afresh. */
export async function buildWeb() {
  rmSync(OUT, { recursive: true, force: true });
  for (const { app } of APPS) mkdirSync(`${OUT}/${app}`, { recursive: true });
  await Promise.all(APPS.map(buildApp));
  await buildWorker();
}
