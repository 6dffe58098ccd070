import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, beforeAll, expect, test } from "vitest";
import { main } from "../program.ts";
import { ROOM } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-next-"));
const DATA = join(folder, "room");
const fits = new Ajv2020({ strict: true }).compile(JSON.parse(readFileSync("docs/commands/next.schema.json", "utf8")));
/** Two weeks into the plan. */
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

/** Two over the goal in the last set of two sessions running, with the load that the plan asks. */
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
  const taken = await stave("record", join(folder, "log.csv"), "--data", DATA, "--take");
  expect(taken.err).toBe("");
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("tells the next dose of every slot in words, and the same as a document that fits its schema", async () => {
  const words = await stave("next", "--data", DATA, "--person", "dagny");
  expect(words.exit).toBe(0);
  expect(words.out).toContain("Dagny Thistlemere (dagny), Monday 25 January 2027");
  const { exit, out } = await stave("next", "--data", DATA, "--json");
  const said = JSON.parse(out);
  expect(fits(said), JSON.stringify(fits.errors?.slice(0, 2))).toBe(true);
  expect(exit).toBe(0);
  const [dagny] = said.result.people;
  const pressed = dagny.slots.find(({ kind }: { kind: string }) => kind === "up");
  expect(pressed).toMatchObject({ kind: "up", way: "reps then load" });
  expect(pressed.evidence[0]).toMatchObject({ code: "progress/two-for-two", data: { goal: 12, over: 2 } });
  expect(words.out).toContain("14 on Mon 11 Jan and 14 on Thu 21 Jan in the last set with 10 kg");
});

test("nobody of that name", async () => {
  const { exit, err } = await stave("next", "--data", DATA, "--person", "nobody");
  expect(exit).toBe(2);
  expect(err).toContain("Allowed: dagny.");
});

test.each([["next"], ["morning"], ["replay"], ["report", "dagny"]])(
  "%s: a folder without records is told, and none is made in it",
  async (...args) => {
    const nowhere = join(folder, "nowhere");
    const { exit, err } = await stave(...args, "--data", nowhere);
    expect(exit).toBe(2);
    expect(err).toContain("0 people are in this folder");
    expect(existsSync(nowhere)).toBe(false);
  },
);
