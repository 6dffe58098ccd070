import { expect, test } from "vitest";
import { USUAL } from "./equipment.ts";
import type { Problem } from "./finding.ts";
import type { Place } from "./place.ts";
import { readPlaces } from "./place-read.ts";

/** A file with one place and the lines given. */
function file(lines: Readonly<Record<string, string>> = {}): string {
  const said = Object.entries({ id: "room", name: "The Room", zone: "Europe/Lisbon", ...lines });
  return `stave: 1\nplaces:\n${said.map(([key, value], i) => `${i === 0 ? "  - " : "    "}${key}: ${value}\n`).join("")}`;
}

function place(lines: Readonly<Record<string, string>> = {}): Place {
  const result = readPlaces(file(lines), "places.yaml");
  if (!result.ok) throw new Error(result.problems.map(line).join("\n"));
  return result.value.value[0]!;
}

function line(p: Problem): string {
  return `${p.code} ${p.line}:${p.column} ${[p.found, p.allowed, p.maybe].map((piece) => piece ?? "").join("|")}`;
}

const values = (loads: readonly { value: number }[] | undefined) => loads?.map((load) => load.value);

test("a place without a word about kit has what nearly every place has", () => {
  expect(place()).toEqual({
    id: "room",
    name: "The Room",
    zone: "Europe/Lisbon",
    equipment: Object.fromEntries(USUAL.map((what) => [what, 1])),
  });
});

test("what it lacks is not there, what it has is counted", () => {
  const { equipment } = place({ lacks: "[stairs, step]", has: "{ rack: 2, chair: 12 }" });
  expect(equipment).not.toHaveProperty("stairs");
  expect(equipment).not.toHaveProperty("step");
  expect(equipment).toMatchObject({ rack: 2, chair: 12, floor: 1 });
});

test("loads say how many of a thing there are, unless it is counted", () => {
  const room = place({
    dumbbells: "{ pairs: [1–10 kg by 1, 12.5–32.5 kg by 2.5] }",
    kettlebells: "8–24 kg by 4",
    bars: "[10 kg, 15 kg, 20 kg]",
    plates: "{ 20 kg: 2, 1.25 kg: 1 }",
    bands: "[A, B]",
    bags: '["7,5 kg"]',
    collars: "0.5 kg",
    has: "{ barbell: 5 }",
  });
  expect(room.equipment).toMatchObject({ dumbbell: 38, kettlebell: 5, barbell: 5, plates: 1, band: 2 });
  expect(values(room.dumbbells?.loads)).toHaveLength(19);
  expect(room.dumbbells?.pairs).toBe(true);
  expect(values(room.kettlebells)).toEqual([8, 12, 16, 20, 24]);
  expect(room.plates).toEqual([
    { load: { value: 20, unit: "kg" }, pairs: 2 },
    { load: { value: 1.25, unit: "kg" }, pairs: 1 },
  ]);
  expect(room.bags).toEqual([{ value: 7.5, unit: "kg" }]);
  expect(place({ dumbbells: "{ single: 4 kg }" })).toMatchObject({
    equipment: { dumbbell: 1 },
    dumbbells: { loads: [{ value: 4, unit: "kg" }], pairs: false },
  });
});

test("a stack keeps its own unit and all its pins", () => {
  const { stacks } = place({
    has: "{ cable: 2, leg press: 1 }",
    stacks: "{ cable: 10–30 lb by 10, leg press: [5–15 kg by 5, 25 kg] }",
  });
  expect(stacks).toEqual({
    cable: { unit: "lb", pins: [10, 20, 30] },
    "leg press": { unit: "kg", pins: [5, 10, 15, 25] },
  });
});

test("hours and outages", () => {
  const room = place({
    open: "[mon–tue 06:30–21:00, sun 06:30–13:00]",
    outages: "[{ what: leg press, from: 2027-02-08, to: 2027-02-14 }]",
    has: "{ leg press: 1 }",
  });
  expect(room.open).toEqual([
    { day: "mon", from: 390, to: 1260 },
    { day: "tue", from: 390, to: 1260 },
    { day: "sun", from: 390, to: 780 },
  ]);
  expect(room.outages).toEqual([{ what: "leg press", from: "2027-02-08", to: "2027-02-14" }]);
});

