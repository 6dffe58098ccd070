import { describe, expect, test } from "vitest";
import { day } from "../day.ts";
import { CATALOGUE } from "../exercises/index.ts";
import { madeUpPlace } from "../testing/index.ts";
import { COHORT_COLUMNS, cohortReader } from "./cohort-read.ts";
import { readRoster } from "./roster-read.ts";

const on = day("2027-03-01");
const places = [madeUpPlace({ id: "home" }), madeUpPlace({ id: "gym" })];
const context = { file: "answers.csv", places, catalogue: CATALOGUE, on };
const MUST = COHORT_COLUMNS.join(",");

/** Fields without quotes, parted by commas. */
function row(raw: string, line = 1) {
  return { fields: raw.split(","), raw, line };
}

function read(header: string, raw: string) {
  const reader = cohortReader(row(header), context);
  expect(reader.problems).toEqual([]);
  return reader.ok ? reader.value(row(raw, 7)) : reader;
}

const ANN = "ann-1,1990-05-14,novice,home,35,3";

test("the shortest answers make a person who can train on any day, so many a week", () => {
  const { ok, value } = read(MUST, ANN) as { ok: true; value: { windows: readonly object[] } };
  expect(ok).toBe(true);
  expect(value).toMatchObject({
    id: "ann-1",
    born: day("1990-05-14"),
    place: "home",
    minutes: 35,
    perWeek: 3,
    rungs: {},
  });
  expect(value.windows).toHaveLength(7);
  expect(value).not.toHaveProperty("screening");
});

test("answers and a roster that say the same give the same person, but for the name and who says so", () => {
  const header = `${MUST},outcome,screened,until,cautions,cannot,likes,dislikes,squat,push-up`;
  const answers = read(
    header,
    `${ANN},no reason found,2027-02-20,2027-08-20,back;knee,floor;kneel,goblet-squat,split-squat-free,goblet-squat,`,
  );
  const roster = readRoster(
    `stave: 1
people:
  - id: ann-1
    name: ann-1
    born: 1990-05-14
    status: novice
    units: kg
    place: home
    windows: any 3 of 7 days 00:00–24:00
    minutes: 35
    screening: { outcome: no reason found, on: 2027-02-20, until: 2027-08-20, by: the person's own answers }
    cautions:
      - { statement: back, from: 2027-02-20, recheck: 2027-08-20, who: the person's own answers }
      - { statement: knee, from: 2027-02-20, recheck: 2027-08-20, who: the person's own answers }
    cannot: [floor, kneel]
    likes: [goblet-squat]
    dislikes: [split-squat-free]
    rungs: { squat: goblet-squat }
`,
    "people.yaml",
    places,
    CATALOGUE,
  );
  expect(roster.problems).toEqual([]);
  expect(answers).toEqual({ ok: true, problems: [], value: roster.ok ? roster.value.value[0] : undefined });
});

test("a caution without a screening is due on the first day of the plan", () => {
  const answers = read(`${MUST},cautions`, `${ANN},wrist`);
  expect(answers.ok && answers.value.cautions).toEqual([
    { statement: "wrist", from: on, recheck: on, who: "the person's own answers" },
  ]);
});

describe("what is wrong is told with its line and column", () => {
  test.each([
    ["id", "Ann,1990-05-14,novice,home,35,3", "id/form", 1],
    ["born", "ann,1990-02-30,novice,home,35,3", "date/none", 5],
    ["born", "ann,soon,novice,home,35,3", "date/form", 5],
    ["status", "ann,1990-05-14,novise,home,35,3", "value/choice", 16],
    ["place", "ann,1990-05-14,novice,gim,35,3", "name/unknown", 23],
    ["minutes", "ann,1990-05-14,novice,gym,9,3", "value/type", 27],
    ["minutes", "ann,1990-05-14,novice,gym,241,3", "value/type", 27],
    ["minutes", "ann,1990-05-14,novice,gym,0x20,3", "value/type", 27],
    ["days", "ann,1990-05-14,novice,gym,30,0", "value/type", 30],
    ["days", "ann,1990-05-14,novice,gym,30,8", "value/type", 30],
    ["days", "ann,1990-05-14,novice,gym,30,", "key/missing", 1],
  ])("%s: %s", (name, raw, code, column) => {
    const answer = read(MUST, raw);
    expect(answer.ok).toBe(false);
    expect(answer.problems).toMatchObject([{ code, file: "answers.csv", line: 7, column, at: [name] }]);
  });

  test("a misspelt place says which was meant", () => {
    expect(read(MUST, "ann,1990-05-14,novice,gim,35,3").problems[0]).toMatchObject({ found: "gim", maybe: "gym" });
  });

  test.each([
    ["cautions", "knee;backk", "name/unknown"],
    ["cannot", "floor, ", "cohort/fields"],
    ["likes", "gobelt-squat", "name/unknown"],
    ["squat", "push-up", "person/off-ladder"],
    ["outcome", "stop", "cohort/part-of-screening"],
    ["outcome", "fine", "value/choice"],
  ])("%s: %s", (name, said, code) => {
    expect(read(`${MUST},${name}`, `${ANN},${said}`).problems[0]).toMatchObject({ code });
  });

  test("twenty names are read, twenty-one are too many", () => {
    const names = (count: number) => Array.from({ length: count }, () => "back").join(";");
    expect(read(`${MUST},cautions`, `${ANN},${names(20)}`).ok).toBe(true);
    expect(read(`${MUST},cautions`, `${ANN},${names(21)}`).problems[0]).toMatchObject({
      code: "value/many",
      found: "21",
    });
  });

  test("a screening that ends before it began or years later, or comes before the birth", () => {
    const header = `${MUST},outcome,screened,until`;
    expect(read(header, `${ANN},stop,2027-02-20,2027-02-19`).problems[0]).toMatchObject({
      code: "date/reversed",
      at: ["until"],
    });
    expect(read(header, `${ANN},stop,2027-02-20,2029-02-21`).problems[0]).toMatchObject({ code: "date/far" });
    expect(read(header, `${ANN},stop,2027-02-20,2029-02-20`).ok).toBe(true);
    expect(read(header, `${ANN},stop,1980-02-20,1981-02-19`).problems.map(({ code }) => code)).toContain(
      "person/before-birth",
    );
  });

  test("a place inside quotes is that of the value", () => {
    const reader = cohortReader(row(MUST), context);
    const raw = '"ann",1990-05-14,novice,"the gym",35,3';
    const fields = ["ann", "1990-05-14", "novice", "the gym", "35", "3"];
    expect(reader.ok && reader.value({ fields, raw, line: 3 }).problems).toMatchObject([
      { at: ["place"], line: 3, column: 26 },
    ]);
  });
});

describe("columns", () => {
  const problems = (header: string) =>
    cohortReader(row(header), context).problems.map(({ code, column, found, allowed, maybe }) => ({
      code,
      column,
      ...(code === "key/missing" ? { allowed } : { found, maybe }),
    }));

  test("all that must be there and is not", () => {
    expect(problems("id,born,status,place,days")).toEqual([{ code: "key/missing", column: 1, allowed: "minutes" }]);
  });

  test("a name that is none, and one that stands twice", () => {
    expect(problems(`${MUST},caution,id`)).toEqual([
      { code: "key/unknown", column: 35, found: "caution", maybe: "cautions" },
      { code: "cohort/column-twice", column: 43, found: "id", maybe: undefined },
    ]);
  });

  test("in any order, with any ladder", () => {
    for (const { id } of CATALOGUE.ladders) expect(problems(`${id},days,minutes,place,status,born,id`)).toEqual([]);
  });
});
