import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PROGRAMME, ROOM, stave } from "../testing/run-stave.ts";

const PLACES = ["--places", `${ROOM}/places.yaml`];
const PEOPLE = ["--people", `${ROOM}/people.yaml`];

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "stave-check-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function found(...args: readonly string[]) {
  const { out, exit } = await stave("check", ...args, "--json");
  const { findings, result, problems } = JSON.parse(out);
  return { exit, findings, result, problems, checks: findings.map(({ check }: { check: string }) => check) };
}

describe("a programme checked for a place", () => {
  test("without one nothing is said of stations; where a first choice cannot be done it is, with a near form of the ladder", async () => {
    expect((await found(PROGRAMME)).checks).toEqual([]);
    expect((await found(PROGRAMME, ...PLACES, "--place", "ropewalk")).checks).toEqual([]);
    const { checks, findings, result } = await found(PROGRAMME, ...PLACES, "--place", "wren-home");
    expect(new Set(checks)).toEqual(new Set(["slot/not-served-here"]));
    expect(result[0]).toMatchObject({ programme: "harbour-steps", place: "wren-home" });
    const bridge = findings.find(({ data }: { data: { exercise: string } }) => data.exercise === "bench-bridge");
    expect(bridge.remedies.map(({ id }: { id: string }) => id)).toContain("take-near-name");
  });

  test("a file with one place needs no more; a pair that needs its only station twice warns there, and is a note anywhere", async () => {
    const places = join(folder, "cellar.yaml");
    writeFileSync(
      places,
      "stave: 1\nplaces:\n  - { id: cellar, name: The Cellar, zone: Europe/London, has: { cable: 1, pull-down machine: 1, row machine: 1 } }\n",
    );
    const pair = join(folder, "pair.yaml");
    writeFileSync(
      pair,
      readFileSync(PROGRAMME, "utf8").replace(
        /^ {8}work:\n/m,
        "$&          - pair:\n" +
          "              - { slot: one, pattern: upper isolation, first: press-down, dose: 2 × 12 }\n" +
          "              - { slot: two, pattern: upper isolation, first: cable-curl, dose: 2 × 10 }\n",
      ),
    );
    const station = ({ findings }: Awaited<ReturnType<typeof found>>) =>
      findings.filter(({ check }: { check: string }) => check === "session/one-station-twice");
    expect(station(await found(pair))).toMatchObject([{ severity: "note", data: { station: "cable", have: null } }]);
    const there = station(await found(pair, "--places", places));
    expect(there).toMatchObject([{ severity: "warn", data: { station: "cable", have: 1 } }]);
    writeFileSync(places, readFileSync(places, "utf8").replace("cable: 1", "cable: 2"));
    expect(station(await found(pair, "--places", places))).toEqual([]);
  });

  test("a remedy is carried out by the number it has at that place", async () => {
    const path = join(folder, "steps.yaml");
    writeFileSync(path, readFileSync(PROGRAMME));
    const at = [path, ...PLACES, "--place", "wren-home"];
    const before = await found(...at);
    const [first] = before.findings.filter(({ remedies }: { remedies: unknown[] }) => remedies.length > 0);
    const { exit, out } = await stave("check", ...at, "--apply", "1");
    expect(exit).toBe(0);
    expect(out).toContain(`at Wren's front room: ${before.findings.length - 1} findings`);
    const after = await found(...at);
    expect(after.findings.map(({ data }: { data: { slot: string } }) => data.slot)).not.toContain(first.data.slot);
  });
});

describe("a programme checked for a person", () => {
  test("their place, minutes and days count, and the words name them", async () => {
    const wren = [...PEOPLE, ...PLACES, "--person", "wren", "--from", "2027-01-11"];
    const { checks, result } = await found(PROGRAMME, ...wren);
    expect(result[0]).toMatchObject({ place: "wren-home", person: "wren", from: "2027-01-11" });
    const health = ["person/above-ceiling", "person/past-dose-limits"];
    expect(new Set(checks)).toEqual(new Set(["slot/not-served-here", "session/over-its-minutes", ...health]));
    const { out } = await stave("check", PROGRAMME, ...wren);
    expect(out).toMatch(/^Harbour steps \(.*\) for Wren Castellamor at Wren's front room: \d+ findings\n/);
    expect(new Set((await found(PROGRAMME, ...wren, "--place", "ropewalk")).checks)).toEqual(
      new Set(["session/over-its-minutes", ...health]),
    );
  });
});

test("from its day on a condition counts, and so does age; a day that is none is told", async () => {
  const maud = ["--people", `${ROOM}/bad-for-them-people.yaml`, ...PLACES, "--person", "maud"];
  const before = await found(`${ROOM}/bad-for-them.yaml`, ...maud, "--from", "2020-01-06");
  expect(before.checks).not.toContain("person/above-ceiling");
  expect(before.checks).not.toContain("person/balance-for-older");
  const now = await found(`${ROOM}/bad-for-them.yaml`, ...maud, "--from", "2027-01-11");
  expect(now.checks).toEqual(expect.arrayContaining(["person/above-ceiling", "person/balance-for-older"]));
  expect((await found(PROGRAMME, ...maud, "--from", "2027-02-29")).exit).toBe(2);
});

describe("what is missing is asked for", () => {
  test.each([
    [["--person", "wren"], "check/no-places"],
    [["--place", "ropewalk"], "check/no-places"],
    [PEOPLE, "check/no-places"],
    [[...PLACES, "--person", "wren"], "check/no-people"],
    [PLACES, "check/which-place"],
    [[...PLACES, ...PEOPLE], "check/which-person"],
    [[...PLACES, "--place", "roapwalk"], "check/no-such-place"],
    [[...PLACES, ...PEOPLE, "--person", "wern"], "person/unknown"],
    [["--places", "nowhere.yaml"], "file/missing"],
  ] as const)("%j: %s", async (args, code) => {
    const { exit, problems } = await found(PROGRAMME, ...args);
    expect(exit).toBe(2);
    expect(problems).toMatchObject([{ code }]);
    if (code.endsWith("no-such-place")) expect(problems[0].maybe).toBe("ropewalk");
  });
});
