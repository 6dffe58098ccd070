import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, day } from "../day.ts";
import { placeSessions } from "./place-sessions.ts";
import { score } from "./score.ts";
import { search } from "./search.ts";
import type { CalendarTask, Levels, Placement, TaskSession, TaskWindow } from "./task.ts";

/** A plan of the oracle with its levels. */
interface EveryPlan extends Levels {
  readonly placements: readonly Placement[];
}

/** Below 0 when a is better than b, 0 when they are as good. */
function order(a: Levels, b: Levels): number {
  return a.fixed - b.fixed || a.dropped - b.dropped || a.close - b.close || a.points - b.points;
}

const bits = (mask: number): number => [...mask.toString(2)].filter((bit) => bit === "1").length;

/**
 * For tests: every plan that the rules of a small task allow, by trying everything. Written from the words of the rules
 * and sharing no code with the search: a plan is made first and judged afterwards.
 */
function everyPlan(task: CalendarTask): EveryPlan[] {
  const plans = new Map<string, EveryPlan>();
  const visit = (index: number, so: readonly Placement[], cost: number): void => {
    const session = task.sessions[index];
    if (!session) {
      if (!keepsRows(task, so)) return;
      const close = spacing(task, so);
      const missing = task.sessions.filter(({ id }) => so.every((placement) => placement.session !== id));
      const plan = {
        placements: so,
        fixed: missing.filter(({ days }) => days).length,
        dropped: missing.length,
        close: task.gapIsMust ? close : 0,
        points: task.gapIsMust ? cost : cost + close,
      };
      const key = JSON.stringify(so);
      const known = plans.get(key);
      if (!known || plan.points < known.points) plans.set(key, plan);
      return;
    }
    visit(index + 1, so, cost);
    task.windows.forEach((windows, at) => {
      const day = (task.start + at) as Placement["day"];
      const home = Math.floor(at / task.weekDays);
      const late = home <= session.week ? 0 : at - (session.week * task.weekDays + task.weekDays - 1);
      if (session.days ? !session.days.includes(day) : home < session.week || late > task.carry) return;
      if (so.some((placement) => placement.day >= day)) return;
      for (const window of windows) {
        if (window.from + session.minutes > window.to) continue;
        if (window.place !== undefined && session.lackedAt?.includes(window.place)) continue;
        const plain = { session: session.id, day, start: window.from };
        const placement = window.place === undefined ? plain : { ...plain, place: window.place };
        const where = ({ day: d, start, place }: { day: number; start: number; place?: string }) =>
          `${d} ${start} ${place}`;
        const moved = session.announced && where(session.announced) !== where(placement) ? 8 : 0;
        visit(index + 1, [...so, placement], cost + window.cost + 15 * late + moved);
      }
    });
  };
  visit(0, [], 0);
  return [...plans.values()];
}

function keepsRows(task: CalendarTask, placements: readonly Placement[]): boolean {
  let row = task.before?.inRow ?? 0;
  for (let day: number = task.start; day < task.start + task.days; day++) {
    row = placements.some((placement) => placement.day === day) ? row + 1 : 0;
    if (row > task.maxInRow && placements.some((placement) => placement.day === day)) return false;
  }
  return true;
}

function spacing(task: CalendarTask, placements: readonly Placement[]): number {
  const hardOf = new Map(task.sessions.map(({ id, hard }) => [id, hard]));
  const done = (task.before?.past ?? []).map(({ daysAgo, start, hard }) => ({
    at: (task.start - daysAgo) * 24 + start / 60,
    hard,
    past: true,
  }));
  const planned = placements.map(({ session, day, start }) => ({
    at: day * 24 + start / 60,
    hard: hardOf.get(session)!,
    past: false,
  }));
  let points = 0;
  for (const later of planned) {
    for (const earlier of [...done, ...planned]) {
      const minutes = Math.round((later.at - earlier.at) * 60);
      if (earlier === later || (!earlier.past && minutes < 0)) continue;
      if (minutes < task.gapHours * 60) {
        points += 2 * bits(earlier.hard & later.hard) * Math.ceil((task.gapHours * 60 - minutes) / 360);
      }
    }
  }
  return points;
}

