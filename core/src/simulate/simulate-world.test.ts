import { describe, expect, test } from "vitest";
import { OURS } from "./estimator.ts";
import { simulateWorld } from "./simulate-world.ts";
import { WORLDS } from "./world.ts";

const SIZE = { people: 4, weeks: 16, seed: 5 };

describe("one world", () => {
  test("the same arguments give the same figures; another seed gives others", () => {
    const [matched] = WORLDS;
    const found = simulateWorld(matched!, SIZE, OURS);
    expect(found).toEqual(simulateWorld(matched!, SIZE, OURS));
    expect(found).not.toEqual(simulateWorld(matched!, { ...SIZE, seed: 6 }, OURS));
    expect(found).toMatchObject({ world: "matched", ...SIZE });
  });
  test.each(WORLDS.map((world) => [world.id, world] as const))(
    "%s: every figure lies in its own interval",
    (_, world) => {
      const { forecast, coverage, outcome } = simulateWorld(world, SIZE, OURS);
      const { ours, plain, less } = outcome;
      const all = [
        ...Object.values(forecast!.error),
        ...Object.values(forecast!.bias),
        forecast!.ratio,
        ...Object.values(coverage!.covers),
        ...Object.values(coverage!.width),
        coverage!.score,
        ...Object.values(ours),
        ...Object.values(plain),
        ...Object.values(less),
      ];
      for (const { low, value, high } of all) expect(low <= value && value <= high).toBe(true);
    },
  );
  test("Stave takes steps up where people gain fast, and says how sure it is of most of them", () => {
    const world = WORLDS.find(({ id }) => id === "fast gains")!;
    const { outcome, certainty } = simulateWorld(world, { people: 4, weeks: 30, seed: 5 }, OURS);
    expect(outcome.ours.steps.value).toBeGreaterThan(2);
    expect(certainty.steps.length).toBeGreaterThan(0);
  });
  test("who trains too short a time has no forecasts, and so none are judged", () => {
    const { forecast, coverage } = simulateWorld(WORLDS[0]!, { people: 2, weeks: 2, seed: 1 }, OURS);
    expect([forecast, coverage]).toEqual([undefined, undefined]);
  });
});
