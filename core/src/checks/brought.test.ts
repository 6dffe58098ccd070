/** Plans as people bring them: without doses, with loads that the room does not have, with steps too far apart. */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { type Place, readBrought, readPlaces, readProgramme } from "../model/index.ts";
import { sayFinding } from "../text/index.ts";
import { checkProgramme } from "./index.ts";

/** A week of sessions, each a list of what is done, as somebody writes them down. */
function plan(days: Readonly<Record<string, readonly string[]>>): string {
  const sessions = Object.entries(days).map(
    ([key, work]) =>
      `      - key: ${key}\n        title: ${key}\n        minutes: 90\n        work:\n${work.map((slot) => `          - { ${slot} }\n`).join("")}`,
  );
  return `stave: 1\nid: brought\ntitle: Brought\nversion: 1\ngoal: size\nstatus: intermediate\nunits: kg\nphases:\n  - key: all\n    title: All\n    weeks: 6\n    sessions:\n${sessions.join("")}`;
}

function said(text: string, place?: Place) {
  const read = readBrought(text, "brought.yaml");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { programme, unsaid } = read.value;
  return checkProgramme({
    programme,
    catalogue: CATALOGUE,
    ...(place === undefined ? {} : { place }),
    ...(unsaid.length === 0 ? {} : { unsaid }),
  }).findings;
}

const bench = "slot: bench, pattern: horizontal push, first: barbell-bench-press";
const curl = "slot: curl, pattern: upper isolation, first: dumbbell-curl";
const row = "slot: row, pattern: horizontal pull, first: cable-row-seated";
const squat = "slot: squat, pattern: squat, first: back-squat";

describe("chest, legs and back on three days, and not a word of sets, repetitions or loads (a real question asks so)", () => {
  const findings = said(plan({ mon: [bench], wed: [squat], fri: [row, curl] }));

  test("the first word is what is missing, and what to ask: also sleep, and what has stopped rising", () => {
    expect(findings[0]).toMatchObject({ check: "programme/cannot-judge", data: { side: "dose", doses: 4, of: 4 } });
    expect(sayFinding(findings[0]!)).toMatch(/Cannot judge.*dose of 4 of 4 slots.*sleep.*stopped rising/);
  });
  test("what needs no dose is said: once a week for a muscle, without a number of sets nobody gave", () => {
    const once = findings.find(({ check }) => check === "week/muscle-once")!;
    expect(sayFinding(once)).toContain("chest (in “mon”)");
    expect(sayFinding(once)).not.toMatch(/\d sets/);
    expect(findings.map(({ check }) => check)).toContain("week/pattern-never-trained");
  });
  test("and nothing that a stand-in would make up: no minutes, rests, loads or numbers of sets", () => {
    const made = ["session/over-its-minutes", "dose/rest-too-short", "week/sets-outside-band", "session/first-dose"];
    expect(findings.filter(({ check }) => made.includes(check))).toEqual([]);
  });
  test("neighbour: with one dose said the others are still asked, with all of them nothing is", () => {
    expect(said(plan({ mon: [`${bench}, dose: "3 × 8"`, row] }))[0]?.data).toMatchObject({ doses: 1, of: 2 });
    const whole = said(plan({ mon: [`${bench}, dose: "3 × 8"`] }));
    expect(whole.filter(({ data }) => data["side"] === "dose")).toEqual([]);
  });
  test("whatever else is missing is still a problem of the file, and no stand-in helps a plan that is printed", () => {
    const text = plan({ mon: [bench] });
    expect(readBrought(text.replace("goal: size\n", ""), "x.yaml").ok).toBe(false);
    expect(readBrought(text.replace("minutes: 90", "minutes: soon"), "x.yaml").ok).toBe(false);
    expect(readProgramme(text, "x.yaml").ok).toBe(false);
  });
});

describe("loads of the room: 20 kg bar, one pair each of 20, 10 and 5 kg, dumbbells of 4, 6, 8 and 20 kg", () => {
  const read = readPlaces(
    `stave: 1\nplaces:\n  - id: room\n    name: The room\n    zone: Europe/Vienna\n    has: { bench: 1, rack: 1 }\n    bars: [20 kg]\n    plates: { 20 kg: 1, 10 kg: 1, 5 kg: 1 }\n    dumbbells: { pairs: [4 kg, 6 kg, 8 kg, 20 kg] }\n`,
    "places.yaml",
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const room = read.value.value[0]!;
  const press = "slot: press, pattern: vertical push, first: dumbbell-press-seated";
  const about = (check: string, slot: string) =>
    said(plan({ mon: [slot] }), room).filter((finding) => finding.check === check);

  // 20 + 2 × (20 + 10 + 5) = 90 at most; 20 + 2 × 20 = 60 and 20 + 2 × (20 + 5) = 70 are the sums around 62.5.
  test("62.5 kg cannot be made on the bar: 60 and 70 beside it, and the easier is offered", () => {
    const [found] = about("slot/load-not-here", `${bench}, dose: "3 × 8 @62.5 kg"`);
    expect(found?.data).toMatchObject({ down: { value: 60, unit: "kg" }, up: { value: 70, unit: "kg" } });
    expect(found?.remedies.map(({ data }) => data["to"])).toEqual(["3 × 8 @60 kg"]);
    expect(about("slot/load-not-here", `${bench}, dose: "3 × 8 @60 kg"`)).toEqual([]);
  });
  test("under the empty bar there is no easier neighbour, and none is offered", () => {
    const [found] = about("slot/load-not-here", `${bench}, dose: "3 × 8 @15 kg"`);
    expect(found?.data).toMatchObject({ down: null, up: { value: 20, unit: "kg" } });
    expect(found?.remedies).toEqual([]);
  });
  // acsm2009: a load is raised by 2 to 10 %. 8 to 20 kg is 150 % more, 60 to 70 is 17 %.
  test("8 kg dumbbells, and the next pair weighs 20: the load cannot carry the progress", () => {
    const [found] = about("slot/no-next-load", `${press}, dose: "3 × 8 @8 kg", way: load`);
    expect(found?.data).toMatchObject({ next: { value: 20, unit: "kg" }, percent: 150 });
    expect(about("slot/no-next-load", `${bench}, dose: "3 × 8 @60 kg"`)[0]?.data).toMatchObject({ percent: 17 });
  });
  test("nothing heavier than 20 kg", () => {
    const [found] = about("slot/no-next-load", `${press}, dose: "3 × 8 @20 kg"`);
    expect(found?.data).toMatchObject({ next: null });
    expect(sayFinding(found!)).toContain("0 loads heavier than 20 kg");
  });
  test("neighbours: a usual step, a way that needs no load, a place that lists nothing", () => {
    const fine = { ...room, plates: [...room.plates!, { load: { value: 1.25, unit: "kg" } as const, pairs: 1 }] };
    const { programme } = (
      readProgramme(plan({ mon: [`${bench}, dose: "3 × 8 @60 kg"`] }), "x.yaml") as never as {
        value: { programme: never };
      }
    ).value;
    const found = checkProgramme({ programme, catalogue: CATALOGUE, place: fine }).findings;
    expect(found.filter(({ check }) => check === "slot/no-next-load")).toEqual([]);
    expect(about("slot/no-next-load", `${press}, dose: "3 × 8 @8 kg", way: stay`)).toEqual([]);
    const { plates: _, bars: __, dumbbells: ___, ...bare } = room;
    const unlisted = checkProgramme({ programme, catalogue: CATALOGUE, place: bare }).findings;
    expect(unlisted.filter(({ check }) => check.startsWith("slot/load-not"))).toEqual([]);
  });
});
