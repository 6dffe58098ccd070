import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, beforeAll, expect, test } from "vitest";
import { main } from "../program.ts";
import { ROOM } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-record-"));
const DATA = join(folder, "room");
const LOG = `${ROOM}/log.csv`;
const fits = new Ajv2020({ strict: true }).compile(
  JSON.parse(readFileSync("docs/commands/record.schema.json", "utf8")),
);

/** Two weeks into the plans. */
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
const record = (file: string, ...more: readonly string[]) => stave("record", file, "--data", DATA, ...more);
async function document(file: string, ...more: readonly string[]) {
  const { exit, out } = await record(file, "--json", ...more);
  const said = JSON.parse(out);
  expect(fits(said), JSON.stringify(fits.errors?.slice(0, 2))).toBe(true);
  expect(said.ok).toBe(exit === 0);
  return said;
}

beforeAll(async () => {
  const programmes = ["harbour-steps", "slipway-strength"].map((name) => `${ROOM}/${name}.yaml`);
  const roster = ["--people", `${ROOM}/people.yaml`, "--places", `${ROOM}/places.yaml`, "--from", "2027-01-11"];
  for (const [person, programme] of [
    ["dagny", programmes[0]!],
    ["kofi", programmes[1]!],
  ] as const) {
    const { exit } = await stave("import", programme, ...roster, "--person", person, "--coach", "Imke", "--data", DATA);
    expect(exit).toBe(0);
  }
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("shows what was read as what, and asks; nothing is taken", async () => {
  const { exit, out, err } = await record(LOG);
  expect(exit).toBe(2);
  expect(out).toContain("line 7: “12/01/2027” read as Tuesday 12 January 2027.");
  expect(out).toContain("line 13: “20/20” read as seconds, since this is held.");
  expect(err).toContain("log.csv, line 12");
  expect(err).toContain("Maybe: 10/12 or 12/10.");
  expect(out).toContain("Nothing was taken yet");
  expect((await document(LOG)).result.taken).toBe(false);
});

test("with --take nothing is taken while a question is open; what is left out is said; taken twice adds nothing", async () => {
  expect(await document(LOG, "--take")).toMatchObject({ ok: false, result: { taken: false } });
  const first = await document(LOG, "--take", "--leave-asked");
  expect(first).toMatchObject({ ok: true, result: { taken: true } });
  expect(first.result.left.map(({ line }: { line: number }) => line)).toEqual(
    first.result.rows.filter(({ asked }: { asked: number }) => asked > 0).map(({ line }: { line: number }) => line),
  );
  expect(first.result.people.map(({ person }: { person: string }) => person).sort()).toEqual(["dagny", "kofi"]);
  const again = await document(LOG, "--take", "--leave-asked");
  expect(again.result.people).toEqual([]);
  expect(again.result.rows.every(({ fresh }: { fresh: number }) => fresh === 0)).toBe(true);
});

test("stave morning tells what the records call for, from the folder alone, by its published shape", async () => {
  const { exit, out } = await stave("morning", "--data", DATA);
  expect(exit).toBe(0);
  expect(out).toMatch(/^Monday 25 January 2027: /);
  expect(out).toMatch(
    /Kofi Amblenwe: 17:30, .*\n( {2}.*\n)* {2}- \d+ days without a record; \d sessions were planned\./,
  );
  const json = JSON.parse((await stave("morning", "--data", DATA, "--json")).out);
  const shape = new Ajv2020({ strict: true }).compile(
    JSON.parse(readFileSync("docs/commands/morning.schema.json", "utf8")),
  );
  expect(shape(json), JSON.stringify(shape.errors?.slice(0, 2))).toBe(true);
  const kofi = json.result.people.find(({ person }: { person: string }) => person === "kofi");
  expect(kofi.notes.map(({ code }: { code: string }) => code)).toContain("watch/silent");
  expect(kofi.figures.map(({ code }: { code: string }) => code)).toContain("watch/adherence");
});

test("stave report: data by its published shape, a PDF where a folder is named, and nobody unknown", async () => {
  const out = join(folder, "reports");
  const json = JSON.parse(
    (await stave("report", "dagny", "--data", DATA, "--for", "clinician", "--out", out, "--json")).out,
  );
  const shape = new Ajv2020({ strict: true }).compile(
    JSON.parse(readFileSync("docs/commands/report.schema.json", "utf8")),
  );
  expect(shape(json), JSON.stringify(shape.errors?.slice(0, 2))).toBe(true);
  expect(json.result.report.parts.map(({ heading }: { heading: string }) => heading)).toContain("Pain that was noted");
  expect(readFileSync(json.result.files[0].path).subarray(0, 5).toString()).toBe("%PDF-");
  const words = (await stave("report", "dagny", "--data", DATA)).out;
  expect(words).toMatch(/^Dagny T\.: what has changed\n/);
  expect(await stave("report", "nobody", "--data", DATA)).toMatchObject({ exit: 2 });
});

test("a table in another page of codes, of nobody, or of somebody unknown", async () => {
  const latin = join(folder, "latin.csv");
  writeFileSync(latin, Buffer.from("person;day\nM\u00fcller;2027-01-11\n", "latin1"));
  expect((await record(latin)).err).toContain("not UTF-8");
  expect((await record(LOG, "--person", "nobody")).err).toContain("dagny, kofi");
  expect((await stave("record", LOG, "--data", join(folder, "empty"))).err).toContain("stave import");
});
