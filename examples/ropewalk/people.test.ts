import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { addDays, ageOn, day, weekdayOf } from "../../core/src/day.ts";
import { CATALOGUE } from "../../core/src/exercises/index.ts";
import type { Person, Place } from "../../core/src/model/index.ts";
import { readPlaces, readRoster } from "../../core/src/model/index.ts";

const text = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");
const places = placesOf(text("places.yaml"));
const peopleText = text("people.yaml");
const people = peopleOf(peopleText);
const START = day("2027-01-11");

function placesOf(file: string): readonly Place[] {
  const result = readPlaces(file, "places.yaml");
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 1));
  return result.value.value;
}

function peopleOf(file: string): readonly Person[] {
  const result = readRoster(file, "people.yaml", places, CATALOGUE);
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 1));
  return result.value.value;
}

function person(id: string): Person {
  return people.find((one) => one.id === id)!;
}

const windowDays = (one: Person) => [...new Set(one.windows.map((window) => window.day))].join(" ");
const statements = (one: Person) =>
  one.cautions.map((caution) => caution.statement ?? `${caution.tag} ${caution.ceiling}`);

test("every exercise and ladder that the people name is in the catalogue, and one that is not is told", () => {
  const broken = peopleText.replace("likes: [barbell-deadlift,", "likes: [barbell-deadlifts,");
  const result = readRoster(broken, "people.yaml", places, CATALOGUE);
  const line = broken.split("\n").findIndex((one) => one.includes("barbell-deadlifts")) + 1;
  expect(result.problems).toMatchObject([
    { code: "name/unknown", found: "barbell-deadlifts", line, column: 13, maybe: "barbell-deadlift" },
  ]);
  const offLadder = peopleText.replace("hinge: barbell-deadlift", "hinge: back-squat");
  expect(readRoster(offLadder, "people.yaml", places, CATALOGUE).problems).toMatchObject([
    { code: "person/off-ladder", found: "back-squat" },
  ]);
});

test("the twelve as they were drawn up: age on the first Monday, unit, place, minutes, what was stated", () => {
  const rows = people
    .slice(0, 12)
    .map((one) => [one.name, ageOn(one.born, START), one.units, one.place, one.minutes, statements(one).join(", ")]);
  expect(rows).toEqual([
    ["Tobiah Okonrell", 58, "kg", "ropewalk", 50, "pressure"],
    ["Wren Castellamor", 31, "kg", "wren-home", 35, "pregnant"],
    ["Yusra Halvani-Pyke", 44, "kg", "customs-house-gym", 40, "back"],
    ["Dagny Thistlemere", 72, "kg", "ropewalk", 45, "bone, floor 1"],
    ["Bao-Linh Merriwick", 19, "kg", "lantern-hall-14", 25, ""],
    ["Esteban Quarrelby", 37, "kg", "ropewalk", 45, ""],
    ["Priyamvada Lockhollow", 52, "kg", "lockhollow-garage", 40, "knee"],
    ["Kofi Amblenwe", 27, "lb", "ropewalk", 75, ""],
    ["Marguerite Duskwater", 66, "kg", "seawater-baths", 45, "shoulder, eye"],
    ["Ilario Penhallow-Sato", 41, "kg", "lorry-cab", 20, "wrist"],
    ["Niamh Oyelarrow", 15, "kg", "ropewalk", 45, "young"],
    ["Sölve Brackenrydge", 35, "kg", "ropewalk", 50, "seated"],
  ]);
});

test("their days", () => {
  expect(people.slice(0, 12).map((one) => windowDays(one) || `${one.cycle?.length} days`)).toEqual([
    "tue thu sat",
    "mon wed fri",
    "tue thu",
    "mon thu",
    "mon tue wed thu fri sat sun",
    "8 days",
    "mon wed sat",
    "mon tue thu fri",
    "tue fri",
    "mon tue wed thu fri sat",
    "wed sat",
    "mon wed fri",
  ]);
  expect(person("bao-linh").perWeek).toBe(3);
});

