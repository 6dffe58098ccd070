import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { documentOf, published } from "../testing/document-of.ts";
import { PEOPLE, ROOM, PROGRAMME as STEPS, stave } from "../testing/run-stave.ts";
import { DOCUMENTS, documentJsonSchema } from "./documents.ts";

const STRENGTH = `${ROOM}/slipway-strength.yaml`;
const STAVE = "server/dist/stave.js";
const DAGNY = [...PEOPLE, "--person", "dagny"];

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "stave-documents-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("every command that can print a document has its schema, and no other", async () => {
  const names = [...(await stave("--help")).out.matchAll(/^ {2}(\w+) (?:\[options\]|<)/gm)].map(([, name]) => name!);
  expect(names.length).toBeGreaterThan(7);
  const helps = await Promise.all(names.map(async (name) => [name, (await stave(name, "--help")).out] as const));
  const withDocument = helps.filter(([, help]) => help.includes("--json")).map(([name]) => name);
  expect(withDocument.sort()).toEqual(Object.keys(DOCUMENTS).sort());
  expect(readdirSync("docs/commands").sort()).toEqual(withDocument.map((name) => `${name}.schema.json`).sort());
});

test.each(Object.keys(DOCUMENTS))(
  "%s: the published schema is that of today, and lets no unnamed field pass",
  (name) => {
    const schema = documentJsonSchema(DOCUMENTS[name]!);
    expect(readFileSync(`docs/commands/${name}.schema.json`, "utf8")).toBe(`${JSON.stringify(schema, undefined, 2)}\n`);
    const open: string[] = [];
    const walk = (node: unknown, at: string): void => {
      if (typeof node !== "object" || node === null) return;
      if ("properties" in node && !("additionalProperties" in node && node.additionalProperties === false))
        open.push(at);
      for (const [key, inner] of Object.entries(node)) walk(inner, `${at}/${key}`);
    };
    walk(schema, "");
    expect(open).toEqual([]);
  },
);

