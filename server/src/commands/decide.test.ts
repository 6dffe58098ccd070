import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, beforeAll, expect, test } from "vitest";
import { main } from "../program.ts";
import { ROOM } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-decide-"));
const DATA = join(folder, "room");
const fits = new Ajv2020({ strict: true }).compile(
  JSON.parse(readFileSync("docs/commands/decide.schema.json", "utf8")),
);
/** Two weeks into the plan; every command a minute later. */
let now = Date.UTC(2027, 0, 25, 12);
async function stave(...args: readonly string[]) {
  const [out, err]: [string[], string[]] = [[], []];
  now += 60_000;
  const io = {
    out: (text: string) => void out.push(text),
    err: (text: string) => void err.push(text),
    today: "2027-01-25",
    now,
  };
  const exit = await main(args, io, { clock: () => now, database: undefined, asked: () => Promise.resolve() });
  return { exit, out: out.join(""), err: err.join("") };
}
const waiting = async (): Promise<readonly string[]> => {
  const { result } = JSON.parse((await stave("morning", "--data", DATA, "--json")).out);
  return result.people.flatMap(({ items }: { items: { proposal: string }[] }) => items.map(({ proposal }) => proposal));
};

/** Two over the goal in the last set of two sessions running, for two people. */
const LOG = `date,person,movement,result,load
2027-01-11,dagny,seated-cable-row,14/14,10 kg
2027-01-21,dagny,seated-cable-row,14/14/14,10 kg
`;

beforeAll(async () => {
  const roster = ["--people", `${ROOM}/people.yaml`, "--places", `${ROOM}/places.yaml`, "--from", "2027-01-11"];
  const { exit } = await stave(
    ...["import", `${ROOM}/harbour-steps.yaml`, ...roster, "--person", "dagny", "--coach", "Imke", "--data", DATA],
  );
  expect(exit).toBe(0);
  writeFileSync(join(folder, "log.csv"), LOG);
  expect((await stave("record", join(folder, "log.csv"), "--data", DATA, "--take")).err).toBe("");
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("all that waits is taken at once, taken back, and refused by name", async () => {
  const before = await waiting();
  expect(before.length).toBeGreaterThan(0);
  const taken = await stave("decide", "--all", "--data", DATA, "--json");
  expect(taken.exit).toBe(0);
  const document = JSON.parse(taken.out);
  expect(fits(document), JSON.stringify(fits.errors)).toBe(true);
  const answers: { id: string; plan: string }[] = document.result.answers;
  expect(answers).toHaveLength(before.length);
  const after = await waiting();
  expect(before.filter((each) => after.includes(each))).toEqual([]);
  const undone = await stave("decide", ...answers.map(({ id }) => id), "--undo", "--data", DATA);
  expect(undone.out.split("\n").filter((line) => line.startsWith("taken back:"))).toHaveLength(answers.length);
  expect(await waiting()).toEqual(before);
  const refused = await stave("decide", before[0]!, "--refuse", "--data", DATA);
  expect(refused.out).toMatch(/^refused: /);
  expect(await waiting()).toEqual(before.slice(1));
}, 120_000);

test("a name that waits for nothing, and no name at all, decide nothing", async () => {
  const unknown = await stave("decide", "proposal-00000000", "--all", "--data", DATA);
  expect(unknown.exit).toBe(2);
  expect(unknown.err).toContain("Nothing of this name waits or was decided today");
  expect((await stave("decide", "--data", DATA)).err).toContain("Name what is decided, or say --all");
  expect((await stave("decide", "x", "--undo", "--data", DATA)).exit).toBe(2);
}, 60_000);

test("a table is taken back at the command line, and taken again", async () => {
  const log = join(folder, "log.csv");
  const back = await stave("record", log, "--data", DATA, "--undo");
  expect(back.exit).toBe(0);
  expect(back.out).toMatch(/\d+ events taken back/);
  expect(await waiting()).toEqual([]);
  expect((await stave("record", log, "--data", DATA, "--undo")).out).toContain("0 events taken back");
  expect((await stave("record", log, "--data", DATA, "--take")).out).toContain("Taken into");
}, 60_000);
