import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { better, breach, score } from "./score.ts";
import { solve } from "./search.ts";
import type { FitTask, Option, Score } from "./task.ts";

/** Tries every choice there is, with the plain scorer; ties go to the first in the stated order. */
function tryAll(task: FitTask): { choice: number[]; score: Score } | undefined {
  let best: { choice: number[]; score: Score } | undefined;
  const choice = task.blocks.map(() => 0);
  for (;;) {
    if (breach(task, choice) === undefined) {
      const found = score(task, choice);
      if (best === undefined || better(found, best.score)) best = { choice: [...choice], score: found };
    }
    let at = choice.length - 1;
    while (at >= 0 && choice[at] === task.blocks[at]!.options.length - 1) choice[at--] = 0;
    if (at < 0) return best;
    choice[at]!++;
  }
}

const option = (rows: number) =>
  fc
    .record({
      exercise: fc.constantFrom("a", "b", "c", "d", "e"),
      sets: fc.integer({ min: 1, max: 5 }),
      want: fc.integer({ min: -60, max: 200 }),
      time: fc.integer({ min: 1, max: 12 }),
      amounts: fc.array(fc.integer({ min: 0, max: 8 }), { minLength: rows, maxLength: rows }),
    })
    .map(
      ({ exercise, sets, want, time, amounts }): Option => ({
        fillings: [{ slot: "s", exercise }],
        sets,
        must: 0,
        want,
        time,
        rows: amounts.map((amount, row) => [row, amount] as const),
        lines: [{ id: "w", level: "want", points: want, data: {} }],
      }),
    );

const OPEN: Option = {
  fillings: [{ slot: "s", exercise: undefined }],
  sets: 0,
  must: 10,
  want: 0,
  time: 0,
  rows: [],
  lines: [{ id: "m", level: "must", points: -10, data: {} }],
};

const task = fc
  .tuple(
    fc.integer({ min: 1, max: 3 }),
    fc.array(
      fc.record({ low: fc.integer({ min: 0, max: 12 }), width: fc.integer({ min: 0, max: 8 }), must: fc.boolean() }),
      {
        minLength: 1,
        maxLength: 3,
      },
    ),
  )
  .chain(([sessions, bands]) =>
    fc.record({
      capacity: fc.array(fc.integer({ min: 5, max: 30 }), { minLength: sessions, maxLength: sessions }),
      blocks: fc
        .array(fc.array(option(bands.length), { minLength: 1, maxLength: 4 }), { minLength: sessions, maxLength: 6 })
        .map((list) =>
          list.map((options, index) => ({
            session: Math.floor((index * sessions) / list.length),
            options: [...options, OPEN],
          })),
        ),
      rows: fc.constant(
        bands.map(({ low, width, must }, index) => ({
          id: `row ${index}`,
          level: must ? ("must" as const) : ("want" as const),
          low,
          high: low + width,
          underPoints: 3,
          overPoints: 4,
        })),
      ),
    }),
  );

describe("the search", () => {
  test("finds what trying every choice finds: value, feasibility and the choice among equals", () => {
    fc.assert(
      fc.property(task, (t) => {
        const found = solve(t);
        const want = tryAll(t);
        expect(found?.choice).toEqual(want?.choice);
        expect(found && { must: found.must, want: found.want }).toEqual(
          want && { must: want.score.must, want: want.score.want },
        );
        if (found) {
          expect(found.proven).toBe(true);
          expect(found.bound).toBe(found.want);
          expect(breach(t, found.choice)).toBeUndefined();
        }
      }),
      { numRuns: 400 },
    );
  });

  test("one open slot loses to any number of wants", () => {
    const poor: Option = {
      ...OPEN,
      fillings: [{ slot: "s", exercise: "a" }],
      must: 0,
      want: -100_000,
      time: 1,
      lines: [],
    };
    const t: FitTask = { capacity: [10], blocks: [{ session: 0, options: [OPEN, poor] }], rows: [] };
    expect(solve(t)).toMatchObject({ choice: [1], must: 0, want: -100_000 });
  });

  test("says that nothing fits when there is no way to leave a slot open", () => {
    const long: Option = { ...OPEN, must: 0, time: 11 };
    expect(solve({ capacity: [10], blocks: [{ session: 0, options: [long] }], rows: [] })).toBeUndefined();
  });
});