test("Esteban is on duty for the first four days of his rota and off for the last four", () => {
  const { cycle } = person("esteban");
  const off = Array.from({ length: 16 }, (_, i) => {
    const date = addDays(START, i);
    const at = (date - cycle!.anchor) % cycle!.length;
    return cycle!.days.some((one) => one.day === at && one.cost === 0) ? weekdayOf(date) : "-";
  });
  expect(off.join(" ")).toBe("mon - - - - sat sun mon tue - - - - sun mon tue");
});

test("everybody has a window as long as a session, and no window lies in hours when the place is shut", () => {
  for (const one of people) {
    const spans = one.cycle?.days ?? one.windows;
    expect(Math.max(...spans.map(({ from, to }) => to - from)), one.name).toBeGreaterThanOrEqual(one.minutes);
    for (const window of one.windows) {
      const place = places.find(({ id }) => id === (window.place ?? one.place))!;
      if (!place.open) continue;
      const open = place.open.some(
        (hours) => hours.day === window.day && hours.from <= window.from && window.to <= hours.to,
      );
      expect(open, `${one.name} ${window.day} at ${place.name}`).toBe(true);
    }
  }
});

test("on the first Monday every screening stands, every caution is in force and none is overdue", () => {
  for (const one of people) {
    if (one.screening) {
      expect(one.screening.on < START, one.name).toBe(true);
      expect(one.screening.until > addDays(START, 28), one.name).toBe(true);
    }
    for (const caution of one.cautions) {
      expect(caution.from <= START && caution.recheck > START, one.name).toBe(true);
    }
    for (const lift of one.lifts) expect(lift.on < START && START - lift.on < 60, one.name).toBe(true);
  }
});

test("a doctor asked and agreeing: Tobiah, Wren and Marguerite, none above moderate effort", () => {
  const asked = people.filter((one) => one.screening?.outcome === "ask a doctor first");
  expect(asked.map(({ id }) => id)).toEqual(["tobiah", "wren", "marguerite"]);
  for (const one of asked) expect(one.screening).toMatchObject({ agreed: {}, effort: "moderate" });
});

test("Wren is looked at again four weeks after she was last", () => {
  const [caution] = person("wren").cautions;
  expect(caution!.recheck - caution!.from).toBe(28);
});

test("the edges: a stop, a consent taken back, one name twice, one word, right to left", () => {
  expect(person("corvane").screening?.outcome).toBe("stop");
  expect(person("hesper").screening).toBeUndefined();
  expect(people.filter((one) => one.name === "Rowan Pellgarth")).toHaveLength(2);
  expect(person("tamsilune").name).not.toContain(" ");
  expect(person("layan").name).toMatch(/^[\p{Script=Arabic} ]+$/u);
});

test("all but Kofi begin as beginners; his lifts are in pounds", () => {
  for (const one of people) {
    expect(one.programme).toBe(one.id === "kofi" ? "slipway-strength" : "harbour-steps");
    expect(one.status === "novice").toBe(one.id !== "kofi");
  }
  expect(person("kofi").lifts.flatMap(({ load }) => load?.unit ?? [])).toEqual(["lb", "lb", "lb", "lb", "lb"]);
});

test("the Ropewalk Room has what it has", () => {
  const [room] = places;
  expect(room!.dumbbells!.loads.map(({ value }) => value)).toEqual([
    1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30, 32.5,
  ]);
  expect(room!.plates!.find(({ load }) => load.value === 1.25)!.pairs).toBe(1);
  expect(room!.kettlebells!.map(({ value }) => value)).toEqual([8, 12, 16, 20, 24]);
  expect(room!.equipment).toMatchObject({ rack: 2, barbell: 3, "adjustable bench": 2, cycle: 4, "rowing machine": 2 });
  const [outage] = room!.outages!;
  expect([outage!.from, outage!.to].map((date) => (day(date) - START) / 7)).toEqual([4, 4 + 6 / 7]);
});

test("every zone is one that the platform knows", () => {
  for (const { zone } of places) expect(new Intl.DateTimeFormat("en", { timeZone: zone })).toBeDefined();
});
