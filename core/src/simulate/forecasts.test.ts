import { describe, expect, test } from "vitest";
import { leastOf } from "../measures/index.ts";
import { averageOfSix } from "./average.ts";
import { type Forecaster, foretell, type Occasion } from "./forecasts.ts";
import { lifter } from "./lifter.ts";
import { instantOf } from "./recorded.ts";
import { shareFor } from "./start.ts";
import { WORLDS } from "./world.ts";

const matched = WORLDS[0]!;
const nothing: Forecaster = () => undefined;
const silent = { forecast: nothing, chance: () => undefined, change: () => undefined };

/** Occasions as they were when they were asked about. */
function occasionsOf(index: number, world = matched): readonly Occasion[] {
  const seen: Occasion[] = [];
  foretell(world, 4, index, 30, silent, (occasion) => {
    seen.push({ ...occasion, history: [...occasion.history] });
    return undefined;
  });
  return seen;
}

describe("the record before a forecast", () => {
  test("six sessions stand in it before the first; later ones follow one by one, all of them earlier than the day", () => {
    for (const index of [0, 1, 2, 3]) {
      const seen = occasionsOf(index);
      expect(seen.map(({ history }) => history.length)).toEqual(seen.map((_, at) => at + 6));
      for (const { history, day } of seen) for (const { at } of history) expect(at).toBeLessThan(instantOf(day));
    }
  });
  test("the truth is the load with which so many repetitions can just be done on that day", () => {
    const one = lifter(matched, 4, 2);
    const told = foretell(matched, 4, 2, 30, { ...silent, forecast: averageOfSix }, nothing);
    const seen = occasionsOf(2);
    expect(told).toHaveLength(seen.length);
    for (const [at, { day, reps }] of seen.entries()) {
      expect(told[at]!.truth).toBeCloseTo(one.maximum(day) * shareFor(reps, "thirtieths"), 9);
      expect(told[at]!.before).toBe(at);
      expect(told[at]!.average).toBeUndefined();
    }
  });
  test("the load follows the first set: up at the top of the range, back under its bottom, else the same", () => {
    let moves = 0;
    for (const index of Array(20).keys()) {
      const history = occasionsOf(index).at(-1)!.history;
      for (const [at, session] of history.slice(1).entries()) {
        const before = history[at]!;
        const span = before.asked.dose.sets[0]!.amount;
        const reps = leastOf(before.sets[0]?.reps);
        if (span.kind !== "reps" || reps === undefined) continue;
        const pins = (session.asked.load!.value - before.asked.load!.value) / matched.stepKg;
        expect(pins).toBe(reps >= span.span.to ? 1 : reps < span.span.from ? -1 : 0);
        moves += Math.abs(pins);
      }
    }
    expect(moves).toBeGreaterThan(50);
  });
  test("the three ranges are all asked, of one person always the same, never over 10 with the reserve", () => {
    const ranges = Array.from({ length: 40 }, (_, index) => occasionsOf(index)[0]!.reps);
    expect([...new Set(ranges)].sort()).toEqual([6, 7, 8.5]);
    expect(new Set(occasionsOf(1).map(({ reps }) => reps)).size).toBe(1);
  });
  test("of the last set one number of repetitions is asked about, from the range; what came of it is what was done", () => {
    const counts = new Map<number, number>();
    for (const index of Array(20).keys()) {
      const asked: number[] = [];
      const told = foretell(
        matched,
        4,
        index,
        30,
        {
          ...silent,
          chance: ({ asked: { reps, sets } }, what) => {
            expect([what.set, what.reps >= reps.from, what.reps <= reps.to]).toEqual([sets - 1, true, true]);
            expect(what.loadKg % matched.stepKg).toBe(0);
            asked.push(what.reps - reps.from);
            return 0.5;
          },
        },
        nothing,
      );
      for (const each of asked) counts.set(each, (counts.get(each) ?? 0) + 1);
      const happened = told.filter(({ sure }) => sure!.happened).length / told.length;
      expect(happened).toBeGreaterThan(0);
      expect(happened).toBeLessThan(1);
    }
    expect([...counts.keys()].sort()).toEqual([0, 1, 2, 3]);
    expect(counts.get(0)! / counts.get(1)!).toBeGreaterThan(0.8);
    expect(counts.get(0)! / counts.get(1)!).toBeLessThan(1.25);
  });
  test("a change is asked about from the twelfth week on, six weeks apart, and held against how the person rose", () => {
    const days: number[] = [];
    const told = foretell(
      matched,
      4,
      1,
      40,
      {
        ...silent,
        change: ({ day }) => {
          days.push(day);
          return "unclear";
        },
      },
      nothing,
    );
    const changes = told.flatMap(({ change }) => change ?? []);
    const one = lifter(matched, 4, 1);
    expect(days.length).toBeGreaterThan(3);
    expect(days.every((day, at) => day >= 84 + 42 * at)).toBe(true);
    expect(days.every((day, at) => day < 84 + 42 * at + 35)).toBe(true);
    expect(changes).toEqual(
      days.map((day) => ({ told: "unclear", rose: Math.log(one.trend(day) / one.trend(day - 42)) })),
    );
  });
  test("the same seed gives the same, another another", () => {
    const told = (seed: number) => foretell(matched, seed, 1, 20, silent, averageOfSix);
    expect(told(1)).toEqual(told(1));
    expect(told(1)).not.toEqual(told(2));
  });
});
