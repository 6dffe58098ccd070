/** Steps to the next load that a room has. */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { type Place, readProgramme } from "../model/index.ts";
import { broughtPlan, sparseRoom } from "../testing/index.ts";
import { sayFinding } from "../text/index.ts";
import { checkProgramme } from "./index.ts";
import { noNextLoad } from "./no-next-load.ts";

const bench = "slot: bench, pattern: horizontal push, first: barbell-bench-press";
const press = "slot: press, pattern: vertical push, first: dumbbell-press-seated";

describe("loads of the room: 20 kg bar, one pair each of 20, 10 and 5 kg, dumbbells of 4, 6, 8 and 20 kg", () => {
  const room = sparseRoom();
  const about = (slot: string, place: Place = room) => {
    const programme = readProgramme(broughtPlan({ mon: [slot] }), "x.yaml");
    if (!programme.ok) throw new Error(JSON.stringify(programme.problems));
    const { findings } = checkProgramme({ programme: programme.value.programme, catalogue: CATALOGUE, place });
    return findings.filter(({ check }) => check === noNextLoad.id);
  };
  // acsm2009: a load is raised by 2 to 10 %. 8 to 20 kg is 150 % more, 60 to 70 is 17 %.
  test("8 kg dumbbells, and the next pair weighs 20: the load cannot carry the progress", () => {
    const [found] = about(`${press}, dose: "3 × 8 @8 kg", way: load`);
    expect(found?.data).toMatchObject({ next: { value: 20, unit: "kg" }, percent: 150 });
    expect(about(`${bench}, dose: "3 × 8 @60 kg"`)[0]?.data).toMatchObject({ percent: 17 });
  });
  test("nothing heavier than 20 kg", () => {
    const [found] = about(`${press}, dose: "3 × 8 @20 kg"`);
    expect(found?.data).toMatchObject({ next: null });
    expect(sayFinding(found!)).toContain("0 loads heavier than 20 kg");
  });
  test("neighbours: a usual step, a way that needs no load, a place that lists nothing", () => {
    const fine = { ...room, plates: [...room.plates!, { load: { value: 1.25, unit: "kg" } as const, pairs: 1 }] };
    expect(about(`${bench}, dose: "3 × 8 @60 kg"`, fine)).toEqual([]);
    expect(about(`${press}, dose: "3 × 8 @8 kg", way: stay`)).toEqual([]);
    const { plates: _, bars: __, dumbbells: ___, ...bare } = room;
    expect(about(`${press}, dose: "3 × 8 @8 kg"`, bare)).toEqual([]);
  });
});
