/** Loads that a room cannot make ready. */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../exercises/index.ts";
import { type Place, readProgramme } from "../model/index.ts";
import { broughtPlan, sparseRoom } from "../testing/index.ts";
import { checkProgramme } from "./index.ts";
import { loadNotHere } from "./load-not-here.ts";

const bench = "slot: bench, pattern: horizontal push, first: barbell-bench-press";

describe("loads of the room: 20 kg bar, one pair each of 20, 10 and 5 kg, dumbbells of 4, 6, 8 and 20 kg", () => {
  const room = sparseRoom();
  const about = (slot: string, place: Place = room) => {
    const programme = readProgramme(broughtPlan({ mon: [slot] }), "x.yaml");
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
