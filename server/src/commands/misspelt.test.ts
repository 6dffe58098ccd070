import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { PEOPLE, PROGRAMME, ROOM, stave } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-misspelt-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function changed(file: string, from: string, to: string): string {
  const text = readFileSync(file, "utf8");
  expect(text).toContain(from);
  const path = join(folder, file.split("/").at(-1)!);
  writeFileSync(path, text.replace(from, to));
  return path;
}

test("a first choice that nobody knows is told with its line and what was meant, and no other form is put in its place", async () => {
  const file = changed(PROGRAMME, "first: goblet-squat", "first: goblet-sqaut");
  const { exit, err } = await stave("fit", file, ...PEOPLE, "--person", "dagny");
  expect(exit).toBe(2);
  expect(err).toMatch(/line \d+, column \d+: The catalogue has no such exercise.*goblet-sqaut.*Maybe: .*goblet-squat/);
});

test("neither is a lift of the roster passed over because its name slipped", async () => {
  const file = changed(`${ROOM}/people.yaml`, "exercise: ", "exercise: x-");
  const { exit, err } = await stave("fit", PROGRAMME, "--people", file, "--places", `${ROOM}/places.yaml`);
  expect(exit).toBe(2);
  expect(err).toMatch(/line \d+, column \d+: .*Found: x-/);
});
