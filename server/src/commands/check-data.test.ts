import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { main } from "../program.ts";
import { ROOM } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-check-data-"));
const DATA = join(folder, "room");
const NEXT = `${ROOM}/slipway-strength.yaml`;
const ROSTER = ["--people", `${ROOM}/people.yaml`, "--places", `${ROOM}/places.yaml`];
const NOW = Date.UTC(2027, 1, 20, 12);

async function stave(...args: readonly string[]) {
  const [out, err]: [string[], string[]] = [[], []];
  const io = {
    out: (text: string) => void out.push(text),
    err: (text: string) => void err.push(text),
    today: "2027-02-20",
    now: NOW,
  };
  const exit = await main(args, io, { clock: () => NOW, database: undefined, asked: () => Promise.resolve() });
  return { exit, out: out.join(""), err: err.join("") };
}

async function comebacks(from: string, ...more: readonly string[]) {
  const { out } = await stave("check", NEXT, "--data", DATA, "--person", "dagny", "--from", from, ...more, "--json");
  const { findings, result, problems } = JSON.parse(out);
  expect(problems).toEqual([]);
  expect(result[0]).toMatchObject({ person: "dagny", from });
  return findings.filter(({ check }: { check: string }) => check === "person/comeback-sets");
}

/** Two weeks of rows, the last of them on 18 January. */
const LOG = `date,person,movement,result,load
2027-01-11,dagny,seated-cable-row,10/10/10,10 kg
2027-01-18,dagny,seated-cable-row,10/10/10,10 kg
`;

beforeAll(async () => {
  const programme = `${ROOM}/harbour-steps.yaml`;
  const who = [...ROSTER, "--from", "2027-01-11", "--person", "dagny", "--coach", "Imke", "--data", DATA];
  expect((await stave("import", programme, ...who)).exit).toBe(0);
  writeFileSync(join(folder, "log.csv"), LOG);
  expect((await stave("record", join(folder, "log.csv"), "--data", DATA, "--take")).exit).toBe(0);
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// After 2–3 weeks off half to two thirds of the sets: common practice, no source. 20 % in about four weeks: iusca2021.
test("a programme is judged by the weeks that the records of a folder tell, with the days off told to the day", async () => {
  const [found, ...more] = await comebacks("2027-02-15");
  expect(more).toEqual([]);
  expect(found.data).toMatchObject({ side: "comeback", daysOff: 27, percent: 67 });
  const muscles = found.data.muscles.map(({ muscle }: { muscle: string }) => muscle);
  expect(muscles).toContain("lats");
  expect(muscles).not.toContain("front thigh");
});

test("its neighbours: the week after, the usual and a fifth more; five weeks after, half; before any record, nothing", async () => {
  expect((await comebacks("2027-01-25"))[0]?.data).toMatchObject({ side: "more than usual", percent: 120, daysOff: 6 });
  expect((await comebacks("2027-03-01"))[0].data).toMatchObject({ side: "comeback", percent: 50, daysOff: 41 });
  expect(await comebacks("2027-01-11")).toEqual([]);
});

test("with a roster the person is read from there, and their record from the folder", async () => {
  expect((await comebacks("2027-02-15", ...ROSTER))[0].data).toMatchObject({ daysOff: 27 });
  const without = await stave("check", NEXT, ...ROSTER, "--person", "dagny", "--from", "2027-02-15", "--json");
  expect(without.out).not.toContain("person/comeback-sets");
});

test("nobody of that name, and no folder", async () => {
  const unknown = await stave("check", NEXT, "--data", DATA, "--person", "dagney");
  expect(unknown).toMatchObject({ exit: 2 });
  expect(unknown.err).toContain("dagny");
  expect((await stave("check", NEXT, "--data", join(folder, "nowhere"), "--person", "dagny")).exit).toBe(2);
});
