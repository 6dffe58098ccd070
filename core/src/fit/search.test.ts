import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { everyChoice, madeUpTasks } from "../testing/index.ts";
import { better, breach, comesFirst, score } from "./score.ts";
import { solve } from "./search.ts";
import type { FitTask, Option, Pick, Score } from "./task.ts";

/** Tries every choice there is, with the plain scorer; of equals the first in the stated order. */
function tryAll(task: FitTask): { choice: readonly Pick[]; score: Score } | undefined {
  let best: { choice: readonly Pick[]; score: Score } | undefined;
  for (const choice of everyChoice(task)) {
    if (breach(task, choice) !== undefined) continue;
    const found = score(task, choice);
    const equal = best !== undefined && found.must === best.score.must && found.want === best.score.want;
    if (best === undefined || better(found, best.score) || (equal && comesFirst(task, choice, best.choice)))
      best = { choice, score: found };
  }
  return best;
}

function agree(task: FitTask): void {
  const found = solve(task);
  const wanted = tryAll(task);
  expect(found && { must: found.must, want: found.want }).toEqual(
    wanted && { must: wanted.score.must, want: wanted.score.want },
  );
  expect(found?.choice).toEqual(wanted?.choice);
  if (found === undefined) return;
  expect(breach(task, found.choice)).toBeUndefined();
  expect(found).toMatchObject({ proven: true, bound: found.want, least: found.must });
}

const size = { sessions: 3, blocks: 4, rows: 3, options: 4 };

describe("the search finds what trying every choice finds: both levels and the choice among equals", () => {
  test("where open slots are the only musts", () => {
    fc.assert(fc.property(madeUpTasks({ ...size, musts: false }), agree), { numRuns: 300, seed: 1 });
  });

  test("where weekly bands are musts too", () => {
    fc.assert(fc.property(madeUpTasks({ ...size, musts: true }), agree), { numRuns: 300, seed: 2 });
  });

  test("where slots cannot stay open, so that there may be no plan", () => {
    const tasks = madeUpTasks({ ...size, musts: true, mayStayOpen: false });
    fc.assert(fc.property(tasks, agree), { numRuns: 300, seed: 3 });
  });
});

const OPEN: Option = {
  exercise: undefined,
  sets: 0,
  must: 10,
  want: 0,
  time: 0,
  rows: [],
  stations: [],
  rank: 9,
  lines: [{ id: "m", level: "must", points: -10, data: {} }],
};
const oneSlot = (...options: readonly Option[]): FitTask => ({
  capacity: [10],
  blocks: [{ session: 0, slots: ["s"], ways: [{ time: 0, steps: [options] }], atOnce: new Map() }],
  rows: [],
});

test("one open slot loses to any number of wants", () => {
  const poor: Option = { ...OPEN, exercise: "a", must: 0, want: -100_000, time: 1, lines: [] };
  expect(solve(oneSlot(OPEN, poor))).toMatchObject({ choice: [{ way: 0, options: [1] }], must: 0, want: -100_000 });
});

test("says that nothing fits when there is no way to leave a slot open", () => {
  expect(solve(oneSlot({ ...OPEN, must: 0, time: 11 }))).toBeUndefined();
});

test("a station that nobody counted is free, also for three forms at once beside one that was counted", () => {
  // Once gave the second way: a station without a count was taken to be there as often as the form has stations.
  const at = (...stations: readonly string[]): Option => ({ ...OPEN, must: 0, lines: [], rank: 0, stations });
  const steps = [[at("rack", "cable")], [at("cable", "press")], [at("rack", "cable")]];
  const later = [at(), at(), at()].map((option, step) => [step === 2 ? { ...option, rank: 1 } : option]);
  const task: FitTask = {
    capacity: [10],
    blocks: [
      {
        session: 0,
        slots: ["a", "b", "c"],
        ways: [
          { time: 0, steps },
          { time: 0, steps: later },
        ],
        atOnce: new Map([
          ["rack", 2],
          ["press", 1],
        ]),
      },
    ],
    rows: [],
  };
  expect(solve(task)?.choice).toEqual([{ way: 0, options: [0, 0, 0] }]);
});

test("a phase without sessions has an empty plan", () => {
  expect(solve({ capacity: [], blocks: [], rows: [] })).toMatchObject({ choice: [], must: 0, want: 0, proven: true });
});
