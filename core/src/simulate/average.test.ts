import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { averageOfSix } from "./average.ts";
import type { Asked, Written } from "./lifter.ts";
import { recorded } from "./recorded.ts";

const ASKED: Asked = { loadKg: 60, reps: { from: 5, to: 8 }, reserve: 2, sets: 3 };
const sessions = (...written: readonly (readonly Written[])[]) =>
  written.map((sets, at) => recorded(at, at * 3.5, ASKED, sets));
const foretold = (history: ReturnType<typeof sessions>, reps = 8.5) => averageOfSix({ history, reps });
/** 60 kg × 5 with 2 left and the half: 60 × (1 + 7.5 / 30) = 75. */
const plain: readonly Written[] = [{ loadKg: 60, reps: 5, reserve: 2 }];

published("epley1985", "load for 8.5 repetitions of six sessions of 60 kg × 5 with 2 left and a half", [
  ["worked", "75 / (1 + 8.5 / 30)", () => foretold(sessions(...Array(6).fill(plain)))!.middle, 58.4416, 0.0001],
  ["worked", "75 itself for none", () => foretold(sessions(...Array(6).fill(plain)), 0)!.middle, 75, 1e-9],
]);

describe("the yardstick", () => {
  const stronger: readonly Written[] = [{ loadKg: 72, reps: 5, reserve: 2 }];
  test("knows the last six sessions that showed something, each by its best set", () => {
    const history = sessions(...Array(3).fill(plain), ...Array(6).fill(stronger));
    expect(foretold(history, 0)!.middle).toBeCloseTo(90, 9);
    const silent = sessions(...Array(3).fill(plain), [{ loadKg: 200, reps: 5 }], []);
    expect(foretold(silent, 0)!.middle).toBeCloseTo(75, 9);
    const mixed = sessions(...Array(6).fill([...plain, { loadKg: 72, reps: 5, reserve: 2 }, ...plain]));
    expect(foretold(mixed, 0)!.middle).toBeCloseTo(90, 9);
  });
  test("says nothing before three sessions", () => {
    expect(foretold(sessions(plain, plain))).toBeUndefined();
    expect(foretold(sessions(plain, plain, plain))).toBeDefined();
  });
  test("80 % lies within 1.2816 standard deviations of how far it lay off (normal table)", () => {
    // Shown: 75, 90, 75. Foretold: 75, 82.5. Off: ln(90/75), ln(75/82.5).
    const spread = Math.sqrt((Math.log(90 / 75) ** 2 + Math.log(75 / 82.5) ** 2) / 2);
    const { middle, low, high } = foretold(sessions(plain, stronger, plain), 0)!;
    expect(middle).toBeCloseTo(80, 9);
    expect(Math.log(high / middle)).toBeCloseTo(1.2816 * spread, 9);
    expect(Math.log(middle / low)).toBeCloseTo(1.2816 * spread, 9);
  });
  test("a set without any repetition in it or left shows nothing", () => {
    expect(foretold(sessions(...Array(4).fill([{ loadKg: 60, reps: 0, reserve: 0 }])))).toBeUndefined();
  });
});
