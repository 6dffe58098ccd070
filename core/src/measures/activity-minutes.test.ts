import { expect, test } from "vitest";
import type { Conditioning, Dose } from "../model/index.ts";
import { madeUpSession, published, reps, sets, timeOf } from "../testing/index.ts";
import { activityMinutes } from "./activity-minutes.ts";

const week = (...items: readonly (readonly [minutes: number, effort: Conditioning["effort"]])[]) =>
  items.map(([minutes, effort], index) =>
    madeUpSession(`s${index}`, 60, [], { conditioning: [{ do: "walk", dose: sets(1, timeOf(60 * minutes)), effort }] }),
  );

published("who2020", "moderate minutes of a mixed week", [
  ["worked", "1 vigorous = 2 moderate", () => activityMinutes(week([90, "easy"], [40, "hard"])).equivalent, 170, 0],
  ["worked", "1 vigorous = 2 moderate", () => activityMinutes(week([60, "steady"], [40, "hard"])).equivalent, 140, 0],
]);

test("a range counts with its middle, bouts without their rests, and what is not timed is said", () => {
  const item = (dose: Dose) => [madeUpSession("a", 60, [], { conditioning: [{ do: "run", dose, effort: "steady" }] })];
  expect(activityMinutes(item(sets(1, timeOf({ from: 600, to: 1200 })))).moderate).toBe(15);
  expect(activityMinutes(item(sets(10, timeOf(60), { restS: 60 }))).moderate).toBe(10);
  expect(activityMinutes(item(sets(2, reps(20))))).toEqual({ moderate: 0, vigorous: 0, equivalent: 0, unknown: 2 });
});

test("nothing is asked, nothing is counted", () => {
  expect(activityMinutes([madeUpSession("a", 60, [])])).toMatchObject({ equivalent: 0, unknown: 0 });
});

test("items of all sessions add up, easy and steady ones as moderate", () => {
  expect(activityMinutes(week([10, "easy"], [20, "steady"], [5, "hard"], [6, "hard"]))).toEqual({
    moderate: 30,
    vigorous: 11,
    equivalent: 52,
    unknown: 0,
  });
});

test("of running and walking in turn the bouts count by their effort and the walks between as moderate", () => {
  const item = (effort: Conditioning["effort"]) => [
    madeUpSession("a", 60, [], { conditioning: [{ slot: "run", runWalk: 2, do: "run", effort }] }),
  ];
  // Level 2, by hand: 10 × 1 min of running, 9 × 1 min of walking.
  expect(activityMinutes(item("steady"))).toEqual({ moderate: 19, vigorous: 0, equivalent: 19, unknown: 0 });
  expect(activityMinutes(item("hard"))).toEqual({ moderate: 9, vigorous: 10, equivalent: 29, unknown: 0 });
});
