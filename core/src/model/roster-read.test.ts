import { expect, test } from "vitest";
import { type Day, day, WEEKDAYS } from "../day.ts";
import type { Catalogue } from "./exercise.ts";
import type { Problem } from "./finding.ts";
import type { Person } from "./person.ts";
import type { Place } from "./place.ts";
import { readRoster } from "./roster-read.ts";

const places = [{ id: "room" }, { id: "home" }] as unknown as readonly Place[];
const catalogue = {
  exercises: new Map(["body-squat", "goblet-squat", "floor-push-up", "wall-push-up"].map((id) => [id, {}])),
  ladders: [
    {
      id: "squat",
      name: "Squat",
      start: "body-squat",
      steps: [{ from: "body-squat", to: "goblet-squat", branch: "main" }],
    },
    { id: "push-up", name: "Push-up", start: "wall-push-up", steps: [] },
  ],
} as unknown as Catalogue;

/** A roster of one person, with lines put in place of others; a line of undefined is left out. */
function roster(lines: Readonly<Record<string, string | undefined>> = {}): string {
  const usual = {
    id: "ann",
    name: "Ann Example",
    born: "1990-05-14",
    status: "novice",
    units: "kg",
    place: "room",
    windows: "[tue thu 17:00–18:30]",
    minutes: "50",
  };
  const said = Object.entries<string | undefined>({ ...usual, ...lines }).filter(([, value]) => value !== undefined);
  return `stave: 1\npeople:\n${said.map(([key, value], i) => `${i === 0 ? "  - " : "    "}${key}: ${value}\n`).join("")}`;
}

function read(text: string): readonly Person[] {
  const result = readRoster(text, "people.yaml", places, catalogue);
  if (!result.ok) throw new Error(result.problems.map(line).join("\n"));
  return result.value.value;
}

function problems(text: string): readonly Problem[] {
  const result = readRoster(text, "people.yaml", places, catalogue);
  return result.ok ? [] : result.problems;
}

function line(p: Problem): string {
  return `${p.code} ${p.line}:${p.column} ${[p.found, p.allowed, p.maybe].map((piece) => piece ?? "").join("|")}`;
}

test("a short entry, with every default said", () => {
  expect(read(roster())).toEqual([
    {
      id: "ann",
      name: "Ann Example",
      born: day("1990-05-14"),
      status: "novice",
      units: "kg",
      place: "room",
      windows: [
        { day: "tue", from: 1020, to: 1110, cost: 0 },
        { day: "thu", from: 1020, to: 1110, cost: 0 },
      ],
      minutes: 50,
      rungs: {},
      lifts: [],
      limits: [],
      cautions: [],
      cannot: [],
      likes: [],
      dislikes: [],
      pins: [],
      away: [],
      instead: [],
    },
  ]);
});

