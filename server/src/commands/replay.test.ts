import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { main } from "../program.ts";
import { ROOM } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-replay-"));
const DATA = join(folder, "room");
const RULE = `${ROOM}/rule-three-over.yaml`;
const fits = new Ajv2020({ strict: true }).compile(
  JSON.parse(readFileSync("docs/commands/replay.schema.json", "utf8")),
);
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
async function documentOf(...args: readonly string[]) {
  const { out } = await stave("replay", ...args, "--data", DATA, "--json");
  const said = JSON.parse(out);
  expect(fits(said), JSON.stringify(fits.errors?.slice(0, 2))).toBe(true);
  return said;
}

const LOG = `date,person,movement,result,load
2027-01-11,dagny,seated-cable-row,14/14,10 kg
2027-01-21,dagny,seated-cable-row,14/14/14,10 kg
`;

beforeAll(async () => {
  const roster = ["--people", `${ROOM}/people.yaml`, "--places", `${ROOM}/places.yaml`, "--from", "2027-01-11"];
  const imported = await stave(
    ...["import", `${ROOM}/harbour-steps.yaml`, ...roster, "--person", "dagny", "--coach", "Imke", "--data", DATA],
  );
  expect(imported.exit).toBe(0);
  writeFileSync(join(folder, "log.csv"), LOG);
  const taken = await stave("record", join(folder, "log.csv"), "--data", DATA, "--take");
  expect(taken.err).toBe("");
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("stave replay", () => {
  test("a rule that asks for one session would have gone up before the second; the plain one says so now at most", async () => {
    const { result } = await documentOf(RULE);
    expect(result.rule.rule).toBe("three-over");
    expect(result.differed).toMatchObject([{ ruled: "up", decided: "same", occasions: 1 }]);
    expect(result.occasions).toMatchObject([{ person: "dagny", on: "2027-01-21", outcome: "done", counts: true }]);
    const plain = (await documentOf()).result;
    expect([plain.rule.rule, plain.differed]).toEqual(["two-for-two", []]);
    expect(plain.agreed).toMatchObject([{ ruled: "same", decided: "same", done: { value: 1, n: 1 } }]);
  });
  test("in words: what was seen, what was not, and that a record cannot tell the rest", async () => {
    const { exit, out } = await stave("replay", RULE, "--data", DATA, "--person", "dagny");
    expect(exit).toBe(0);
    expect(out).toContain("What the rule would have led to was not seen.");
    expect(out).toContain("Thursday 21 January 2027, after 10 kg: the rule a load more; asked 10 kg, done as asked");
    expect(out).toContain("It cannot tell what would have come of anything else.");
  });
  test.each<[name: string, args: readonly string[], code: string]>([
    ["no such file", ["none.yaml"], "file/missing"],
    ["a programme as a rule", [`${ROOM}/harbour-steps.yaml`], "key/unknown"],
    ["nobody of that name", ["--person", "dagni"], "person/unknown"],
  ])("%s", async (_, args, code) => {
    const { ok, result, problems } = await documentOf(...args);
    expect([ok, result]).toEqual([false, null]);
    expect(problems.map((each: { code: string }) => each.code)).toContain(code);
  });
});
