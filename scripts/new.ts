/** Writes the files of a new unit and its index line: `npm run new -- check week/rest-too-long`. */
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";

interface Files {
  readonly unit: string;
  readonly test: string;
}

interface Kind {
  readonly folder: string;
  readonly files: (id: string, name: string) => Files;
  /** Where units are listed, and how one is added; the folder's index and a line at its end when left out. */
  readonly indexFile?: string;
  readonly index?: (text: string, name: string) => string;
}

function camel(name: string): string {
  return name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}

/** What a new unit of each kind begins as: it compiles, and its test fails until the unit says something. */
const KINDS: Readonly<Record<string, Kind>> = {
  check: {
    folder: "core/src/checks",
    files: (id, name) => ({
      unit: `import type { Check } from "./run/check.ts";\n\nexport const ${camel(name)}: Check<"${id}"> = {\n  id: "${id}",\n  severity: "warn",\n  sources: ["practice"],\n  run: () => [],\n};\n`,
      test: `import { expect, test } from "vitest";\nimport { testCheck } from "../testing/index.ts";\nimport { ${camel(name)} } from "./${name}.ts";\n\ntestCheck(${camel(name)}, { fine: {}, bad: {} });\ntest("it finds something", () => expect.fail("nothing is written yet"));\n`,
    }),
    index: (text, name) =>
      text
        .replace("\n\n/**", `\nimport { ${camel(name)} } from "../${name}.ts";\n\n/**`)
        .replace("] as const", `  ${camel(name)},\n] as const`),
    indexFile: "core/src/checks/run/all.ts",
  },
  equation: {
    folder: "core/src/equations",
    files: (_, name) => ({
      unit: `/**\n * What it answers, in a coach's words.\n *\n *   formula\n *\n * @returns unit and rounding\n * @throws RangeError outside its population\n * @source\n */\nexport function ${camel(name)}(): never {\n  throw new RangeError("Cannot estimate as nothing is written yet");\n}\n`,
      test: `import { published } from "../testing/index.ts";\nimport { ${camel(name)} } from "./${name}.ts";\n\npublished("ours", "${name}", [["printed", "table", ${camel(name)}, 0, 0]]);\n`,
    }),
  },
  table: {
    folder: "core/src/tables",
    files: (_, name) => ({
      unit: `import type { SourceId } from "../sources.ts";\n\n/** As printed; a row that is not there has no answer. */\nexport const ${camel(name).toUpperCase()}: { readonly source: SourceId; readonly rows: readonly number[] } = {\n  source: "ours",\n  rows: [],\n};\n`,
      test: `import { expect, test } from "vitest";\nimport { ${camel(name).toUpperCase()} } from "./${name}.ts";\n\ntest("the copy is complete", () => expect(${camel(name).toUpperCase()}.rows.length).toBeGreaterThan(0));\n`,
    }),
  },
};

function main([kind, id]: readonly string[]): string | undefined {
  const recipe = KINDS[kind ?? ""];
  if (recipe === undefined) return `Name a kind: ${Object.keys(KINDS).join(", ")}`;
  if (id === undefined || !/^(?:[a-z]+\/)?[a-z][a-z0-9-]*$/.test(id))
    return "Name the unit in small letters: rest-too-long, or week/rest-too-long for a check";
  const name = id.split("/").at(-1)!;
  const path = `${recipe.folder}/${name}.ts`;
  if (existsSync(path)) return `${path} is there already`;
  const { unit, test } = recipe.files(id, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, unit);
  writeFileSync(path.replace(/\.ts$/, ".test.ts"), test);
  const index = recipe.indexFile ?? `${recipe.folder}/index.ts`;
  const added = recipe.index ?? ((text: string) => `${text}export * from "./${name}.ts";\n`);
  writeFileSync(index, added(readFileSync(index, "utf8"), name));
  const files = [path, path.replace(/\.ts$/, ".test.ts"), index];
  execFileSync("npx", ["biome", "check", "--write", ...files], { stdio: "ignore" });
  console.log(`wrote ${path}, its test and a line of ${index}`);
  return undefined;
}

const fault = main(process.argv.slice(2));
if (fault !== undefined) {
  console.error(fault);
  process.exit(2);
}
