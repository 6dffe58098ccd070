import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { compareLevels, everyPlan, keepsRows, smallTask, stated } from "../testing/index.ts";
import { placeSessions } from "./place-sessions.ts";
import { score } from "./score.ts";
import { search } from "./search.ts";
import type { CalendarTask } from "./task.ts";

const CASES = 600;

test(`${CASES} small tasks: optimum, number of optima and the choice among them are those of trying everything`, () => {
  let several = 0;
  let dropping = 0;
  for (let seed = 1; seed <= CASES; seed++) {
    const task = smallTask(seed);
    const all = everyPlan(task);
    all.sort((a, b) => compareLevels(a, b) || stated(task, a, b));
    const best = all.filter((plan) => compareLevels(plan, all[0]!) === 0);
    const { fixed, dropped, close, points } = best[0]!;
    const got = placeSessions(task);
    expect.soft(got.value, `value, seed ${seed}`).toEqual({ fixed, dropped, close, points });
    expect.soft(got.bound, `bound, seed ${seed}`).toEqual(got.value);
    expect.soft(got.proven, `proof, seed ${seed}`).toBe(true);
    expect.soft(got.count, `number of optima, seed ${seed}`).toBe(best.length);
    expect.soft(got.placements, `choice, seed ${seed}`).toEqual(best[0]!.placements);
    if (best.length > 1) several++;
    if (dropped > 0) dropping++;
  }
  expect(several, "the cases would not test ties").toBeGreaterThan(CASES / 5);
  expect(dropping, "the cases would not test drops").toBeGreaterThan(CASES / 5);
});

test("the plain score of a plan is the cost that the search says, part by part", () => {
  for (let seed = 1; seed <= CASES; seed++) {
    const task = smallTask(seed);
    const got = placeSessions(task);
    const plain = score(task, got.placements);
    expect.soft(plain.value, `seed ${seed}`).toEqual(got.value);
    const { window, late, moved, nextDay, close } = got.parts;
    expect.soft(window + late + moved + nextDay + close, `seed ${seed}`).toBe(got.cost);
  }
});

test("when the work runs out, the plan keeps all rules, the bound holds, and a proof is one", () => {
  let unproven = 0;
  for (let seed = 1; seed <= 200; seed++) {
    const task = smallTask(seed);
    const best = search(task);
    for (const most of [0, 20, 60]) {
      const got = search(task, most);
      expect.soft(compareLevels(got.bound, best.value), `bound, seed ${seed}`).toBeLessThanOrEqual(0);
      expect.soft(compareLevels(got.value, best.value), `value, seed ${seed}`).toBeGreaterThanOrEqual(0);
      expect.soft(score(task, got.placements).value, `plan, seed ${seed}`).toEqual(got.value);
      expect.soft(keepsRows(task, got.placements), `days in a row, seed ${seed}`).toBe(true);
      expect.soft(got.proven, `proof, seed ${seed}`).toBe(compareLevels(got.value, got.bound) === 0);
      if (!got.proven) unproven++;
    }
  }
  expect(unproven, "the work never ran out").toBeGreaterThan(20);
});

test("states grow with the weeks and not faster", () => {
  const states = (weeks: number) =>
    search({
      start: day("2027-03-01"),
      days: weeks * 7,
      weekDays: 7,
      sessions: Array.from({ length: weeks * 4 }, (_, n) => ({
        id: `${n}`,
        week: Math.floor(n / 4),
        minutes: 45,
        hard: 1 << (n % 4),
      })),
      windows: Array.from({ length: weeks * 7 }, () => [420, 1080].map((from) => ({ from, to: from + 60, cost: 0 }))),
      carry: 2,
      maxInRow: 3,
      gapHours: 48,
    }).states;
  expect(states(32)).toBeLessThan(2.5 * states(16));
});

/** The same task so many days later. */
function laterBy(task: CalendarTask, days: number): CalendarTask {
  const sessions = task.sessions.map((session) => ({
    ...session,
    ...(session.days ? { days: session.days.map((on) => addDays(on, days)) } : {}),
    ...(session.announced ? { announced: { ...session.announced, day: addDays(session.announced.day, days) } } : {}),
  }));
  return { ...task, start: addDays(task.start, days), sessions };
}

const anyTask = fc.integer({ min: 1, max: 1_000_000 }).map(smallTask);

test("law: shifting every date by whole weeks shifts the plan and changes nothing else", () => {
  fc.assert(
    fc.property(anyTask, fc.integer({ min: -500, max: 500 }), (task, weeks) => {
      const here = placeSessions(task);
      const there = placeSessions(laterBy(task, weeks * 7));
      const back = there.placements.map((placement) => ({ ...placement, day: placement.day - weeks * 7 }));
      expect(back).toEqual(here.placements);
      expect([there.cost, there.count, there.parts]).toEqual([here.cost, here.count, here.parts]);
    }),
  );
});

test("law: windows that close later never make a plan worse", () => {
  fc.assert(
    fc.property(anyTask, fc.array(fc.nat({ max: 90 }), { minLength: 1, maxLength: 9 }), (task, more) => {
      let at = 0;
      const windows = task.windows.map((list) =>
        list.map((window) => ({ ...window, to: window.to + more[at++ % more.length]! })),
      );
      const [before, after] = [placeSessions(task), placeSessions({ ...task, windows })];
      expect(compareLevels(after.value, before.value)).toBeLessThanOrEqual(0);
    }),
  );
});

test("law: one window more never makes a plan worse", () => {
  fc.assert(
    fc.property(anyTask, fc.nat(), fc.nat({ max: 4 }), (task, at, cost) => {
      const windows = task.windows.map((list, d) =>
        d === at % task.days ? [...list, { from: 600, to: 700, cost }] : list,
      );
      const [before, after] = [placeSessions(task), placeSessions({ ...task, windows })];
      expect(compareLevels(after.value, before.value)).toBeLessThanOrEqual(0);
    }),
  );
});

test("law: the order of a day's windows, and the same window twice, never matter", () => {
  fc.assert(
    fc.property(anyTask, (task) => {
      const turned = task.windows.map((list) => [...list, ...list].reverse());
      expect(placeSessions({ ...task, windows: turned })).toEqual(placeSessions(task));
    }),
  );
});

test("law: the same task twice gives the same plan, and no plan places a session twice or two on a day", () => {
  fc.assert(
    fc.property(anyTask, (task) => {
      const got = placeSessions(task);
      expect(placeSessions(structuredClone(task))).toEqual(got);
      expect(new Set(got.placements.map((placement) => placement.day)).size).toBe(got.placements.length);
      const told = [...got.placements, ...got.dropped].map(({ session }) => session).sort();
      expect(told).toEqual(task.sessions.map(({ id }) => id));
    }),
  );
});
