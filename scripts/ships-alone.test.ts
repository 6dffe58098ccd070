import { build } from "esbuild";
import { expect, test } from "vitest";

/** Bytes of a bundle, and the files of the catalogue whose text is in it. */
async function bundled(contents: string) {
  const built = await build({
    stdin: { contents, resolveDir: process.cwd() },
    bundle: true,
    write: false,
    format: "esm",
    metafile: true,
  });
  const [output] = Object.values(built.metafile.outputs);
  const files = Object.entries(output!.inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
  const entries = files.map(([path]) => path).filter((path) => /exercises\/(ladders\/)?[a-z-]+\.ts$/.test(path));
  return { bytes: output!.bytes, entries };
}

test("who only walks ladders or judges gates ships no exercise", async () => {
  const { bytes, entries } = await bundled(
    'import { distance, gateOf, nearExercises } from "@stave/core/exercises"; console.log(distance, gateOf, nearExercises);',
  );
  expect(entries.map((path) => path.split("/").at(-1)).sort()).toEqual(["gate.ts", "ladder.ts", "near-names.ts"]);
  expect(bytes).toBeLessThan(12_000);
});

test("who asks for the catalogue ships it whole", async () => {
  const { bytes, entries } = await bundled(
    'import { CATALOGUE } from "@stave/core/exercises"; console.log(CATALOGUE);',
  );
  expect(entries.length).toBeGreaterThan(40);
  expect(bytes).toBeGreaterThan(200_000);
});
