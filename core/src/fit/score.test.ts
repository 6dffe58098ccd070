import { describe, expect, test } from "vitest";
import { better, breach, comesFirst, rowPoints, score } from "./score.ts";
import type { BlockTask, FitTask, Option, Pick, Row } from "./task.ts";

const row = (more: Partial<Row> = {}): Row => ({
  id: "chest",
  muscle: "chest",
  level: "want",
  low: 16,
  high: 40,
  underPoints: 3,
  overPoints: 4,
  ...more,
});

function option(exercise: string | undefined, more: Partial<Option> = {}): Option {
  return { exercise, sets: 3, must: 0, want: 0, time: 10, rows: [], stations: [], rank: 0, lines: [], ...more };
}

function block(
  slots: readonly string[],
  steps: readonly (readonly Option[])[],
  more: Partial<BlockTask> = {},
): BlockTask {
  return { session: 0, slots, ways: [{ time: 0, steps }], atOnce: new Map(), ...more };
}

const task = (blocks: readonly BlockTask[], more: Partial<FitTask> = {}): FitTask => ({
  capacity: [100, 100],
  blocks,
  rows: [],
  ...more,
});
const first = (...counts: readonly number[]): readonly Pick[] =>
  counts.map((count) => ({ way: 0, options: Array.from({ length: count }, () => 0) }));

describe("points of a weekly sum", () => {
  test("none inside the band and at its ends, so many for each unit outside", () => {
    expect([16, 17, 40].map((amount) => rowPoints(row(), amount))).toEqual([0, 0, 0]);
    expect([15, 0, 41, 50].map((amount) => rowPoints(row(), amount))).toEqual([3, 48, 4, 40]);
  });
});

describe("what nothing may break", () => {
  test("a form twice in a session; in two sessions it may", () => {
    const one = block(["a"], [[option("squat")]]);
    expect(breach(task([one, one]), first(1, 1))).toBe("fit/same-exercise-twice");
    expect(breach(task([block(["a", "b"], [[option("squat")], [option("squat")]])]), first(2))).toBe(
      "fit/same-exercise-twice",
    );
    expect(breach(task([one, { ...one, session: 1 }]), first(1, 1))).toBeUndefined();
    const open = block(["a"], [[option(undefined)]]);
    expect(breach(task([open, open]), first(1, 1))).toBeUndefined();
  });

  test("a session that is longer than it may be, by its options and by what its ways take", () => {
    const long = block(["a"], [[option("squat", { time: 60 })]]);
    const other = block(["b"], [[option("row", { time: 40 })]]);
    expect(breach(task([long, other]), first(1, 1))).toBeUndefined();
    const later = { ...other, ways: [{ time: 1, steps: other.ways[0]!.steps }] };
    expect(breach(task([long, later]), first(1, 1))).toBe("fit/session-too-long");
    expect(breach(task([long, { ...later, session: 1 }]), first(1, 1))).toBeUndefined();
  });

  test("more forms at a station at once than there are of it; one after the other they may", () => {
    const at = (exercise: string) => option(exercise, { stations: ["rack"] });
    const pair = (count: number) =>
      block(["a", "b"], [[at("squat")], [at("press")]], { atOnce: new Map([["rack", count]]) });
    expect(breach(task([pair(1)]), first(2))).toBe("fit/station-taken");
    expect(breach(task([pair(2)]), first(2))).toBeUndefined();
    const single = (exercise: string) => block(["a"], [[at(exercise)]], { atOnce: new Map([["rack", 1]]) });
    expect(breach(task([single("squat"), single("press")]), first(1, 1))).toBeUndefined();
  });

  test("more different stations in a session than somebody said", () => {
    const at = (exercise: string, ...stations: readonly string[]) => block(["a"], [[option(exercise, { stations })]]);
    const three = [at("a", "rack"), at("b", "cable"), at("c", "rack", "press")];
    const picks = first(1, 1, 1);
    expect(breach(task(three, { stations: 3 }), picks)).toBeUndefined();
    expect(breach(task(three, { stations: 2 }), picks)).toBe("fit/too-many-stations");
    expect(breach(task(three), picks)).toBeUndefined();
    const apart = three.map((each, index) => ({ ...each, session: index % 2 }));
    expect(breach(task(apart, { stations: 2 }), picks)).toBeUndefined();
  });
});