/** Lines with ▸ before the very character that is at fault. */
const cases: readonly (readonly [Readonly<Record<string, string>>, string])[] = [
  [{ zone: "▸Lisbon time" }, "place/zone Lisbon time|Europe/Vienna, America/Toronto, UTC|"],
  [{ zone: '▸"+01:00"' }, "place/zone +01:00|Europe/Vienna, America/Toronto, UTC|"],
  [{ has: "{ ▸racks: 2 }" }, "key/unknown racks|…|rack"],
  [{ has: "{ rack: ▸0 }" }, "value/small 0|1–200|"],
  [{ lacks: "[▸rack]" }, "value/choice rack|floor, wall, chair, step, counter, towel, bag, stairs, way to walk|"],
  [{ lacks: "[▸stairs]", has: "{ stairs: 1 }" }, "place/has-and-lacks stairs||"],
  [{ dumbbells: "▸{ }" }, "place/dumbbells map|pairs, single|"],
  [{ dumbbells: "▸{ pairs: 4 kg, single: 5 kg }" }, "place/dumbbells map|pairs, single|"],
  [{ dumbbells: "{ pairs: [1–10 kg by 1, ▸1–20 kg] }" }, "load/range 1–20 kg|1–10 kg by 1|"],
  [{ kettlebells: "[8 kg, ▸6 kg]" }, "load/order 6 kg|> 8 kg|"],
  [{ kettlebells: "[8 kg, ▸20 lb]" }, "load/units 20 lb|kg|"],
  [{ kettlebells: "▸8" }, "load/unit 8|kg, lb|8 kg, 8 lb"],
  [{ kettlebells: "▸[]" }, "load/count 0|1–400|"],
  [{ bars: "[20 kg, 10▸,5 kg]" }, "yaml/comma ,||, "],
  [{ plates: "{ ▸20: 1 }" }, "load/unit 20|kg, lb|20 kg, 20 lb"],
  [{ plates: "{ 20 kg: 1, ▸45 lb: 1 }" }, "place/plates-units 45 lb|kg|"],
  [{ plates: "{ 20 kg: 1, ▸20.0 kg: 1 }" }, "place/same-plate 20.0 kg||"],
  [{ plates: "{ ▸0 kg: 1 }" }, "load/size 0 kg|> 0|"],
  [{ plates: "{ 20 kg: ▸0.5 }" }, "value/type 0.5|whole number|"],
  [{ bands: "[A, B, ▸A]" }, "place/same-band A||"],
  [{ stacks: "{ ▸cable: 5–50 kg by 5 }" }, "place/stack-without-machine cable||"],
  [{ has: "{ cable: 1 }", stacks: "{ cable: ▸5 kg }" }, "load/count 1|2–400|"],
  [{ open: "mon 06:30–21:00 ▸fine" }, "window/word fine||"],
  [{ open: "▸06:30–21:00" }, "window/no-day |…|"],
  [{ outages: "[{ what: ▸leg pres, from: 2027-02-08, to: 2027-02-14 }]" }, "value/choice leg pres|…|leg press"],
  [{ outages: "[{ what: leg press, from: 2027-02-08, to: ▸2027-02-07 }]" }, "date/reversed 2027-02-07|≥ 2027-02-08|"],
  [{ collars: "▸half" }, "load/form half|12 kg, 12.5 kg, 10 lb|"],
];

for (const [lines, problem] of cases) {
  test(`${JSON.stringify(lines)}: ${problem}`, () => {
    const marked = file(lines);
    const before = marked.split("▸")[0]!.split("\n");
    const result = readPlaces(marked.replace("▸", ""), "places.yaml");
    const [code, ...pieces] = problem.split(" ");
    const told = result.problems.map(line);
    expect(told).toHaveLength(1);
    expect(told[0]!.replace(problem.includes("|…|") ? /\|[^|]+\|/ : /$^/, "|…|")).toBe(
      `${code} ${before.length}:${before.at(-1)!.length + 1} ${pieces.join(" ")}`,
    );
  });
}

test("two places with one id, and people in the same file left alone", () => {
  const two = `${file()}${file().split("\n").slice(2).join("\n")}people: [nonsense]\n`;
  const result = readPlaces(two, "places.yaml");
  expect(result.problems.map(line)).toEqual(["id/same 6:9 room||"]);
  expect(readPlaces("stave: 1\npeople: [nonsense]\n", "a.yaml")).toMatchObject({ ok: true, value: { value: [] } });
  expect(readPlaces("stave: 1\n", "a.yaml").problems.map(line)).toEqual(["key/missing 1:1 |places, people|"]);
});
