import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PEOPLE, PROGRAMME, ROOM, stave } from "./testing/run-stave.ts";

const STAVE = "server/dist/stave.js";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "stave-program-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function write(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

const GOOD = `stave: 1
id: trial
title: Trial
version: 1
goal: general
status: novice
units: kg
phases:
  - key: ground
    title: Ground
    weeks: 2
    sessions:
      - key: a
        title: A
        minutes: 45
        work:
          - slot: squat-a
            pattern: squat
            first: body-squat
            dose: 3 × 8–10, rest 90 s
`;

describe("bad input ends with status 2, its place, and nothing written", () => {
  const bombs = Array.from(
    { length: 9 },
    (_, n) => `a${n + 1}: &a${n + 1} [${Array(9).fill(`*a${n}`).join(", ")}]`,
  ).join("\n");
  test.each<[name: string, content: string | Uint8Array, line: number, says: RegExp]>([
    ["an empty file", "", 1, /0 lines/],
    ["only comments", "# later\n", 1, /0 lines that are not comments/],
    ["tabs", GOOD.replace("    title: Ground", "\ttitle: Ground"), 10, /tab/i],
    ["the same key twice", GOOD.replace("title: Trial", "title: Trial\ntitle: Again"), 4, /twice/],
    ["an alias bomb", `a0: &a0 [x]\n${bombs}\n${GOOD}`, 1, /&/],
    ["012", GOOD.replace("version: 1", "version: 012"), 4, /012/],
    ["reps from more to less", GOOD.replace("8–10", "12-8"), 20, /12-8.*8–12|12–8/s],
    ["not a number", GOOD.replace("minutes: 45", "minutes: .nan"), 15, /nan/i],
    ["a thousand million reps", GOOD.replace("8–10", "1000000000"), 20, /1000000000/],
    ["an unknown key", GOOD.replace("minutes: 45", "minuts: 45"), 15, /minutes/],
    ["bytes that are no text", Uint8Array.from([0x73, 0xff, 0xfe, 0x00]), 0, /not text/],
    ["five million bytes", `# ${"x".repeat(5_000_000)}\n${GOOD}`, 0, /too large/],
  ])("%s", async (name, content, line, says) => {
    const path = write(`${name.replace(/\W/g, "-")}.yaml`, content);
    const { exit, out, err } = await stave("check", path);
    expect(exit).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(says);
    expect(err).toContain(path);
    if (line > 0) expect(err).toContain(`line ${line},`);
    const json = JSON.parse((await stave("check", path, "--json")).out);
    expect(json).toMatchObject({ stave: 1, command: "check", ok: false, result: null });
    expect(json.problems[0]).toMatchObject({ file: path });
  });

  test("a folder, and a file that is not there", async () => {
    expect(await stave("check", folder)).toMatchObject({ exit: 2, err: expect.stringMatching(/folder/) });
    expect(await stave("check", join(folder, "none.yaml"))).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/no such file/i),
    });
  });

  test("all problems of all files at once", async () => {
    const one = write("one.yaml", GOOD.replace("8–10", "12-8").replace("minutes: 45", "minutes: 4500"));
    const { err } = await stave("check", one, join(folder, "none.yaml"));
    expect(err.trim().split("\n")).toHaveLength(3);
  });

  const person = (more: string) =>
    `stave: 1\npeople:\n  - id: ada\n    name: Ada Example\n    born: 1990-05-01\n    status: novice\n    units: kg\n    place: hut\n    minutes: 45\n${more}`;
  const hut = (more: string) => `stave: 1\nplaces:\n  - id: hut\n    name: Hut\n    zone: Europe/London\n${more}`;
  const windows = "    windows: [mon 17:00–19:00]\n";
  const fit = (people: string, places: string, programme = GOOD) =>
    stave(
      "fit",
      write("p.yaml", programme),
      "--people",
      write("people.yaml", people),
      "--places",
      write("places.yaml", places),
      "--from",
      "2027-01-11",
      "--out",
      join(folder, "out-bad"),
    );

  test("a person with no day", async () => {
    const { exit, err } = await fit(person(""), hut(""));
    expect(exit).toBe(2);
    expect(err).toMatch(/people\.yaml, line 3, column 5: 0 days/);
    expect(existsSync(join(folder, "out-bad"))).toBe(false);
  });

  test("no equipment at all: nothing can be filled, and the person is named with the place in the roster", async () => {
    const nothing = hut("    lacks: [floor, wall, chair, step, counter, towel, bag, stairs, way to walk]\n");
    const hinge = GOOD.replace("squat-a", "push-a")
      .replace("pattern: squat", "pattern: vertical pull")
      .replace("body-squat", "lat-pull-down");
    const { exit, err, out } = await fit(person(windows), nothing, hinge);
    expect(exit).toBe(2);
    expect(err).toMatch(/people\.yaml, line 3.*Ada Example/);
    expect(out).toMatch(/Left open/);
  });

  test("every form withheld: the slot is left open with its reason", async () => {
    const cautions = `${windows}    cautions:\n      - { statement: surgery-leg, from: 2026-12-01, recheck: 2027-06-01, who: Dr Example }\n`;
    const { exit, out } = await fit(person(cautions), hut(""));
    expect(exit).toBe(2);
    expect(out).toMatch(/Left open: of \d+ forms for squat none may be offered here/);
  });

  test("every form withheld: days, sheet and calendar say the same and do not stop in a fault", async () => {
    const cautions = `${windows}    cautions:\n      - { statement: surgery-leg, from: 2026-12-01, recheck: 2027-06-01, who: Dr Example }\n    screening: { outcome: no reason found, on: 2026-12-01, until: 2027-12-01, by: Coach }\n`;
    const files = ["--people", write("people.yaml", person(cautions)), "--places", write("places.yaml", hut(""))];
    const from = ["--from", "2027-01-11"];
    for (const command of ["schedule", "sheet", "calendar"]) {
      const out = command === "schedule" ? [] : ["--out", join(folder, `withheld-${command}`)];
      expect(await stave(command, write("p.yaml", GOOD), ...files, ...from, ...out)).toMatchObject({
        exit: 2,
        err: expect.stringMatching(/people\.yaml, line 3, .*0 slots could be filled.*Ada Example/),
      });
    }
  });

  test("a programme for nobody", async () => {
    const other = person(`${windows}    programme: another\n`);
    expect(await fit(other, hut(""))).toMatchObject({ exit: 2, err: expect.stringMatching(/p\.yaml.*trial/s) });
  });

  test("a zone that nobody knows, a person that is not there, a date that does not exist", async () => {
    expect((await fit(person(windows), hut("").replace("Europe/London", "Europe/Londn"))).err).toMatch(
      /places\.yaml, line 5.*time zone/,
    );
    expect(await stave("fit", PROGRAMME, ...PEOPLE, "--person", "dagni")).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/dagny/),
    });
    expect(await stave("fit", PROGRAMME, ...PEOPLE.slice(0, 4), "--from", "2027-02-29")).toMatchObject({ exit: 2 });
  });

  test("what is missing is named", async () => {
    const { err } = await stave("check", write("no-goal.yaml", GOOD.replace("goal: general\n", "")));
    expect(err).toMatch(/no-goal\.yaml, line 1, column 1: “goal” is missing here\. Allowed: general, strength/);
  });

  test("a roster of nobody, the same programme twice, a day beyond all years", async () => {
    expect(await fit("stave: 1\npeople: []\n", hut(""))).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/people\.yaml: 0 people in the roster/),
    });
    expect(await stave("fit", PROGRAMME, PROGRAMME, ...PEOPLE)).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/harbour-steps\.yaml, line \d+, column \d+: This programme is named twice/),
    });
    expect(await stave("fit", PROGRAMME, ...PEOPLE.slice(0, 4), "--from", "9999-12-31")).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/--from: A year out of range\. .*1900–2199/),
    });
  });

  test("schedule of a programme for nobody; but somebody else's programme beside one's own is nothing wrong", async () => {
    const other = person(`${windows}    programme: another\n`);
    const files = ["--people", write("people.yaml", other), "--places", write("places.yaml", hut(""))];
    expect(await stave("schedule", write("p.yaml", GOOD), ...files)).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/p\.yaml, line 2, column 5: 0 people follow this programme.*trial/s),
    });
    const both = [PROGRAMME, `${ROOM}/slipway-strength.yaml`];
    expect(await stave("fit", ...both, ...PEOPLE, "--person", "dagny")).toMatchObject({ exit: 0 });
  });

  test("a pipe that nobody writes to is not waited for", async () => {
    const pipe = join(folder, "pipe.yaml");
    execFileSync("mkfifo", [pipe]);
    expect(await stave("check", pipe)).toMatchObject({ exit: 2, err: expect.stringMatching(/not a plain file/) });
  });

  test("an unknown flag and a missing option", async () => {
    expect(await stave("check", PROGRAMME, "--jsn")).toMatchObject({ exit: 2, err: expect.stringMatching(/--json/) });
    expect(await stave("fit", PROGRAMME)).toMatchObject({ exit: 2, err: expect.stringMatching(/--people/) });
  });

  test("a full disk: status 2, and nothing is half-written", () => {
    const out = join(folder, "full");
    const command = `trap '' XFSZ; ulimit -f 8; exec "${process.execPath}" ${STAVE} fit ${PROGRAMME} ${PEOPLE.join(" ")} --person dagny --out "${out}"`;
    const ran = spawnSync("bash", ["-c", command], { encoding: "utf8" });
    expect(ran.stderr).toMatch(/disk is full/);
    expect(ran.status).toBe(2);
    expect(existsSync(out)).toBe(false);
  });

  test("a file where the folder should be", async () => {
    const path = write("in-the-way", "here");
    expect(await stave("fit", PROGRAMME, ...PEOPLE, "--person", "dagny", "--out", path)).toMatchObject({
      exit: 2,
      err: expect.stringMatching(/folder/),
    });
    expect(readFileSync(path, "utf8")).toBe("here");
  });
});
