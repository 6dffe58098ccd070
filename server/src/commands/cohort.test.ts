import { spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stave } from "../testing/run-stave.ts";

const folder = mkdtempSync(join(tmpdir(), "stave-cohort-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const path = (name: string) => join(folder, name);

/** A programme that is fitted in no time, two places, and a few people. */
const FILES = {
  "short.yaml": `stave: 1
id: short
title: Short
version: 1
goal: general
status: novice
units: kg
phases:
  - key: one
    title: One
    weeks: 2
    sessions:
      - key: a
        title: A
        minutes: 40
        work:
          - { slot: squat, pattern: squat, first: goblet-squat, dose: "2 × 8, rest 60 s" }
          - { slot: push, pattern: horizontal push, first: floor-push-up, dose: "2 × 8, rest 60 s" }
`,
  "places.yaml": `stave: 1
places:
  - { id: home, name: Home, zone: Europe/London }
  - { id: gym, name: Gym, zone: Europe/London, has: { bench: 1 }, dumbbells: { pairs: [2–20 kg by 2] } }
`,
} as const;
const HEADER = "id,born,status,place,minutes,days,squat";
const LINES = [
  "ann,1990-05-14,novice,home,35,2,",
  "bo,1971-01-02,novice,home,35,2,",
  "cy,1971-01-02,novice,home,60,1,",
  "di,2000-12-31,novice,gym,60,2,goblet-squat",
  "ed,2000-12-31,intermediate,gym,60,2,",
  "fay,1960-02-29,novice,home,10,2,",
];

beforeAll(() => {
  for (const [name, text] of Object.entries(FILES)) writeFileSync(path(name), text);
  writeFileSync(path("people.csv"), `${[HEADER, ...LINES].join("\n")}\n`);
});

function args(out: string, people = "people.csv", ...more: readonly string[]): readonly string[] {
  const files = [path("short.yaml"), "--people", path(people), "--places", path("places.yaml")];
  return ["cohort", ...files, "--from", "2027-01-11", "--out", path(out), ...more];
}

/** Everything that a run wrote, by name. */
function written(out: string): Readonly<Record<string, string>> {
  const names = readdirSync(path(out), { recursive: true, withFileTypes: true }).filter((each) => each.isFile());
  return Object.fromEntries(names.map((each) => [each.name, readFileSync(join(each.parentPath, each.name), "utf8")]));
}

const table = (text: string): Record<string, string>[] => parse(text, { columns: true });

test("people whom the programme cannot tell apart have one plan; the lists say whose it is and what it is like", async () => {
  const { exit, out } = await stave(...args("plain", "people.csv", "--workers", "1", "--json"));
  expect(exit).toBe(0);
  const { result } = JSON.parse(out);
  expect(result).toMatchObject({
    people: { fitted: 6, unread: 0 },
    classes: { all: 5, alreadyThere: 0, unproven: 0 },
  });
  const files = written("plain");
  const people = table(files["people.csv"]!);
  expect(people.map(({ person }) => person)).toEqual(["ann", "bo", "cy", "di", "ed", "fay"]);
  const [ann, bo, cy, di] = people.map(({ plan }) => plan!);
  expect(bo).toBe(ann);
  // One session a phase: a third day and more minutes than it takes are nothing that the programme can see.
  expect(cy).not.toBe(di);
  const classes = table(files["classes.csv"]!);
  expect(classes.reduce((sum, each) => sum + Number(each["people"]), 0)).toBe(6);
  expect(classes.map(({ plan }) => plan)).toEqual(classes.map(({ plan }) => plan).toSorted());
  for (const { plan, slots, open } of classes) {
    const whole = JSON.parse(files[`${plan}.json`]!);
    const [session] = whole.phases[0].weeks[0].sessions;
    expect([session.blocks.length, session.open.length].map(String)).toEqual([slots, open]);
  }
});

test("the plan of a class is that of each of its people, as stave fit gives it", async () => {
  const roster = `stave: 1
people:
  - { id: di, name: Di, born: 2000-12-31, status: novice, units: lb, place: gym, minutes: 60, windows: any 2 of 7 days 00:00–24:00, rungs: { squat: goblet-squat } }
`;
  writeFileSync(path("di.yaml"), roster);
  await stave(...args("plain", "people.csv", "--workers", "1"));
  const files = written("plain");
  const { plan } = table(files["people.csv"]!).find(({ person }) => person === "di")!;
  const fitted = await stave(
    ...["fit", path("short.yaml"), "--people", path("di.yaml"), "--places", path("places.yaml")],
    ...["--from", "2027-01-11", "--json"],
  );
  const [alone] = JSON.parse(fitted.out).result.plans;
  const ofClass = JSON.parse(files[`${plan}.json`]!);
  expect(ofClass.phases).toEqual(alone.phases);
  expect(ofClass.notes).toEqual(alone.notes);
  const byRoster = await stave(...args("roster", "di.yaml", "--workers", "1", "--json"));
  expect(JSON.parse(byRoster.out).result.people.fitted).toBe(1);
  expect(written("roster")[`${plan}.json`]).toBe(files[`${plan}.json`]);
});

test("the number of threads and the order of the lines do not show", async () => {
  writeFileSync(path("turned.csv"), `${[HEADER, ...LINES.toReversed()].join("\r\n")}\r\n`);
  await stave(...args("one", "people.csv", "--workers", "1"));
  await stave(...args("three", "turned.csv", "--workers", "3"));
  const [one, three] = [written("one"), written("three")];
  expect(table(three["people.csv"]!)).toEqual(table(one["people.csv"]!).toReversed());
  expect({ ...three, "people.csv": "" }).toEqual({ ...one, "people.csv": "" });
});

test("fit too gives the same with more threads", async () => {
  const people = LINES.map((line) => line.split(",")).map(
    ([id, born, status, place, minutes, days]) =>
      `  - { id: ${id}, name: ${id}, born: ${born}, status: ${status}, units: kg, place: ${place}, minutes: ${minutes}, windows: any ${days} of 7 days 09:00–12:00 }`,
  );
  writeFileSync(path("roster.yaml"), `stave: 1\npeople:\n${people.join("\n")}\n`);
  const files = [path("short.yaml"), "--people", path("roster.yaml"), "--places", path("places.yaml")];
  const run = (workers: string) => stave("fit", ...files, "--from", "2027-01-11", "--json", "--workers", workers);
  const [one, two] = [await run("1"), await run("2")];
  expect(JSON.parse(one.out).result.plans).toHaveLength(6);
  expect(two.out).toBe(one.out);
});

describe("a run that was cut short", () => {
  test("is gone on with by the same run once more, and ends with the same files", async () => {
    const many = Array.from(
      { length: 60 },
      (_, at) => `p${at},1990-01-01,novice,${at % 2 ? "home" : "gym"},${10 + at},2,`,
    );
    writeFileSync(path("many.csv"), `${[HEADER, ...many].join("\n")}\n`);
    await stave(...args("whole", "many.csv", "--workers", "1"));
    const plans = path("cut/plans");
    const child = spawn(process.execPath, ["server/dist/stave.js", ...args("cut", "many.csv", "--workers", "2")]);
    const ended = new Promise((resolve) => child.on("exit", resolve));
    while (!existsSync(plans) || readdirSync(plans).filter((name) => name.endsWith(".json")).length < 2)
      await new Promise((resolve) => setTimeout(resolve, 5));
    child.kill("SIGKILL");
    await ended;
    expect(existsSync(path("cut/people.csv"))).toBe(false);
    const before = readdirSync(plans).filter((name) => name.endsWith(".json")).length;
    const again = await stave(...args("cut", "many.csv", "--workers", "2", "--json"));
    const { classes } = JSON.parse(again.out).result;
    expect(classes.alreadyThere).toBe(before);
    expect(classes.alreadyThere).toBeLessThan(classes.all);
    expect(written("cut")).toEqual(written("whole"));
  });

  test("a plan that is there but not whole is made again", async () => {
    await stave(...args("damaged", "people.csv", "--workers", "1"));
    const before = written("damaged");
    const [plan, other] = table(before["classes.csv"]!).map((each) => `${each["plan"]}.json`);
    writeFileSync(path(`damaged/plans/${plan}`), before[plan!]!.slice(0, 100));
    writeFileSync(path(`damaged/plans/${other}`), before[plan!]!);
    const again = await stave(...args("damaged", "people.csv", "--workers", "1", "--json"));
    const { classes } = JSON.parse(again.out).result;
    expect(classes.all - classes.alreadyThere).toBe(2);
    expect(written("damaged")).toEqual(before);
  });
});

describe("what cannot be read", () => {
  const run = async (name: string, text: string) => {
    writeFileSync(path(name), text);
    const { exit, out } = await stave(...args(`out-${name}`, name, "--workers", "1", "--json"));
    const { result, problems } = JSON.parse(out);
    return { exit, result, codes: problems.map(({ code, line }: { code: string; line: number }) => `${code} ${line}`) };
  };

  test("a line is told with its place, and everybody else is served", async () => {
    const bad = ["gus,1990-05-14,novise,home,35,2,", "ann,1990-05-14,novice,home,35,2,", "hal,1990-05-14,novice,home"];
    const { exit, result, codes } = await run("some.csv", [HEADER, ...LINES, ...bad].join("\n"));
    expect(exit).toBe(2);
    expect(codes).toEqual(["value/choice 8", "id/same 9", "cohort/fields 10"]);
    expect(result.people).toMatchObject({ fitted: 6, unread: 3 });
  });

  test("no more than a hundred lines are told one by one", async () => {
    const bad = Array.from({ length: 130 }, (_, at) => `p${at},soon,novice,home,35,2,`);
    const { result, codes } = await run("hundred.csv", [HEADER, LINES[0], ...bad].join("\n"));
    expect(codes).toHaveLength(101);
    expect(codes[100]).toBe("cohort/more-problems 102");
    expect(result.people).toMatchObject({ fitted: 1, unread: 130 });
  });

  test("a byte order mark, empty lines and quotes over several lines keep the places right", async () => {
    const text = `\uFEFF${HEADER}\r\n\r\n"ann",1990-05-14,novice,home,35,2,\r\n"b\nc",1990-05-14,novice,home,35,2,\r\nbo,no,novice,home,35,2,\r\n`;
    const { codes, result } = await run("marks.csv", text);
    expect(codes).toEqual(["id/form 4", "date/form 6"]);
    expect(result.people.fitted).toBe(1);
  });

  test.each([
    ["nobody.csv", `${HEADER}\n`, "cohort/no-lines 0"],
    ["empty.csv", "", "cohort/no-lines 0"],
    ["columns.csv", "id,born,status,place,minute,days\n", "key/unknown 1"],
    ["quote.csv", `${HEADER}\nann,"1990\n`, "cohort/csv 2"],
    ["long.csv", `${HEADER}\n${"a".repeat(20_000)}\n`, "cohort/csv 2"],
  ])("%s", async (name, text, code) => {
    const { exit, codes } = await run(name, text);
    expect(exit).toBe(2);
    expect(codes).toContain(code);
  });

  test("a table of nobody leaves the lists of an earlier run as they were", async () => {
    await stave(...args("kept", "people.csv", "--workers", "1"));
    const before = written("kept");
    for (const [name, text] of [
      ["nobody.csv", `${HEADER}\n`],
      ["unread.csv", `${HEADER}\nann,no,novice,home,35,2,\n`],
    ] as const) {
      writeFileSync(path(name), text);
      expect((await stave(...args("kept", name, "--workers", "1"))).exit).toBe(2);
      expect(written("kept")).toEqual(before);
    }
  });

  test.each([
    ["no file", ["cohort", "none.yaml"], "file/missing"],
    ["no table", ["cohort", "short.yaml", "--people", "none.csv"], "file/missing"],
    ["a folder", ["cohort", "short.yaml", "--people", "."], "file/folder"],
    ["a file where the folder should be", ["cohort", "short.yaml", "--out", "short.yaml"], "out/not-a-folder"],
    ["no such day", ["cohort", "short.yaml", "--from", "2027-02-29"], "date/none"],
  ])("%s", async (_, [, programme, option, said], code) => {
    const all: Record<string, string> = {
      "--people": path("people.csv"),
      "--places": path("places.yaml"),
      "--out": path("refused"),
      "--from": "2027-01-11",
      "--workers": "1",
    };
    if (option !== undefined) all[option] = option === "--from" ? said! : path(said!);
    const { exit, out } = await stave("cohort", path(programme!), ...Object.entries(all).flat(), "--json");
    expect(exit).toBe(2);
    expect(JSON.parse(out)).toMatchObject({ result: null, problems: [{ code }] });
  });

  test("a folder that may not be written to", async () => {
    mkdirSync(path("taken"));
    writeFileSync(path("taken/plans"), "");
    const { exit, out } = await stave(...args("taken", "people.csv", "--workers", "1", "--json"));
    expect(exit).toBe(2);
    expect(JSON.parse(out).problems).toMatchObject([{ code: "out/not-a-folder", file: path("taken") }]);
  });
});

test("in words: how many people and classes, and where it stands", async () => {
  const { out, err } = await stave(...args("words", "people.csv", "--workers", "1"));
  expect(out).toBe(
    `6 people in 5 classes that the programme can tell apart.\nwrote ${path("words/people.csv")}\nwrote ${path("words/classes.csv")}\nwrote ${path("words/plans")}\n`,
  );
  expect(err).toContain("fitted 5 of 5 classes of 6 people\n");
});