test("everything that can be said of a person", () => {
  const [person] = read(
    roster({
      mass: "{ load: 72,5 kg, on: 2026-12-01 }".replace("72,5 kg", '"72,5 kg"'),
      programme: "harbour-steps",
      windows: "[any 2 of mon wed fri 07:00–08:00 fine, sat 09:00–10:00 if needed at home]",
      rungs: "{ squat: goblet-squat }",
      lifts: "[{ exercise: goblet-squat, load: 35 lb, reps: 10, reserve: 2.5, on: 2026-12-02 }]",
      limits: `
      - { kind: load, most: 10 lb, held: total, side: left, movement: carry, from: 2026-11-01, to: 2027-02-01, who: Dr A }
      - { kind: rest, part: arm, side: right, from: 2026-11-01, to: 2027-02-01, who: Dr A }
      - { kind: movement, movement: body-squat, from: 2026-11-01, to: 2027-02-01, who: Dr A, lifted: { on: 2026-12-01, who: Dr B } }`,
      cautions: `
      - { statement: bone, from: 2026-12-01, recheck: 2027-02-23, who: Dr A }
      - { tag: floor, ceiling: 1, from: 2026-12-01, recheck: 2027-02-23, who: Ann }`,
      cannot: "[floor]",
      likes: "[body-squat]",
      dislikes: "[floor-push-up]",
      pins: "[{ slot: a1, exercise: goblet-squat, sets: 2 }]",
      away: "[{ from: 2027-02-01, to: 2027-02-01 }, { from: 2027-02-08, to: 2027-02-16, waits: true }]",
      instead: `
      - { from: 2027-03-01, to: 2027-03-14, windows: daily 06:30–07:30 }
      - { from: 2027-02-17, to: 2027-02-18, windows: [wed 07:00–07:25 fine at home, thu 10:00–11:00] }`,
      screening:
        "{ outcome: ask a doctor first, on: 2026-12-01, until: 2027-12-01, by: Coach, effort: light, agreed: { on: 2026-12-05, who: Dr A } }",
      note: "two words",
    }),
  );
  expect(person).toMatchObject({
    mass: { load: { value: 72.5, unit: "kg" }, on: day("2026-12-01") },
    perWeek: 2,
    windows: [
      { day: "mon", from: 420, to: 480, cost: 2 },
      { day: "wed", from: 420, to: 480, cost: 2 },
      { day: "fri", from: 420, to: 480, cost: 2 },
      { day: "sat", from: 540, to: 600, cost: 4, place: "home" },
    ],
    rungs: { squat: "goblet-squat" },
    lifts: [{ exercise: "goblet-squat", load: { value: 35, unit: "lb" }, reps: 10, reserve: 2.5 }],
    limits: [
      {
        kind: "load",
        atMost: { value: 10, unit: "lb" },
        applies: "total",
        side: "left",
        movement: "carry",
        who: "Dr A",
      },
      { kind: "rest", part: "arm", side: "right" },
      { kind: "movement", movement: "body-squat", side: "both", lifted: { on: day("2026-12-01"), who: "Dr B" } },
    ],
    cautions: [
      { statement: "bone", recheck: day("2027-02-23") },
      { tag: "floor", ceiling: 1 },
    ],
    pins: [{ slot: "a1", exercise: "goblet-squat", sets: 2 }],
    away: [
      { from: day("2027-02-01"), to: day("2027-02-01") },
      { from: day("2027-02-08"), to: day("2027-02-16"), waits: true },
    ],
    instead: [
      {
        from: day("2027-03-01"),
        to: day("2027-03-14"),
        windows: WEEKDAYS.map((on) => ({ day: on, from: 390, to: 450, cost: 0 })),
      },
      {
        from: day("2027-02-17"),
        to: day("2027-02-18"),
        windows: [
          { day: "wed", from: 420, to: 445, cost: 2, place: "home" },
          { day: "thu", from: 600, to: 660, cost: 0 },
        ],
      },
    ],
    screening: { outcome: "ask a doctor first", effort: "light", agreed: { who: "Dr A" } },
  });
  expect(Object.keys(person!)).not.toContain("days");
});

test("a rota: its days are counted from 1 in the file and from 0 in the model, the anchor being the first", () => {
  const cycle = "{ length: 8, anchor: 2026-03-02, days: [5–6 10:00–14:00, 8 09:00–11:00 if needed] }";
  expect(read(roster({ windows: undefined, cycle }))[0]).toMatchObject({
    windows: [],
    cycle: {
      length: 8,
      anchor: day("2026-03-02"),
      days: [
        { day: 4, from: 600, to: 840, cost: 0 },
        { day: 5, from: 600, to: 840, cost: 0 },
        { day: 7, from: 540, to: 660, cost: 4 },
      ],
    },
  });
});

test("names in any script and of one word are names, and two people may share one", () => {
  for (const name of ["Åsa-Màiri O’Neill", "نور الهدى", "陳", "Ljubo", "נועה בן־דוד", "می‌خواهم"]) {
    expect(read(roster({ name }))[0]!.name).toBe(name);
  }
  const two = `${roster()}${roster({ id: "ann-2" }).split("\n").slice(2).join("\n")}`;
  expect(read(two).map((person) => person.id)).toEqual(["ann", "ann-2"]);
});