/** The stated order among equals: day by day, training before rest, earlier start, earlier session, name of the place. */
function stated(task: CalendarTask, a: EveryPlan, b: EveryPlan): number {
  for (let day: number = task.start; day < task.start + task.days; day++) {
    const [x, y] = [a, b].map(({ placements }) => placements.find((placement) => placement.day === day));
    if (!x && !y) continue;
    if (!x || !y) return x ? -1 : 1;
    if (x.start !== y.start) return x.start - y.start;
    const [i, j] = [x, y].map(({ session }) => task.sessions.findIndex(({ id }) => id === session));
    if (i !== j) return i! - j!;
    const [p, q] = [x.place ?? "", y.place ?? ""];
    if (p !== q) return p < q ? -1 : 1;
  }
  return 0;
}

/** Whole numbers from 0 to below a bound, the same for the same seed (mulberry32 written from its description). */
function seeded(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * below);
  };
}

const HOURS = [360, 420, 720, 1080, 1110];

const home = (n: number) => (n === 0 ? { place: "home" } : {});

/**
 * Small tasks of every kind: short and long weeks, several windows a day, places, hours that differ, a past, days of
 * their own, sessions announced before, hours that are a must.
 */
function smallTask(seed: number): CalendarTask {
  const below = seeded(seed);
  const weekDays = 3 + below(6);
  const days = weekDays + below(9);
  const weeks = Math.ceil(days / weekDays);
  const count = 1 + below(4);
  const weekOf = Array.from({ length: count }, () => below(weeks)).sort((a, b) => a - b);
  const gapHours = [0, 24, 36, 40, 48, 48, 72, 96][below(8)]!;
  const window = (): TaskWindow => {
    const from = HOURS[below(HOURS.length)]!;
    const plain = { from, to: from + 30 + 15 * below(4), cost: below(5) };
    return below(4) === 0 ? { ...plain, place: ["home", "room"][below(2)]! } : plain;
  };
  const past = Array.from({ length: below(3) }, (_, k) => ({
    daysAgo: k + 1,
    start: HOURS[below(HOURS.length)]!,
    hard: below(8),
  }));
  const start = day("2027-03-24");
  const session = (week: number, n: number): TaskSession => {
    const plain = { id: "ABCD"[n]!, week, minutes: 30 + 15 * below(3), hard: below(8) };
    const on = () => addDays(start, below(days + 2) - 1);
    return {
      ...plain,
      ...(below(6) === 0 ? { days: Array.from({ length: 1 + below(2) }, on) } : {}),
      ...(below(3) === 0 ? { announced: { day: on(), start: HOURS[below(HOURS.length)]!, ...home(below(3)) } } : {}),
      ...(below(4) === 0 ? { lackedAt: ["room"] } : {}),
    };
  };
  return {
    start,
    days,
    weekDays,
    sessions: weekOf.map(session),
    windows: Array.from({ length: days }, () => Array.from({ length: below(3) }, window)),
    carry: below(3) === 0 ? below(4) : 0,
    maxInRow: 1 + below(4),
    gapHours,
    ...(below(3) === 0 ? { gapIsMust: true as const } : {}),
    ...(below(2) === 0 ? {} : { before: { inRow: below(3), past } }),
  };
}

const CASES = 600;

test(`${CASES} small tasks: optimum, number of optima and the choice among them are those of trying everything`, () => {
  let several = 0;
  let dropping = 0;
  for (let seed = 1; seed <= CASES; seed++) {
    const task = smallTask(seed);
    const all = everyPlan(task);
    all.sort((a, b) => order(a, b) || stated(task, a, b));
    const best = all.filter((plan) => order(plan, all[0]!) === 0);
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
    const { window, late, moved, close } = got.parts;
    expect.soft(window + late + moved + close, `seed ${seed}`).toBe(got.cost);
  }
});

test("when the work runs out, the plan keeps all rules, the bound holds, and a proof is one", () => {
  let unproven = 0;
  for (let seed = 1; seed <= 200; seed++) {
    const task = smallTask(seed);
    const best = search(task);
    for (const most of [0, 20, 60]) {
      const got = search(task, most);
      expect.soft(order(got.bound, best.value), `bound, seed ${seed}`).toBeLessThanOrEqual(0);
      expect.soft(order(got.value, best.value), `value, seed ${seed}`).toBeGreaterThanOrEqual(0);
      expect.soft(score(task, got.placements).value, `plan, seed ${seed}`).toEqual(got.value);
      expect.soft(keepsRows(task, got.placements), `days in a row, seed ${seed}`).toBe(true);
      expect.soft(got.proven, `proof, seed ${seed}`).toBe(order(got.value, got.bound) === 0);
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
  expect(states(16)).toBeLessThan(4.5 * states(4));
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
      expect(order(after.value, before.value)).toBeLessThanOrEqual(0);
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
      expect(order(after.value, before.value)).toBeLessThanOrEqual(0);
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
