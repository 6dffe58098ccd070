import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, expect, test } from "vitest";
import { main } from "../program.ts";
import { ROOM } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-export-"));
const DATA = join(folder, "room");
const OUT = join(folder, "copies");
const NOW = Date.UTC(2027, 0, 25, 12);
async function stave(...args: readonly string[]) {
  const [out, err]: [string[], string[]] = [[], []];
  const io = {
    out: (text: string) => void out.push(text),
    err: (text: string) => void err.push(text),
    today: "2027-01-25",
    now: NOW,
  };
  const exit = await main(args, io, { clock: () => NOW, database: undefined, asked: () => Promise.resolve() });
  return { exit, out: out.join(""), err: err.join("") };
}

beforeAll(async () => {
  const roster = ["--people", `${ROOM}/people.yaml`, "--places", `${ROOM}/places.yaml`, "--from", "2027-01-11"];
  for (const [person, programme] of [
    ["dagny", `${ROOM}/harbour-steps.yaml`],
    ["kofi", `${ROOM}/slipway-strength.yaml`],
  ] as const)
    await stave("import", programme, ...roster, "--person", person, "--coach", "Imke", "--data", DATA);
  await stave("record", `${ROOM}/log.csv`, "--data", DATA, "--take", "--leave-asked");
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each(["kofi", "dagny"])("%s: the copy is read in again, and nothing in it is new or asked", async (person) => {
  const { exit, out } = await stave("export", person, "--data", DATA, "--out", OUT, "--json");
  expect(exit).toBe(0);
  const fits = new Ajv2020({ strict: true }).compile(
    JSON.parse(readFileSync("docs/commands/export.schema.json", "utf8")),
  );
  const said = JSON.parse(out);
  expect(fits(said), JSON.stringify(fits.errors?.slice(0, 2))).toBe(true);
  expect(said.result.events).toBeGreaterThan(5);
  const again = await stave(
    "record",
    join(OUT, person, "log.csv"),
    "--data",
    DATA,
    "--person",
    person,
    "--per",
    "each",
  );
  expect(again.out).toMatch(/ 0 new events of 0 people, \d+ lines? known already, 0 lines with a question/);
});

// unicode: a byte order mark in front, so that spreadsheets read every name; RFC 4180 otherwise.
test("the copy is of one person alone: facts, plan and every event, as tables and programs read them", async () => {
  await stave("export", "dagny", "--data", DATA, "--out", OUT);
  const text = readFileSync(join(OUT, "dagny", "log.csv"), "utf8");
  expect(text.startsWith("\uFEFF")).toBe(true);
  const rows = parse(text, { bom: true, columns: true }) as Record<string, string>[];
  expect(
    rows.filter(({ movement }) => movement === "sit-to-stand-arms-crossed" || movement !== "").length,
  ).toBeGreaterThan(2);
  const all = JSON.parse(readFileSync(join(OUT, "dagny", "all.json"), "utf8"));
  expect(Object.keys(all)).toEqual(["events", "facts", "place", "plan", "programme", "stave"]);
  expect(all.facts).toMatchObject({ id: "dagny", name: "Dagny Thistlemere" });
  expect(JSON.stringify(all)).not.toMatch(/kofi/i);
});

test("of nobody there is no copy, and a folder without records is told", async () => {
  expect(await stave("export", "nobody", "--data", DATA, "--out", OUT)).toMatchObject({ exit: 2 });
  expect(await stave("export", "dagny", "--data", join(folder, "empty"), "--out", OUT)).toMatchObject({ exit: 2 });
});