const LIMIT = "from: 2026-11-01, to: 2027-02-01, who: Dr A";
const CAUTION = "from: 2026-12-01, recheck: 2027-02-23, who: Dr A";
const SCREEN = "outcome: no reason found, on: 2026-12-01, until: 2027-06-01, by: Coach";
const DAYS = "mon, tue, wed, thu, fri, sat, sun, mon–fri, daily";
/** Lines with ▸ before the very character that is at fault, or none where it is the entry that lacks something. */
const cases: readonly (readonly [Readonly<Record<string, string | undefined>>, string])[] = [
  [{ windows: undefined }, "person/no-day |mon 17:00–18:30|"],
  [{ windows: "▸[]" }, "person/no-day |mon 17:00–18:30|"],
  [
    { cycle: "▸{ length: 8, anchor: 2026-03-02, days: [1 10:00–14:00] }" },
    "person/windows-and-cycle map|windows, cycle|",
  ],
  [{ windows: "[mon 17:00–18:30, ▸tus 17:00–18:30]" }, `window/day tus|${DAYS}|tue`],
  [{ windows: '["mon ▸18:30–17:00"]' }, "window/reversed 18:30–17:00|18:30–24:00|17:00–18:30"],
  [{ windows: "mon 17:00–18:30 at ▸hom" }, "name/unknown hom|room, home|home"],
  [
    { windows: "[any 1 of mon tue 07:00–08:00, ▸any 1 of fri sat 07:00–08:00]" },
    "person/any-twice any 1 of fri sat 07:00–08:00||",
  ],
  [{ windows: "any 3 of 7 days 07:00–08:00", days: "▸2" }, "person/any-and-days 2|3|"],
  [rota("▸9 10:00–14:00"), "window/day 9|1–8|"],
  [rota("1 10:00–14:00 ▸near home"), "window/word near home|gladly, fine, if needed, at …|"],
  [{ place: "▸rom" }, "name/unknown rom|room, home|room"],
  [{ id: "▸Ann Ölund" }, "id/form Ann Ölund|a–z 0–9 -, 1–40|ann-olund"],
  [{ id: "▸12" }, "value/type 12|text|"],
  [{ name: '"A▸\\u202Eb"' }, "name/marks U+202E||"],
  [{ name: '"A▸\\tb"' }, "name/marks U+0009||"],
  [{ name: '▸" "' }, "name/blank ||"],
  [{ name: `▸${"x".repeat(81)}` }, "value/long 81|1–80|"],
  [{ born: "▸1990-13-01" }, "date/none 1990-13-01||"],
  [{ born: "▸2027-02-29" }, "date/none 2027-02-29||2027-02-28"],
  [{ born: "▸14.05.1990" }, "date/form 14.05.1990|2027-01-11|"],
  [{ born: "▸1890-01-01" }, "date/years 1890-01-01|1900–2199|"],
  [{ mass: "{ load: ▸12 kg, on: 2026-12-01 }" }, "person/mass 12 kg|20–350 kg|"],
  [{ mass: "{ load: ▸12 lb, on: 2026-12-01 }" }, "person/mass 12 lb|45–771 lb|"],
  [{ mass: "{ load: ▸72, on: 2026-12-01 }" }, "load/unit 72|kg, lb|72 kg, 72 lb"],
  [{ mass: "▸{ on: 2026-12-01 }" }, "key/missing |text, number|"],
  [{ mass: "{ load: 72 kg, on: ▸1980-12-01 }" }, "person/before-birth 1980-12-01|≥ 1990-05-14|"],
  [{ status: "▸novize" }, "value/choice novize|novice, intermediate, advanced|novice"],
  [{ units: "▸kgs" }, "value/choice kgs|kg, lb|kg"],
  [{ minutes: "▸5" }, "value/small 5|10–240|"],
  [{ minutes: "▸50 min" }, "value/type 50 min|10–240|"],
  [{ rungs: "{ ▸squad: body-squat }" }, "name/unknown squad|squat, push-up|squat"],
  [{ rungs: "{ push-up: ▸body-squat }" }, "person/off-ladder body-squat|wall-push-up|"],
  [{ likes: "[▸gobblet-squat]" }, "name/unknown gobblet-squat|…|goblet-squat"],
  [{ lifts: "[▸{ exercise: body-squat, on: 2026-12-01 }]" }, "lift/nothing-done |reps, hold|"],
  [{ lifts: "[{ exercise: body-squat, reps: 5, hold: ▸5, on: 2026-12-01 }]" }, "lift/reps-and-hold 5||"],
  [{ limits: "[▸{ kind: rest, part: arm, from: 2026-11-01, to: 2027-02-01 }]" }, "key/missing |text|"],
  [{ limits: `[▸{ kind: load, most: 10 lb, ${LIMIT} }]` }, "key/missing |total, hand|"],
  [{ limits: `[{ kind: load, most: ▸10, held: hand, ${LIMIT} }]` }, "load/unit 10|kg, lb|10 kg, 10 lb"],
  [{ limits: `[{ kind: rest, part: ▸arms, ${LIMIT} }]` }, "value/choice arms|arm, leg, trunk|arm"],
  [
    { limits: `[{ kind: movement, movement: ▸horizontal puhs, ${LIMIT} }]` },
    "name/unknown horizontal puhs|…|horizontal push, horizontal pull",
  ],
  [
    { limits: "[{ kind: rest, part: arm, from: 2027-02-01, to: ▸2026-11-01, who: Dr A }]" },
    "date/reversed 2026-11-01|≥ 2027-02-01|",
  ],
  [
    { limits: `[{ kind: rest, part: arm, ${LIMIT}, lifted: { on: ▸2026-10-01, who: Dr B } }]` },
    "date/reversed 2026-10-01|≥ 2026-11-01|",
  ],
  [{ cautions: `[{ statement: ▸bones, ${CAUTION} }]` }, "caution/unknown bones|…|bone"],
  [{ cautions: `[▸{ tag: floor, ${CAUTION} }]` }, "key/missing |0–3|"],
  [{ cautions: `[{ tag: floor, ceiling: ▸4, ${CAUTION} }]` }, "value/big 4|0–3|"],
  [{ cautions: `[{ statement: ▸lupus, ${CAUTION} }]` }, "caution/unknown lupus|…|"],
  [{ cautions: `[{ statement: bone, ▸tag: floor, ${CAUTION} }]` }, "key/unknown tag|statement, from, recheck, who|"],
  [
    { cautions: "[{ statement: bone, from: 2026-12-01, recheck: ▸2036-12-01, who: Dr A }]" },
    "date/far 2036-12-01|≤ 2028-12-01|",
  ],
  [{ screening: "▸{ outcome: no reason found, until: 2027-06-01, by: Coach }" }, "key/missing |text|"],
  [{ screening: "{ outcome: ▸fine, on: 2026-12-01, until: 2027-06-01, by: Coach }" }, "value/choice fine|…|"],
  [
    { screening: "{ outcome: stop, on: 2027-12-01, until: ▸2027-06-01, by: Coach }" },
    "date/reversed 2027-06-01|≥ 2027-12-01|",
  ],
  [
    { screening: `{ ${SCREEN}, agreed: ▸{ on: 2026-12-02, who: Dr A } }` },
    "screening/agreed-not-asked no reason found|ask a doctor first|",
  ],
  [
    {
      screening:
        "{ outcome: ask a doctor first, on: 2026-12-01, until: 2027-06-01, by: Coach, agreed: { on: ▸2027-12-02, who: Dr A } }",
    },
    "screening/agreed-late 2027-12-02|≤ 2027-06-01|",
  ],
  [
    {
      born: "2026-12-02",
      screening: "{ outcome: no reason found, on: ▸2026-12-01, until: 2027-06-01, by: Coach }",
    },
    "person/before-birth 2026-12-01|≥ 2026-12-02|",
  ],
  [{ born: "▸2023-12-02", screening: `{ ${SCREEN} }` }, "person/age 2|5–110|"],
  [{ born: "▸1910-12-02", screening: `{ ${SCREEN} }` }, "person/age 115|5–110|"],
  [{ away: "[{ from: 2027-02-02, to: ▸2027-02-01 }]" }, "date/reversed 2027-02-01|≥ 2027-02-02|"],
  [{ cannot: "[▸flor]" }, "value/choice flor|…|floor"],
  [{ note: '"a▸\\u0007"' }, "name/marks U+0007||"],
  [{ days: "▸8" }, "value/big 8|1–7|"],
  [{ days: "▸0" }, "value/small 0|1–7|"],
  [{ windows: undefined, cycle: "{ length: ▸1, anchor: 2026-03-02, days: 1 10:00–14:00 }" }, "value/small 1|2–56|"],
  [{ windows: undefined, cycle: "{ length: ▸57, anchor: 2026-03-02, days: 1 10:00–14:00 }" }, "value/big 57|2–56|"],
  [{ born: "▸2021-12-02", screening: `{ ${SCREEN} }` }, "person/age 4|5–110|"],
  [{ born: "▸1915-12-01", screening: `{ ${SCREEN} }` }, "person/age 111|5–110|"],
  [{ "▸weight": "70 kg" }, "key/unknown weight|…|"],
];