describe("good input", () => {
  test("check: no finding, findings of every severity, a silenced one", async () => {
    expect((await documentOf("check", STEPS, STRENGTH)).result).toHaveLength(2);
    const bad = await documentOf("check", `${ROOM}/bad-twin.yaml`);
    expect(bad.findings.length).toBeGreaterThan(5);
    const path = join(folder, "silenced.yaml");
    const text = readFileSync(`${ROOM}/bad-twin.yaml`, "utf8");
    const rule = "silence: [{ check: week/pattern-never-trained, reason: They row on the water. }]";
    writeFileSync(path, text.replace(/^phases:/m, `${rule}\nphases:`));
    const [{ silenced }] = (await documentOf("check", path)).result;
    expect(silenced.length).toBeGreaterThan(0);
  });

  test("fit: the whole roster, with files", async () => {
    const { result } = await documentOf("fit", STEPS, STRENGTH, ...PEOPLE, "--out", join(folder, "fit"));
    expect(result.plans.length).toBeGreaterThan(11);
    expect(result.files).toHaveLength(2 * result.plans.length);
  });

  test("cohort: followers of whom one cannot be read", async () => {
    const people = join(folder, "followers.csv");
    const lines = readFileSync(`${ROOM}/followers.csv`, "utf8").split("\n").slice(0, 3);
    writeFileSync(people, [...lines, "somebody,1990-02-30"].join("\n"));
    const files = ["--people", people, "--places", `${ROOM}/places.yaml`, "--out", join(folder, "cohort")];
    const { result, problems } = await documentOf("cohort", STEPS, ...files, "--workers", "1");
    expect(result.people).toMatchObject({ fitted: 2, unread: 1 });
    expect(problems).toHaveLength(1);
  });

  test("fit: people whose programme is not here", async () => {
    const { result } = await documentOf("fit", STRENGTH, ...PEOPLE);
    expect(result.without.length).toBeGreaterThan(0);
  });

  test.each([
    ["chosen", "ground-squat-a", "tobiah", undefined],
    ["costs", "ground-squat-a", "tobiah", "sit-to-stand-45"],
    ["set aside", "ground-squat-a", "tobiah", "back-squat"],
    ["not thought of", "ground-squat-a", "tobiah", "barbell-deadlift"],
  ])("why: %s", async (kind, slot, person, other) => {
    const plain = await documentOf("why", STEPS, slot, ...PEOPLE, "--person", person);
    const not = other ?? plain.result.exercise;
    const { result } = await documentOf("why", STEPS, slot, ...PEOPLE, "--person", person, "--not", not);
    expect(result.not.answer.kind).toBe(kind);
  });

  test("schedule: the whole roster", async () => {
    const { result } = await documentOf("schedule", STEPS, STRENGTH, ...PEOPLE);
    expect(result.length).toBeGreaterThan(11);
    expect(result.some(({ sessions }: { sessions: unknown[] }) => sessions.length > 4)).toBe(true);
  });

  test("sheet: one printed, one withheld", async () => {
    const out = join(folder, "sheets");
    const one = await documentOf("sheet", STEPS, ...PEOPLE, "--person", "dagny", "--out", out);
    expect(one.result.files).toHaveLength(1);
    const none = await documentOf("sheet", STEPS, ...PEOPLE, "--person", "hesper", "--out", out);
    expect(none.result.withheld).toHaveLength(1);
  });

  test("calendar", async () => {
    const out = join(folder, "calendars");
    const { result } = await documentOf("calendar", STEPS, ...PEOPLE, "--person", "dagny", "--out", out);
    expect(result.files).toHaveLength(1);
  });

  test("assess: sides, norms, changes of like with like", async () => {
    const { tests } = (await documentOf("assess", `${ROOM}/tests-dagny.yaml`)).result;
    const stand = tests.find(({ test }: { test: string }) => test === "one-leg-stand");
    expect(stand.results[1]).toMatchObject({
      on: "2027-03-08",
      score: { left: 9, right: 12.5 },
      gap: { weaker: "left", gapPercent: 28 },
      change: { since: "2026-12-14", left: 2.5, right: 1.5 },
    });
  });
  test("screen: asked of a doctor, and agreed", async () => {
    const file = `${ROOM}/screening-tobiah.yaml`;
    expect((await documentOf("screen", file)).result.screening.outcome).toBe("ask a doctor first");
    const agreed = join(folder, "agreed.yaml");
    writeFileSync(
      agreed,
      `${readFileSync(file, "utf8")}cleared: { on: 2026-12-06, who: Dr Example, effort: moderate, about: [ankle swelling] }\n`,
    );
    const { screening } = (await documentOf("screen", agreed, "--diabetes", "mild")).result;
    expect(screening).toMatchObject({ agreed: { on: "2026-12-06", who: "Dr Example" }, effort: "moderate" });
  });

  test("reckon: the list, a figure with its band, a class", async () => {
    expect((await documentOf("reckon")).result.list.length).toBeGreaterThan(30);
    const { figures } = (await documentOf("reckon", "one-rep-max", "load=100kg", "reps=5")).result;
    expect(figures[0]).toMatchObject({ low: 112.5, high: 119.011, unit: "kg" });
    const pulse = (await documentOf("reckon", "highest-pulse", "age=50", "sex=woman")).result;
    expect(pulse.figures.map(({ source }: { source: string }) => source)).toContain("gulati2010");
    expect((await documentOf("reckon", "press-pull", "press=100kg", "pull=100kg")).result.about).toHaveLength(1);
  });

  test("simulate: all worlds, and one by its name with hyphens", async () => {
    const all = await documentOf("simulate", "--people", "2", "--weeks", "10");
    expect(all.result.length).toBeGreaterThan(10);
    const { result } = await documentOf("simulate", "no-trend", "--people", "3", "--weeks", "2", "--seed", "9");
    expect(result).toMatchObject([{ world: "no trend", people: 3, weeks: 2, seed: 9 }]);
    expect("forecast" in result[0]).toBe(false);
  });

  test("exercises: the whole catalogue, and one", async () => {
    expect((await documentOf("exercises")).result.length).toBeGreaterThan(190);
    expect((await documentOf("exercises", "goblet-squat")).result).toHaveLength(1);
  });

  test("demo, as the built program: a sheet for everybody who may have one, and for nobody else", () => {
    const out = join(folder, "demo");
    const text = execFileSync(process.execPath, [STAVE, "demo", "--out", out, "--json"], {
      encoding: "utf8",
      stdio: ["ignore", "pipe", "ignore"],
    });
    const document = JSON.parse(text);
    const fits = published.get("demo")!;
    expect(fits(document), JSON.stringify(fits.errors)).toBe(true);
    expect(document.ok).toBe(true);
    const sheets = readdirSync(out).filter((name) => existsSync(join(out, name, "sheet.pdf")));
    expect(sheets).toHaveLength(document.result.sheets);
    expect(document.result.withheld.map(({ person }: { person: string }) => person).sort()).toEqual([
      "corvane",
      "hesper",
    ]);
    for (const person of ["corvane", "hesper"]) expect(sheets).not.toContain(person);
    expect(readdirSync(out).some((name) => name.startsWith(".part"))).toBe(false);
  });
});

