import type { CalendarTask, Levels, Placement, TaskSession, TaskWindow } from "../calendar/index.ts";
import { addDays, day } from "../day.ts";

/** A plan of the oracle with its levels. */
export interface EveryPlan extends Levels {
  readonly placements: readonly Placement[];
}

/** Below 0 when a is better than b, 0 when they are as good. */
export function compareLevels(a: Levels, b: Levels): number {
  return a.fixed - b.fixed || a.dropped - b.dropped || a.close - b.close || a.points - b.points;
}

const bits = (mask: number): number => [...mask.toString(2)].filter((bit) => bit === "1").length;

/**
 * For tests: every plan that the rules of a small task allow, by trying everything. Written from the words of the rules
 * and sharing no code with the search: a plan is made first and judged afterwards.
 */
export function everyPlan(task: CalendarTask): EveryPlan[] {
  const plans = new Map<string, EveryPlan>();
  const visit = (index: number, so: readonly Placement[], cost: number): void => {
    const session = task.sessions[index];
    if (!session) {
      if (!keepsRows(task, so)) return;
      const close = spacing(task, so);
      const trained = (day: number) =>
        so.some((placement) => placement.day === day) || (day < task.start && (task.before?.inRow ?? 0) > 0);
      const plain = cost + so.filter(({ day }) => trained(day - 1)).length;
      const missing = task.sessions.filter(({ id }) => so.every((placement) => placement.session !== id));
      const plan = {
        placements: so,
        fixed: missing.filter(({ fixed }) => fixed).length,
        dropped: missing.length,
        close: task.gapIsMust ? close : 0,
        points: task.gapIsMust ? plain : plain + close,
      };
      const key = JSON.stringify(so);
      const known = plans.get(key);
      if (!known || plan.points < known.points) plans.set(key, plan);
      return;
    }
    visit(index + 1, so, cost);
    task.windows.forEach((windows, at) => {
      const day = (task.start + at) as Placement["day"];
      const begins = session.week * task.weekDays;
      const { first, last } = task.weeks?.[session.week] ?? { first: begins, last: begins + task.weekDays - 1 };
      const late = at > last ? at - last : 0;
      if (session.days ? !session.days.includes(day) : at < first || late > task.carry) return;
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

export function keepsRows(task: CalendarTask, placements: readonly Placement[]): boolean {
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
export function stated(task: CalendarTask, a: EveryPlan, b: EveryPlan): number {
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
 * Small tasks of every kind: short and long weeks, weeks that wait, several windows a day, places, hours that differ, a
 * past, days of their own, sessions announced before, hours that are a must.
 */
export function smallTask(seed: number): CalendarTask {
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
      ...(below(6) === 0 ? { fixed: true as const } : {}),
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
    ...(below(4) === 0 ? { weeks: waiting(weeks, weekDays, below(days), 1 + below(4)) } : {}),
  };
}

/** Weeks of which some days, from one on, are left out. */
function waiting(weeks: number, weekDays: number, from: number, many: number): NonNullable<CalendarTask["weeks"]> {
  const all = Array.from({ length: weeks * weekDays + many }, (_, at) => at);
  const days = all.filter((at) => at < from || at >= from + many);
  return Array.from({ length: weeks }, (_, n) => ({ first: days[n * weekDays]!, last: days[(n + 1) * weekDays - 1]! }));
}
