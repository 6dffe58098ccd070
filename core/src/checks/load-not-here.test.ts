/** Loads that a room cannot make ready. */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { type Place, readPlaces, readProgramme } from "../model/index.ts";
import { checkProgramme } from "./index.ts";
import { loadNotHere } from "./load-not-here.ts";

/** A week of sessions, each a list of what is done, as somebody writes them down. */
function plan(days: Readonly<Record<string, readonly string[]>>): string {
  const sessions = Object.entries(days).map(
    ([key, work]) =>
      `      - key: ${key}\n        title: ${key}\n        minutes: 90\n        work:\n${work.map((slot) => `          - { ${slot} }\n`).join("")}`,
  );
  return `stave: 1\nid: brought\ntitle: Brought\nversion: 1\ngoal: size\nstatus: intermediate\nunits: kg\nphases:\n  - key: all\n    title: All\n    weeks: 6\n    sessions:\n${sessions.join("")}`;
}

const bench = "slot: bench, pattern: horizontal push, first: barbell-bench-press";

describe("loads of the room: 20 kg bar, one pair each of 20, 10 and 5 kg, dumbbells of 4, 6, 8 and 20 kg", () => {
  const read = readPlaces(
    `stave: 1\nplaces:\n  - id: room\n    name: The room\n    zone: Europe/Vienna\n    has: { bench: 1, rack: 1 }\n    bars: [20 kg]\n    plates: { 20 kg: 1, 10 kg: 1, 5 kg: 1 }\n    dumbbells: { pairs: [4 kg, 6 kg, 8 kg, 20 kg] }\n`,
    "places.yaml",
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const room = read.value.value[0]!;
  const about = (slot: string, place: Place = room) => {
    const programme = readProgramme(plan({ mon: [slot] }), "x.yaml");
    if (!programme.ok) throw new Error(JSON.stringify(programme.problems));
    const { findings } = checkProgramme({ programme: programme.value.programme, catalogue: CATALOGUE, place });
    return findings.filter(({ check }) => check === loadNotHere.id);
  };

  // 20 + 2 × (20 + 10 + 5) = 90 at most; 20 + 2 × 20 = 60 and 20 + 2 × (20 + 5) = 70 are the sums around 62.5.
  test("62.5 kg cannot be made on the bar: 60 and 70 beside it, and the easier is offered", () => {
    const [found] = about(`${bench}, dose: "3 × 8 @62.5 kg"`);
    expect(found?.data).toMatchObject({ down: { value: 60, unit: "kg" }, up: { value: 70, unit: "kg" } });
    expect(found?.remedies.map(({ data }) => data["to"])).toEqual(["3 × 8 @60 kg"]);
    expect(about(`${bench}, dose: "3 × 8 @60 kg"`)).toEqual([]);
  });
  test("under the empty bar there is no easier neighbour, and none is offered", () => {
    const [found] = about(`${bench}, dose: "3 × 8 @15 kg"`);
    expect(found?.data).toMatchObject({ down: null, up: { value: 20, unit: "kg" } });
    expect(found?.remedies).toEqual([]);
  });
  test("a place that lists nothing is not judged", () => {
    const { plates: _, bars: __, dumbbells: ___, ...bare } = room;
    expect(about(`${bench}, dose: "3 × 8 @62.5 kg"`, bare)).toEqual([]);
  });
});