describe("bad input: the document says what is wrong, and its result is null unless something could be done", () => {
  const none = "none.yaml";
  const inTheWay = () => {
    const path = join(folder, "in-the-way");
    writeFileSync(path, "here");
    return path;
  };
  const [SCREENING, TODAY] = [`${ROOM}/screening-tobiah.yaml`, `${ROOM}/before-tobiah.yaml`];
  const changed = (from: string, to: string) => {
    const path = join(folder, "today.yaml");
    writeFileSync(path, readFileSync(TODAY, "utf8").replace(from, to));
    return path;
  };
  const taken = () => {
    const path = join(folder, "taken.yaml");
    const text = readFileSync(`${ROOM}/own-exercises.yaml`, "utf8");
    writeFileSync(path, text.replace("id: rope-drag-seated", "id: cable-row-seated"));
    return path;
  };
  const tested = (from: string, to: string) => {
    const path = join(folder, "tests.yaml");
    writeFileSync(path, readFileSync(`${ROOM}/tests-dagny.yaml`, "utf8").replace(from, to));
    return path;
  };
  const loose = () => {
    const path = join(folder, "loose.yaml");
    writeFileSync(path, readFileSync(`${ROOM}/before-rules.yaml`, "utf8").replace("hold: 175/105", "hold: 210/105"));
    return path;
  };
  const noDay = [...PEOPLE.slice(0, 4), "--from", "2027-02-29"];
  test.each<[name: string, args: () => readonly string[], code: string]>([
    ["check: no file", () => ["check", none], "file/missing"],
    ["check: a folder", () => ["check", folder], "file/folder"],
    ["check: a list of people", () => ["check", `${ROOM}/people.yaml`], "key/unknown"],
    ["check: no such remedy", () => ["check", STEPS, "--apply", "99"], "check/no-such-remedy"],
    ["fit: no such day", () => ["fit", STEPS, ...noDay], "date/none"],
    ["fit: nobody of that name", () => ["fit", STEPS, ...PEOPLE, "--person", "dagni"], "person/unknown"],
    ["fit: a programme as roster", () => ["fit", STEPS, "--people", STEPS, ...PEOPLE.slice(2)], "key/unknown"],
    ["fit: a file in the way", () => ["fit", STEPS, ...DAGNY, "--out", inTheWay()], "out/not-a-folder"],
    [
      "cohort: a roster as table",
      () => ["cohort", STEPS, "--people", STEPS, ...PEOPLE.slice(2, 4), "--out", join(folder, "none")],
      "key/unknown",
    ],
    ["why: no such slot", () => ["why", STEPS, "sqat", ...PEOPLE, "--person", "dagny"], "why/no-such-slot"],
    [
      "why: no such exercise",
      () => ["why", STEPS, "ground-squat-a", ...PEOPLE, "--person", "dagny", "--not", "back-sqat"],
      "why/no-such-exercise",
    ],
    ["simulate: no such world", () => ["simulate", "macthed"], "simulate/no-such-world"],
    ["schedule: no file", () => ["schedule", none, ...PEOPLE], "file/missing"],
    ["screen: a programme", () => ["screen", STEPS], "key/unknown"],
    ["check: own exercises that are none", () => ["check", STEPS, "--exercises", STEPS], "key/unknown"],
    ["fit: own exercises that are not there", () => ["fit", STEPS, ...PEOPLE, "--exercises", none], "file/missing"],
    ["exercises: one that stands in the catalogue", () => ["exercises", "--exercises", taken()], "own/taken"],
    [
      "fit: tests of nobody here",
      () => ["fit", STEPS, ...PEOPLE, "--tests", tested("person: dagny", "person: dagna")],
      "person/unknown",
    ],
    [
      "fit: tests of another birthday",
      () => ["fit", STEPS, ...PEOPLE, "--tests", tested("1954", "1955")],
      "results/other-born",
    ],
    ["screen: no such paper", () => ["screen", SCREENING, "--request", folder, "--paper", "a3"], "sheet/paper"],
    ["before: today's file twice", () => ["before", TODAY, TODAY], "key/unknown"],
    [
      "before: somebody else",
      () => ["before", SCREENING, changed("person: tobiah", "person: dagny")],
      "before/other-person",
    ],
    ["before: a day too early", () => ["before", SCREENING, changed("2027-01-20", "2026-12-06")], "before/day-early"],
    ["before: a rule that is too loose", () => ["before", SCREENING, TODAY, "--rules", loose()], "rules/looser"],
    ["before: a file in the way", () => ["before", SCREENING, TODAY, "--request", inTheWay()], "out/not-a-folder"],
    ["assess: a programme", () => ["assess", STEPS], "key/unknown"],
    ["sheet: no such paper", () => ["sheet", STEPS, ...PEOPLE, "--out", folder, "--paper", "a3"], "sheet/paper"],
    [
      "import: no file",
      () => ["import", none, ...PEOPLE, "--coach", "Imke", "--data", join(folder, "data")],
      "file/missing",
    ],
    [
      "import: text where records should be",
      () => {
        writeFileSync(join(folder, "stave.db"), "programme".repeat(1000));
        return ["import", STEPS, ...DAGNY, "--coach", "Imke", "--data", folder];
      },
      "data/cannot-open",
    ],
    ["calendar: a file in the way", () => ["calendar", STEPS, ...DAGNY, "--out", inTheWay()], "out/not-a-folder"],
    ["reckon: no such name", () => ["reckon", "one-rep-mx"], "reckon/no-such-name"],
    ["reckon: a load without its unit", () => ["reckon", "one-rep-max", "load=100", "reps=5"], "reckon/unit-missing"],
    ["reckon: too many repetitions", () => ["reckon", "one-rep-max", "load=100kg", "reps=30"], "reckon/refused"],
    ["exercises: no such name", () => ["exercises", "gobelt-squat"], "exercises/none"],
    ["exercises: no such pattern", () => ["exercises", "--pattern", "sqat"], "exercises/no-such-pattern"],
  ])("%s", async (_, args, code) => {
    const { result, problems } = await documentOf(...args());
    expect(problems.map((problem: { code: string }) => problem.code)).toContain(code);
    expect(result).toBeNull();
  });

  test("demo: a file in the way", () => {
    const ran = spawnSync(process.execPath, [STAVE, "demo", "--out", inTheWay(), "--json"], { encoding: "utf8" });
    expect(ran.status).toBe(2);
    const document = JSON.parse(ran.stdout);
    expect(published.get("demo")!(document)).toBe(true);
    expect(document.problems[0].code).toBe("out/not-a-folder");
  });

  test("fit: somebody of whose plan nothing is left still has a document with the plan and the problem", async () => {
    const programme = join(folder, "nothing.yaml");
    const text = readFileSync(STEPS, "utf8").split("phases:")[0]!;
    writeFileSync(
      programme,
      `${text}phases:
  - key: one
    title: One
    weeks: 1
    sessions:
      - key: a
        title: A
        minutes: 40
        work: [{ slot: pull, pattern: vertical pull, first: lat-pull-down, dose: "2 × 8, rest 60 s" }]
`,
    );
    const people = join(folder, "people.yaml");
    writeFileSync(
      people,
      `stave: 1
people:
  - { id: ada, name: Ada Example, born: 1990-05-01, status: novice, units: kg, place: hut, minutes: 45, windows: [mon 17:00–19:00] }
`,
    );
    const places = join(folder, "places.yaml");
    writeFileSync(
      places,
      "stave: 1\nplaces:\n  - { id: hut, name: Hut, zone: Europe/London, lacks: [floor, wall, chair, step, counter, towel, bag, stairs, way to walk] }\n",
    );
    const { result, problems } = await documentOf(
      "fit",
      programme,
      "--people",
      people,
      "--places",
      places,
      "--from",
      "2027-01-11",
    );
    expect(result.plans[0].phases[0].weeks[0].sessions[0].open).toHaveLength(1);
    expect(problems.map((problem: { code: string }) => problem.code)).toEqual(["fit/nobody-served"]);
  });
});
