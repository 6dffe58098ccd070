import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { OpenStoreError } from "./engine.ts";
import { openStore } from "./open-store.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-open-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("a file is one server's: a second is refused by any path to it, until the first has closed", async () => {
  const file = join(folder, "new", "stave.db");
  const first = await openStore(file);
  symlinkSync(file, join(folder, "other-name.db"));
  symlinkSync(join(folder, "new"), join(folder, "other-folder"));
  for (const path of [file, join(folder, "other-name.db"), join(folder, "other-folder", "stave.db")]) {
    await expect(openStore(path)).rejects.toThrow(OpenStoreError);
  }
  await first.close();
  await (await openStore(file)).close();
});

test("another process is refused too, and may still read the file", async () => {
  const file = join(folder, "two.db");
  const store = await openStore(file);
  await store.putDocument("p", "person", "ana", "Ana");
  const run = (code: string) =>
    execFileSync(process.execPath, ["--import", "tsx", "--input-type=module", "-e", code], {
      encoding: "utf8",
      stdio: ["ignore", "pipe", "pipe"],
    });
  const door = JSON.stringify(new URL("./open-store.ts", import.meta.url).href);
  const opening = `const { openStore } = await import(${door}); await openStore(${JSON.stringify(file)});`;
  expect(() => run(opening)).toThrow("in use by another Stave");
  const reading = `import Sqlite from "better-sqlite3";
    console.log(new Sqlite(${JSON.stringify(file)}, { readonly: true }).prepare("select body from document").pluck().get());`;
  expect(run(reading).trim()).toBe("Ana");
  await store.close();
});

test("a file that is no database is refused, and its lock is free again", async () => {
  const file = join(folder, "text.db");
  execFileSync("sh", ["-c", `yes programme | head -c 9000 > "${file}"`]);
  await expect(openStore(file)).rejects.toThrow("not a database");
  rmSync(file);
  await (await openStore(file)).close();
});
