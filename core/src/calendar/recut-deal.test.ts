import { expect, test } from "vitest";
import { type DealTask, deal, type Levels, levelsOf } from "./recut-deal.ts";

/** Three muscles, two or three sessions, up to six parts; the same for the same seed. */
function smallDeal(seed: number): DealTask {
  let state = seed * 2_654_435_761;
  const below = (n: number) => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    return (state >> 8) % n;
  };
  const sessions = 2 + below(2);
  const close =
    sessions === 2
      ? [[0, 1] as const]
      : (
          [
            [0, 1],
            [1, 2],
            [0, 2],
          ] as const
        ).slice(0, 1 + below(3));
  return {
    parts: Array.from({ length: 2 + below(5) }, () => ({
      hard: [below(4), below(2) * 3, below(3)],
      seconds: 200 + 100 * below(4),
      lane: ["push", "pull", "squat"][below(3)]!,
      home: below(sessions),
    })),
    fixed: Array.from({ length: sessions }, () => 60 * below(4)),
    limit: 600 + 100 * below(8),
    close,
    hardSets: 3,
  };
}

function less(a: Levels, b: Levels): boolean {
  for (let level = 0; level < a.length; level++) if (a[level] !== b[level]) return a[level]! < b[level]!;
  return false;
}

/** The best levels of all deals, by counting through them. */
function bestOfAll(task: DealTask): Levels {
  const count = task.fixed.length ** task.parts.length;
  let best: Levels | undefined;
  for (let n = 0; n < count; n++) {
    const sessions = task.parts.map((_, p) => Math.floor(n / task.fixed.length ** p) % task.fixed.length);
    const levels = levelsOf(task, sessions);
    if (!best || less(levels, best)) best = levels;
  }
  return best!;
}

test("300 small deals: no deal at all is better, and the levels are those of the deal", () => {
  let mended = 0;
  for (let seed = 1; seed <= 300; seed++) {
    const task = smallDeal(seed);
    const got = deal(task);
    expect.soft(got.levels, `seed ${seed}`).toEqual(bestOfAll(task));
    expect.soft(levelsOf(task, got.sessions), `seed ${seed}`).toEqual(got.levels);
    expect.soft(got.proven, `seed ${seed}`).toBe(true);
    if (
      levelsOf(
        task,
        task.parts.map(({ home }) => home),
      )[1] > got.levels[1]
    )
      mended++;
  }
  expect(mended, "the deals would not test close pairs").toBeGreaterThan(50);
});

test("levels counted by hand", () => {
  const part = { hard: [3, 0], seconds: 600, lane: "squat", home: 0 };
  const task: DealTask = {
    parts: [part, { ...part, home: 1 }, { ...part, hard: [0, 2], lane: "push", home: 1 }],
    fixed: [0, 300],
    limit: 1200,
    close: [[0, 1]],
    hardSets: 3,
  };
  expect(levelsOf(task, [0, 1, 1])).toEqual([0, 1, 5, 0, 2, 0]);
  expect(levelsOf(task, [0, 0, 1])).toEqual([0, 0, 0, 1, 0, 1]);
  expect(levelsOf(task, [1, 1, 0])).toEqual([0, 0, 5, 1, 4, 2]);
  expect(levelsOf(task, [1, 1, 1])).toEqual([1, 0, 15, 1, 8, 1]);
  expect(deal(task).sessions).toEqual([0, 0, 1]);
});

test("a usual week of 18 parts on three days in a row is proven with little work", () => {
  const kinds: readonly (readonly [string, readonly number[]])[] = [
    ["squat", [3, 0, 0, 0]],
    ["hinge", [3, 3, 0, 0]],
    ["push", [0, 0, 3, 0]],
    ["pull", [0, 0, 0, 3]],
    ["trunk", [0, 0, 0, 0]],
    ["single leg", [3, 0, 0, 0]],
  ];
  const got = deal({
    parts: [0, 1, 2].flatMap((home) => kinds.map(([lane, hard]) => ({ hard, seconds: 350, lane, home }))),
    fixed: [300, 300, 300],
    limit: 2400,
    close: [
      [0, 1],
      [1, 2],
    ],
    hardSets: 3,
  });
  expect(got.proven).toBe(true);
  expect(got.levels.slice(0, 3)).toEqual([0, 0, 0]);
  expect(got.nodes).toBeLessThan(200_000);
});

test("when the count of work runs out the best seen is given and not called proven", () => {
  const task = smallDeal(5);
  const got = deal(task, 1);
  expect(got.proven).toBe(false);
  expect(got.sessions).toEqual(task.parts.map(({ home }) => home));
});
