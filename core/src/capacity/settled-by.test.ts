import { describe, expect, test } from "vitest";
import type { Day } from "../day.ts";
import { capacity, forecast, type KnownCapacity, type SetFact, settledBy } from "./index.ts";

const session = (day: number, kg: number): SetFact => ({
  day: day as Day,
  set: 0,
  kg,
  reps: 8,
  reserve: 2,
  asked: { from: 8, to: 8, reserve: 2 },
});
const known = (count: number): KnownCapacity => {
  const all = Array.from({ length: count }, (_, at) => session(at * 3, at % 2 === 0 ? 60 : 61));
  const found = capacity(all, (count * 3) as Day);
  if (found.kind === "unknown") throw new Error(found.missing.code);
  return found;
};
const loads = Array.from({ length: 60 }, (_, at) => 40 + at * 0.5);
const chance = (now: KnownCapacity, kg: number) => forecast(now, { kg, reserve: 2 })!.usually(8);

describe("what one more set settles", () => {
  test("nothing where the chance is sure or not, something between, most near neither end", () => {
    const now = known(2);
    for (const kg of loads.filter((each) => forecast(now, { kg: each })!.zone === "middle")) {
      const settles = settledBy(now, { kg, reps: 8, reserve: 2 });
      // Sure from 90 % on, not from 50 % down; the chance counts the half repetition that a set throws away.
      if (chance(now, kg) > 0.91 || chance(now, kg) < 0.49) expect(settles).toBe(0);
      else if (chance(now, kg) > 0.52 && chance(now, kg) < 0.8) expect(settles).toBeGreaterThan(0.02);
      expect(settles).toBeLessThanOrEqual(1);
    }
  });

  test("less after many sessions than after two, averaged over the loads that are open", () => {
    const mean = (now: KnownCapacity) => {
      const open = loads.map((kg) => settledBy(now, { kg, reps: 8, reserve: 2 })).filter((each) => each > 0);
      return open.reduce((sum, each) => sum + each, 0) / open.length;
    };
    expect(mean(known(30))).toBeLessThan(mean(known(2)));
  });

  /** Against draws: the level is drawn, then a reading of it, and the rule is asked again. */
  test("agrees with drawing what the set may say", () => {
    const now = known(3);
    const kg = loads.find((each) => settledBy(now, { kg: each, reps: 8, reserve: 2 }) > 0.2)!;
    const { level, levelVar, missed } = now.zones.middle!;
    const before = levelVar * missed ** 2;
    const noise = 0.03 ** 2 + 0.035 ** 2;
    const needed = Math.log(kg * (1 + 10 / 30));
    // The middle of 4000 equal slices of the normal: chance without a seed.
    const slices = quantiles(4000);
    const after = (before * noise) / (before + noise);
    const settled = slices.filter((z) => {
      const moved = level + z * Math.sqrt(before - after);
      return moved <= needed || moved >= needed + 1.2816 * Math.sqrt(after);
    });
    expect(settledBy(now, { kg, reps: 8, reserve: 2 })).toBeCloseTo(settled.length / slices.length, 2);
  });
});

/** Quantiles of the standard normal by bisection of a Simpson integral: apart from the code under test. */
function quantiles(count: number): readonly number[] {
  const height = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
  const found: number[] = [];
  let [x, share] = [-6, 0];
  for (let at = 0; at < count; at++) {
    const wanted = (at + 0.5) / count;
    while (share < wanted) {
      share += (height(x) + height(x + 0.0005)) * 0.00025;
      x += 0.0005;
    }
    found.push(x);
  }
  return found;
}