function rota(days: string): Readonly<Record<string, string | undefined>> {
  return { windows: undefined, cycle: `{ length: 8, anchor: 2026-03-02, days: ${days} }` };
}

for (const [lines, problem] of cases) {
  test(`${JSON.stringify(lines)}: ${problem}`, () => {
    const marked = roster(lines);
    const before = marked.split("▸")[0]!.split("\n");
    const place = !marked.includes("▸") ? "3:5" : `${before.length}:${before.at(-1)!.length + 1}`;
    const told = problems(marked.replace("▸", "")).map(line);
    const [code, ...pieces] = problem.split(" ");
    expect(told).toHaveLength(1);
    expect(told[0]!.replace(pieces.join(" ").includes("|…|") ? /\|[^|]+\|/ : /$^/, "|…|")).toBe(
      `${code} ${place} ${pieces.join(" ")}`,
    );
  });
}

test("all problems of all people at once, those across entries too", () => {
  const text = `${roster({ born: "1990-02-30", windows: undefined, minutes: "5" })}${roster({ status: "new" })
    .split("\n")
    .slice(2)
    .join("\n")}`;
  expect(problems(text).map((p) => `${p.line} ${p.code} ${p.at.join(".")}`)).toEqual([
    "3 person/no-day people.0.windows",
    "5 date/none people.0.born",
    "9 value/small people.0.minutes",
    "10 id/same people.1.id",
    "13 value/choice people.1.status",
  ]);
});