describe("the score", () => {
  const worth = (points: number, level: "must" | "want" = "want") => ({
    id: `${level} ${points}`,
    level,
    points,
    data: {},
  });

  test("is the sum of all lines, each with the slot it stands in", () => {
    const blocks = [
      block(["a"], [[option("squat", { lines: [worth(100), worth(-8)] })]]),
      block(
        ["b", "c"],
        [[option("row", { lines: [worth(60)] })], [option(undefined, { lines: [worth(-10, "must")] })]],
      ),
    ];
    const found = score(task(blocks), first(1, 2));
    expect(found).toMatchObject({ must: 10, want: 152 });
    expect(found.lines.map(({ slot, points }) => [slot, points])).toEqual([
      ["a", 100],
      ["a", -8],
      ["b", 60],
      ["c", -10],
    ]);
  });

  test("counts weekly sums over all sessions, a must as must and a want as want, and says which row and by how much", () => {
    const adds = (amount: number, ...also: readonly (readonly [number, number])[]) =>
      block(["a"], [[option("a", { rows: [[0, amount], ...also] })]]);
    const rows = [row(), row({ id: "lats", level: "must", underPoints: 1, overPoints: 1 }), row({ id: "push − pull" })];
    const { muscle: _, ...balance } = rows[2]!;
    const found = score(
      task([adds(6), { ...adds(7, [1, 50]), session: 1 }], { rows: [rows[0]!, rows[1]!, balance] }),
      first(1, 1),
    );
    // 13 of at least 16: 3 × 3. 50 of at most 40: 10 × 1. Nothing of at least 16: 16 × 3.
    expect(found).toMatchObject({ must: 10, want: -57 });
    expect(found.lines).toEqual([
      { id: "fit/weekly-sets", level: "want", points: -9, data: { row: "chest", amount: 13, low: 16, high: 40 } },
      { id: "fit/weekly-sets", level: "must", points: -10, data: { row: "lats", amount: 50, low: 16, high: 40 } },
      { id: "fit/balance", level: "want", points: -48, data: { row: "push − pull", amount: 0, low: 16, high: 40 } },
    ]);
  });

  test("compares musts first, then wants", () => {
    expect(better({ must: 0, want: -100 }, { must: 1, want: 100 })).toBe(true);
    expect(better({ must: 1, want: 100 }, { must: 0, want: -100 })).toBe(false);
    expect(better({ must: 1, want: 5 }, { must: 1, want: 4 })).toBe(true);
    expect(better({ must: 1, want: 4 }, { must: 1, want: 4 })).toBe(false);
  });
});

describe("the stated order of equals", () => {
  const two = block(["a"], [[option("x", { rank: 2 }), option("y", { rank: 0 }), option("z", { rank: 2 })]]);
  const pick = (...options: readonly number[]): readonly Pick[] =>
    options.map((index) => ({ way: 0, options: [index] }));

  test("the least sum of ranks first", () => {
    const all = task([two, two]);
    expect(comesFirst(all, pick(1, 0), pick(0, 0))).toBe(true);
    expect(comesFirst(all, pick(0, 0), pick(1, 0))).toBe(false);
  });

  test("then, block by block, the earlier way and the earlier option; none stands before itself", () => {
    const all = task([two, two]);
    expect(comesFirst(all, pick(0, 1), pick(1, 0))).toBe(true);
    expect(comesFirst(all, pick(1, 0), pick(0, 1))).toBe(false);
    expect(comesFirst(all, pick(0, 1), pick(0, 1))).toBe(false);
    const ways = { ...two, ways: [...two.ways, ...two.ways] };
    expect(comesFirst(task([ways]), [{ way: 0, options: [2] }], [{ way: 1, options: [0] }])).toBe(true);
  });
});
