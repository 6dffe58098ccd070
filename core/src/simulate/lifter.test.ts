import { describe, expect, test } from "vitest";
import { published } from "../testing/index.ts";
import { type Asked, type Lifter, lifter, repsToFailure } from "./lifter.ts";
import { WORLDS, type World } from "./world.ts";

const world = (id: string): World => WORLDS.find((each) => each.id === id)!;
const people = (id: string, more: Partial<World> = {}, count = 200): readonly Lifter[] =>
  Array.from({ length: count }, (_, index) => lifter({ ...world(id), ...more }, 20_270_111, index));
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const sd = (values: readonly number[]) => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));
const DAYS = Array.from({ length: 40 }, (_, session) => session * 3.5);
const ASKED: Asked = { loadKg: 40, reps: { from: 5, to: 12 }, reserve: 2, sets: 3 };
const sets = (group: readonly Lifter[], asked: (one: Lifter, day: number) => Asked) =>
  group.flatMap((one) => DAYS.flatMap((day) => one.train(day, asked(one, day)).map((set) => ({ set, one, day }))));

published("steele2023", "gain in per cent of the log after weeks of training, nobody away", [
  ...([4, 8, 12] as const).map(
    (weeks) =>
      [
        "worked",
        `8.9 ln(1 + ${weeks})`,
        () =>
          mean(
            people("matched", { trainedWeeks: [0, 0], gain: [1, 1], away: 0 }).map(
              (one) => 100 * Math.log(one.trend(weeks * 7) / one.trend(0)),
            ),
          ),
        8.9 * Math.log(1 + weeks),
        0.01,
      ] as const,
  ),
]);

describe("the people are what the world says", () => {
  test("a day's luck has the standard deviation of its person: 2 to 5 % (grgic2020: median 4.2 %)", () => {
    const spreads = people("no trend", { away: 0 }).map((one) => sd(DAYS.map((day) => Math.log(one.maximum(day)))));
    expect(mean(spreads)).toBeGreaterThan(0.03);
    expect(mean(spreads)).toBeLessThan(0.04);
  });
  test("no trend: over a year nobody gains", () => {
    for (const one of people("no trend", { away: 0 })) expect(one.trend(365)).toBeCloseTo(one.trend(0), 9);
  });
  test("halonen2024: ten weeks off cost 3 to 6 %, half the time brings it back", () => {
    const away: World = { ...world("no trend"), away: 0 };
    const one = lifter({ ...away, away: 1 }, 1, 1);
    const loss = 1 - one.trend(70 + 7) / one.trend(7);
    expect(loss).toBeGreaterThan(0.02);
    expect(loss).toBeLessThan(0.06);
  });
  test("misses as often as the world says", () => {
    const came = people("many misses", { away: 0 }).flatMap((one) => DAYS.map((day) => Number(one.comes(day))));
    expect(mean(came)).toBeGreaterThan(0.62);
    expect(mean(came)).toBeLessThan(0.68);
  });
  test("days that hang together do so from session to session", () => {
    const pairs = people("days that hang together", { gain: [0, 0], away: 0 }).map((one) => {
      const values = DAYS.map((day) => Math.log(one.maximum(day)));
      const m = mean(values);
      const cov = mean(values.slice(1).map((value, at) => (value - m) * (values[at]! - m)));
      return cov / sd(values) ** 2;
    });
    expect(mean(pairs)).toBeGreaterThan(0.45);
    expect(mean(pairs)).toBeLessThan(0.65);
  });
});

describe("what is written down", () => {
  const at = (share: number) => (one: Lifter, day: number) => ({ ...ASKED, loadKg: share * one.maximum(day) });
  test("halperin2022: stated reserve lies 0.95 under the true one", () => {
    const straight = sets(people("reserve said straight", { reserveUnsaid: 0 }), at(0.7));
    const under = sets(people("matched", { reserveUnsaid: 0 }), at(0.7));
    const both = [straight, under].map((all) => mean(all.map(({ set }) => set.reps + (set.reserve ?? 0))));
    expect(both[0]! - both[1]!).toBeGreaterThan(0.2);
    expect(mean(straight.map(({ set }) => set.reserve!))).toBeLessThan(3);
  });
  test("people who hide failure write fewer sets, and no more of those that fell short", () => {
    const heavy = at(0.9);
    const [open, hides] = ["matched", "hides failure"].map((id) => sets(people(id), heavy));
    const short = (all: typeof open) => all!.filter(({ set }) => set.reps < 5).length;
    expect(short(hides)).toBeLessThan(0.4 * short(open));
    expect(hides!.length).toBeLessThan(open!.length);
  });
  test("slips are ten times too high and rare", () => {
    const all = sets(people("slips of the pen"), () => ASKED);
    const slipped = all.filter(({ set }) => set.loadKg === 400).length / all.length;
    expect(slipped).toBeGreaterThan(0.014);
    expect(slipped).toBeLessThan(0.026);
  });
  test("the same person meets the same day whatever was asked before", () => {
    const [a, b] = [lifter(world("matched"), 5, 3), lifter(world("matched"), 5, 3)];
    a.train(0, { ...ASKED, loadKg: 80 });
    expect(a.train(7, ASKED)).toEqual(b.train(7, ASKED));
  });
});

published("mayhew1992", "repetitions to failure, other curve", [
  [
    "worked",
    "0.522 + 0.419 e^(−0.055 × 10)",
    () => repsToFailure(0.522 + 0.419 * Math.exp(-0.55), "exponential"),
    10,
    1e-9,
  ],
]);
published("epley1985", "repetitions to failure", [
  ["worked", "1 + reps / 30", () => repsToFailure(30 / 40, "thirtieths"), 10, 1e-9],
]);
test("over the maximum nothing goes", () => {
  expect(repsToFailure(1.03, "thirtieths")).toBe(0);
  expect(repsToFailure(1, "exponential")).toBe(1);
});