test("at the bounds themselves nothing is told", () => {
  const screening = `{ ${SCREEN} }`;
  for (const lines of [
    { born: "2021-12-01", screening },
    { born: "1915-12-02", screening },
    { days: "7", minutes: "240" },
    { minutes: "10", mass: "{ load: 20 kg, on: 2026-12-01 }" },
    { mass: "{ load: 350 kg, on: 2026-12-01 }" },
    { windows: undefined, cycle: "{ length: 56, anchor: 2026-03-02, days: 56 00:00–24:00 }" },
    { screening: "{ outcome: no reason found, on: 2026-12-01, until: 2028-12-01, by: Coach }" },
    { away: "[{ from: 2027-02-01, to: 2027-02-01 }]", name: "x".repeat(80) },
  ]) {
    expect(problems(roster(lines)).map(line)).toEqual([]);
  }
});

test("bounds: 5,000 people are read, 5,001 are refused", () => {
  const one = roster().split("\n").slice(2, -1).join("\n");
  const many = (n: number) =>
    `stave: 1\npeople:\n${Array.from({ length: n }, (_, i) => one.replace("id: ann", `id: p${i}`)).join("\n")}\n`;
  expect(read(many(3))).toHaveLength(3);
  const text = `stave: 1\npeople: [${"{}, ".repeat(5001)}]\n`;
  expect(problems(text).find((p) => p.code === "value/many")).toMatchObject({ found: "5001", allowed: "≤ 5000" });
});

test("without places and a catalogue, ids are looked at for their form only", () => {
  const result = readRoster(roster({ place: "anywhere", likes: "[any-thing]" }), "people.yaml");
  expect(result.ok && result.value.value[0]).toMatchObject({ place: "anywhere", likes: ["any-thing"] });
});

test("a file with neither people nor places, one of another version, and one with places alone", () => {
  expect(problems("stave: 1\n").map(line)).toEqual(["key/missing 1:1 |places, people|"]);
  expect(problems("stave: 2\npeople: []\n").map(line)).toEqual(["value/choice 1:8 2|1|"]);
  expect(read("stave: 1\nplaces: [1]\n")).toEqual([]);
});

test("the place of every part is known afterwards", () => {
  const result = readRoster(roster(), "people.yaml", places, catalogue);
  if (!result.ok) throw new Error("unreadable");
  expect(result.value.positions.at(["people", 0, "born"])).toEqual({ line: 5, column: 11 });
  expect(result.value.value[0]!.born satisfies Day).toBe(day("1990-05-14"));
});
