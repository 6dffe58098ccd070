import fc from "fast-check";
import type { BlockTask, FitTask, Option, Pick } from "../fit/index.ts";

const line = (level: "must" | "want", points: number) => (points === 0 ? [] : [{ id: level, level, points, data: {} }]);

function option(rows: number, ranks: number): fc.Arbitrary<Option> {
  return fc
    .record({
      exercise: fc.option(fc.constantFrom("a", "b", "c", "d", "e"), { nil: undefined, freq: 9 }),
      sets: fc.integer({ min: 1, max: 5 }),
      must: fc.constantFrom(0, 0, 0, 0, 1, 4),
      want: fc.integer({ min: -6, max: 20 }).map((tens) => 10 * tens),
      time: fc.integer({ min: 0, max: 12 }),
      amounts: fc.array(fc.integer({ min: -4, max: 8 }), { minLength: rows, maxLength: rows }),
      stations: fc.subarray(["rack", "cable", "press"], { maxLength: 2 }),
      rank: fc.integer({ min: 0, max: ranks }),
    })
    .map(
      ({ must, want, amounts, ...rest }): Option => ({
        ...rest,
        must,
        want,
        rows: amounts.flatMap((amount, row) => (amount === 0 ? [] : [[row, amount] as const])),
        lines: [...line("must", -must), ...line("want", want)],
      }),
    );
}

/** Leaves everything open, so that there always is a plan. */
function open(slots: number): BlockTask["ways"][number] {
  const nothing: Option = {
    exercise: undefined,
    sets: 0,
    must: 10,
    want: 0,
    time: 0,
    rows: [],
    stations: [],
    rank: 9,
    lines: line("must", -10),
  };
  return { time: 0, steps: Array.from({ length: slots }, () => [nothing]) };
}

function block(rows: number, options: number, mayStayOpen: boolean): fc.Arbitrary<Omit<BlockTask, "session">> {
  return fc.integer({ min: 1, max: 3 }).chain((slots) => {
    const step = fc.array(option(rows, 3), { minLength: 1, maxLength: slots === 1 ? options : Math.ceil(options / 2) });
    const way = fc.record({
      time: fc.integer({ min: 0, max: 4 }),
      steps: fc.array(step, { minLength: slots, maxLength: slots }),
    });
    return fc.record({
      slots: fc.constant(Array.from({ length: slots }, (_, slot) => `slot ${slot}`)),
      ways: fc
        .array(way, { minLength: 1, maxLength: slots === 1 ? 1 : 2 })
        .map((ways) => (mayStayOpen ? [...ways, open(slots)] : ways)),
      atOnce: fc.constantFrom(
        new Map([["rack", 1]]),
        new Map([["cable", 1]]),
        new Map([
          ["rack", 2],
          ["press", 1],
        ]),
        new Map(),
      ),
    });
  });
}

export interface TaskSize {
  readonly sessions: number;
  readonly blocks: number;
  readonly rows: number;
  readonly options: number;
  /** Whether weekly sums may be musts. */
  readonly musts: boolean;
  readonly mayStayOpen?: boolean;
}

/** Made-up tasks with everything that a task may have: pairs, rounds, repeats, stations, bands of both levels, ties. */
export function madeUpTasks({ mayStayOpen = true, ...size }: TaskSize): fc.Arbitrary<FitTask> {
  return fc
    .record({
      sessions: fc.integer({ min: 1, max: size.sessions }),
      bands: fc.array(
        fc.record({
          low: fc.integer({ min: -8, max: 16 }),
          width: fc.integer({ min: 0, max: 8 }),
          must: size.musts ? fc.constantFrom(true, false, false) : fc.constant(false),
          under: fc.integer({ min: 1, max: 4 }),
          over: fc.integer({ min: 1, max: 4 }),
        }),
        { minLength: 1, maxLength: size.rows },
      ),
      stations: fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined }),
    })
    .chain(({ sessions, bands, stations }) =>
      fc.record({
        capacity: fc.array(fc.integer({ min: 4, max: 40 }), { minLength: sessions, maxLength: sessions }),
        blocks: fc
          .array(block(bands.length, size.options, mayStayOpen), {
            minLength: sessions,
            maxLength: Math.max(sessions, size.blocks),
          })
          .map((list) => list.map((one, index) => ({ ...one, session: Math.floor((index * sessions) / list.length) }))),
        rows: fc.constant(
          bands.map(({ low, width, must, under, over }, index) => ({
            id: `row ${index}`,
            level: must ? ("must" as const) : ("want" as const),
            low,
            high: low + width,
            underPoints: must ? 1 : under,
            overPoints: must ? 1 : over,
          })),
        ),
        ...(stations === undefined ? {} : { stations: fc.constant(stations) }),
      }),
    );
}

/** Every pick of a block, in the stated order. */
function picksOf({ ways }: BlockTask): readonly Pick[] {
  return ways.flatMap(({ steps }, way) =>
    steps
      .reduce<readonly (readonly number[])[]>(
        (made, step) => made.flatMap((start) => step.map((_, option) => [...start, option])),
        [[]],
      )
      .map((options) => ({ way, options })),
  );
}

/** Every choice there is, in the stated order; only for small tasks. */
export function* everyChoice(task: FitTask): Generator<readonly Pick[]> {
  const picks = task.blocks.map(picksOf);
  const at = picks.map(() => 0);
  for (;;) {
    yield at.map((index, block) => picks[block]![index]!);
    let block = at.length - 1;
    while (block >= 0 && at[block] === picks[block]!.length - 1) at[block--] = 0;
    if (block < 0) return;
    at[block]!++;
  }
}
