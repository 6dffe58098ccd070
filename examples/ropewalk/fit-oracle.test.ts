import { readFileSync } from "node:fs";
import loadHighs from "highs";
import { expect, test } from "vitest";
import { breach, build, type FitTask, score, solve } from "../../core/src/fit/index.ts";
import { fitTask } from "../../core/src/revise/index.ts";
import { fitModel, type ModelGoal } from "../../core/src/testing/index.ts";
import { readRoom, START } from "./plan-everybody.ts";

const text = (name: string) => readFileSync(new URL(name, import.meta.url), "utf8");
const room = readRoom({
  people: text("people.yaml"),
  places: text("places.yaml"),
  programmes: [text("harbour-steps.yaml"), text("slipway-strength.yaml")],
});
const highs = await loadHighs();

function most(task: FitTask, goal: ModelGoal): number {
  const { Status, ObjectiveValue } = highs.solve(fitModel(task, goal), { mip_rel_gap: 0, mip_abs_gap: 0.5 });
  expect(Status).toBe("Optimal");
  return Math.round(ObjectiveValue);
}

for (const person of room.people) {
  test(`${person.name}, ${person.id}: HiGHS, a general solver, finds no better plan`, () => {
    const place = room.places.find(({ id }) => id === person.place)!;
    const programme = room.programmes.find(({ id }) => id === person.programme)!;
    const made = { engine: "test", catalogue: "test", state: person.id, decisions: "none" };
    const { catalogue, places: others } = room;
    const input = { programme, person, place, others, catalogue, on: START, made, programmeHash: programme.id };
    const { task } = build(fitTask(input, 0));
    const found = solve(task)!;
    expect(breach(task, found.choice)).toBeUndefined();
    const { must, want } = score(task, found.choice);
    expect(found).toMatchObject({ must, want, least: must, bound: want, proven: true });
    // The solver may say −0; adding 0 makes it 0.
    expect(most(task, { least: "must" }) + 0).toBe(must);
    expect(most(task, { most: "want", must })).toBe(want);
  });
}
